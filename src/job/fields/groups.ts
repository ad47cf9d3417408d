/** The parts of the page’s form in the order of the work: some always in sight, some that can be folded and begin open or folded. */
export const groups = {
  sheet: { title: 'Part and sheet', begins: 'always' },
  bend: { title: 'Bend', begins: 'always' },
  trials: { title: 'Trial strips, what came out', begins: 'folded' },
  offcuts: { title: 'Offcuts to use first', begins: 'folded' },
  board: { title: 'Board', begins: 'open' },
  cut: { title: 'How the boards are cut', begins: 'open' },
  colours: { title: 'Colours of lines in the files', begins: 'folded' },
  hold: { title: 'Pull, clamps, screws', begins: 'folded' },
  own: { title: 'Sheet data of your own', begins: 'folded' },
  block: { title: 'Finishing block', begins: 'folded' },
  files: { title: 'Drawing files', begins: 'folded' },
  paper: { title: 'Paper for full-size drawings', begins: 'folded' },
} as const satisfies Readonly<Record<string, Group>>;

export interface Group {
  readonly title: string;
  readonly begins: 'always' | 'open' | 'folded';
}

export type GroupName = keyof typeof groups;
