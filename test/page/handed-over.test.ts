import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { makeFiles } from '../../src/output/files';
import { draftFrom } from '../../src/page/draft';
import { handOver, takeOver } from '../../src/page/hand-over';
import { tables, work } from '../../src/page/work';
import { asText } from '../helpers/laid-out';
import { font } from '../helpers/font';

describe('a form as the page gets it from its worker', () => {
  it.each(['tapered-curve', 'plain-curve-inch'])('is the same, and makes the same files: %s', async (starter) => {
    const worked = work(draftFrom(readFileSync(`templates/${starter}.yaml`, 'utf8')));
    const handed = takeOver(structuredClone(handOver(worked)));
    expect(handed).toEqual(worked);
    expect(worked.form).not.toBeNull();
    if (!worked.form || !handed.form) return;
    const [ours, theirs] = await Promise.all(
      [worked.form, handed.form].map(async ({ planned }) => asText(await makeFiles(planned, { tables, font }))),
    );
    expect(theirs).toEqual(ours);
  });
});
