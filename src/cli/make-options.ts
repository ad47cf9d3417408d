import type { FileOptions } from '../output/files';

export interface MakeOptions extends FileOptions {
  /** Whether every file is named. */
  readonly list?: boolean;
}
