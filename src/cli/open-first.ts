import type { CuttingTool } from '../job/job';
import { pairs } from './columns';

/** What to open first of a set of files, and why; the rest is named in the folder. */
export function openFirst(tool: CuttingTool, folder: string): string {
  return `\nOpen first:\n${pairs([
    [
      `${folder}/shop-sheet.html`,
      'to print and take to the bench: what to buy, what to cut, each step with its numbers',
    ],
    ...AFTER[tool].map(([name, why]) => [`${folder}/${name}`, why] as const),
  ])}`;
}

/** The same of a panel's files. */
export function openFirstOfPanel(folder: string): string {
  return `\nOpen first:\n${pairs([
    [`${folder}/order-of-work.html`, 'to print and take to the bench: what to buy for the whole panel, and every step'],
    [`${folder}/paper-model.pdf`, 'the flat on one page, to cut out and fold before you cut metal'],
    [`${folder}/boards/`, 'the pieces of all forms laid out together'],
    [`${folder}/forms/`, 'a folder for each form, with its own shop sheet and templates'],
    [`${folder}/blank/`, 'the sheet to cut, with the lines to mark'],
  ])}`;
}

/** The same of an assembly's files. */
export function openFirstOfAssembly(folder: string): string {
  return `\nOpen first:\n${pairs([
    [`${folder}/assembly.html`, 'to print and take to the bench: the panels, and how they are joined'],
    [`${folder}/`, 'a folder for each panel, with its order of work, its forms and its blank'],
  ])}`;
}

const AFTER: Readonly<Record<CuttingTool, readonly (readonly [string, string])[]>> = {
  jigsaw: [
    ['templates.pdf', 'every piece at true size: measure the bars on page 1, then glue on and saw to the lines'],
  ],
  router: [
    ['boards/', 'the pieces laid out on your boards, for the machine'],
    ['operations.csv', 'the tool and the depth of every layer in those drawings'],
    ['templates.pdf', 'the gauges and the blank at true size: measure the bars on page 1'],
  ],
  laser: [
    ['boards/', 'the pieces laid out on your boards, for the machine; the kerf is in them'],
    ['operations.csv', 'what every layer of those drawings means'],
    ['templates.pdf', 'the gauges and the blank at true size: measure the bars on page 1'],
  ],
};
