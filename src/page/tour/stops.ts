/** One stop of the way round the page: the heading it is at, and what a newcomer is told there. */
export interface Stop {
  /** Id of the section's heading. */
  readonly at: string;
  readonly title: string;
  readonly says: string;
}

/** What the page is for, in three stops: what goes in, what it does, what comes out. */
export const stops: readonly Stop[] = [
  {
    at: 'bending',
    title: 'Say what you want to bend',
    says: 'This is the part a form is made for: one large bend in a sheet, its inside radius the same or growing from end A to end B. Enter the metal, the angle, the length, the radii and the two legs, in mm or inches.',
  },
  {
    at: 'does',
    title: 'Look at the form, and bend it',
    says: 'A wooden form: half-discs screwed to a board. Clamp it on the sheet, pull the leg round, let go: the slider does it here. The form is smaller than the part, because the sheet springs back. What you must know stands beside it: how hard, how far, how many clamps.',
  },
  {
    at: 'take',
    title: 'Take the drawings to the bench',
    says: 'One zip holds templates at 1:1 to print and trace, DXF and SVG for a router or a laser, and a shop sheet with every step. Print, cut, clamp, pull, check. “At the bench” above shows the same steps on a phone, one a screen.',
  },
];
