import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { InternalError } from '../base/errors';

/** The folder the program is installed in, whether it runs built or from its sources: the nearest above with a package.json. */
export function packageFolder(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, 'package.json'))) {
    if (dirname(folder) === folder) throw new InternalError('the program stands in no package');
    folder = dirname(folder);
  }
  return folder;
}
