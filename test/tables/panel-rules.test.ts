import { describe, expect, it } from 'vitest';
import { loadPanelRules } from '../../src/tables/panel-rules';
import { shopRuleSchema } from '../../src/tables/schema';
import rules from '../../shared/panel-rules.json';

describe('panel rules', () => {
  it('every row has unit and source, and is read', () => {
    for (const row of rules.rows) shopRuleSchema.parse(row);
    expect(rules.rows.map(({ id }) => id).sort()).toEqual(Object.keys(loadPanelRules()).sort());
  });
});
