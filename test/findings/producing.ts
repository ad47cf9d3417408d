/** A batten pressed down close to the bend of a thick sheet, on stations far apart. */
const PRESSED = {
  sheet: { material: 'stainless-304-annealed', thickness: '6 mm' },
  bend: { length: '700 mm', radius: '60 mm', legs: { held: '200 mm', free: '300 mm' } },
  pull: { with: 'press', press: '12 mm' },
  clamps: { rating: '18000 N' },
  stations: { maxSpan: '600 mm', maxSag: '4 mm' },
  board: { stock: 'mdf-18', spine: { stock: 'mdf-25' }, stations: { stock: 'mdf-12' } },
};
/** The same of a thinner sheet. */
const STRAINED = {
  sheet: { material: 'stainless-304-annealed', thickness: '2 mm' },
  bend: { radius: '70 mm', legs: { held: '60 mm', free: '150 mm' } },
  pull: { with: 'press', press: '40 mm' },
  clamps: { rating: '18000 N' },
  stations: { maxSpan: '200 mm', maxSag: '4 mm' },
};

/**
 * For every code of the catalogue that a job can raise, a job that raises it: what it changes of {@link BASE}, or its whole text. Every length
 * stands as `N mm` and every force as `N N`, so that the same job can be written in inches and pounds.
 */
export const producing: Readonly<Record<string, Change | string>> = {
  // What the sheet forbids
  'wrap-too-far': { bend: { angle: 175, radius: '100 mm' } },
  'no-minimum-radius': { sheet: { thickness: '12 mm' } },
  'would-crack': { sheet: { material: 'aluminium-6061-t6' }, bend: { radius: '2 mm' } },
  'mostly-springback': { bend: { radius: '200 mm' }, sheet: { thickness: '0.5 mm' } },
  twist: { bend: { radius: { from: '30 mm', to: '150 mm' } } },
  'hard-pull': { sheet: { thickness: '4 mm' }, effort: { maxLeverage: '0 mm' } },
  'would-not-set': { sheet: { thickness: '0.5 mm' }, bend: { radius: '3000 mm', radiusOf: 'form' } },
  'ends-spring-apart': {
    bend: { radius: { from: '60 mm', to: '200 mm' }, length: '400 mm', radiusOf: 'form' },
    sheet: { thickness: '1 mm' },
  },
  'taper-too-steep-for-angle': { bend: { angle: 170, radius: { from: '40 mm', to: '140 mm' } } },
  // The pull and the hold
  'too-limp': { pull: { with: 'bare' }, sheet: { thickness: '0.5 mm' }, bend: { legs: { free: '400 mm' } } },
  'all-tail': { pull: { with: 'bare' }, bend: { angle: 5 } },
  'leg-bows': { pull: { with: 'bare' }, bend: { legs: { free: '340 mm' } } },
  'yoke-gives': { pull: { with: 'yoke' }, bend: { legs: { free: '40 mm' } } },
  'pull-square': { pull: { with: 'bare' }, bend: { angle: 20, legs: { free: '360 mm' } } },
  'held-leg-tail': {
    sheet: { material: 'stainless-304-annealed', thickness: '2 mm' },
    clamps: { kind: 'c' },
  },
  'front-edge-lifts': {
    sheet: { material: 'stainless-304-annealed', thickness: '2 mm' },
    bend: { angle: 75, length: '300 mm', radius: '70 mm', legs: { held: '60 mm', free: '220 mm' } },
    board: { stock: 'mdf-25' },
    effort: { handForce: '200 N' },
  },
  // Screws and wood
  'front-edge-crushes': PRESSED,
  'screws-shear': PRESSED,
  'round-edge-crushes': PRESSED,
  'front-edge-beds': STRAINED,
  'screws-strained': STRAINED,
  'round-edge-strained': STRAINED,
  // Trial strips
  'strip-too-narrow': strips({ bent: 95, left: 80, width: '5 mm' }),
  'no-springback': strips({ bent: 95, left: 95 }),
  'strip-came-back-flat': strips({ bent: 95, left: 0 }),
  'little-springback': strips({ bent: 95, left: 94 }),
  'trial-contradicts-sheet': strips({ bent: 95, left: 40 }),
  'one-strip': strips({ bent: 95, left: 84 }),
  'strips-disagree': strips({ bent: 95, left: 80 }, { bent: 95, left: 86 }),
  'strip-or-part': { trials: [{ radius: '40 mm', bent: 95, left: 84, part: { at: 0, radius: '45 mm' } }] },
  'part-not-measured': { trials: [{ part: { at: 0 } }] },
  'part-lacks-wrap': { trials: [{ part: { at: 0, angle: 88 } }] },
  'part-outside-bend': { trials: [{ part: { at: '5 m', radius: '45 mm' } }] },
  'part-beyond-taper': {
    bend: { angle: 60, length: '200 mm', radius: { from: '20 mm', to: '120 mm' } },
    trials: [{ part: { at: 0, angle: 150, wrap: 100 } }],
  },
  'part-not-opened': { trials: [{ part: { at: 0, radius: '20 mm', form: '30 mm' } }] },
  'part-contradicts-sheet': { trials: [{ part: { at: 0, radius: '80 mm', form: '30 mm' } }] },
  'part-legs-off': { trials: [{ part: { at: 0, radius: '40 mm', angle: 60, wrap: 100 } }] },
  'part-form-taken': { trials: [{ part: { at: 0, radius: '40 mm' } }] },
  'disc-unlike-form': { trials: [{ radius: '200 mm', bent: 95, left: 54 }] },
  // The form
  'run-too-short': { bend: { length: '30 mm' } },
  'sheet-sags': { bend: { angle: 15 }, stations: { maxSag: '0.01 mm' } },
  'one-screw': { bend: { radius: '21 mm' } },
  'radius-too-small-for-screws': { bend: { radius: '8 mm' } },
  'no-room-for-clamps': {
    sheet: { thickness: '6 mm' },
    bend: { legs: { free: '40 mm' } },
    effort: { maxLeverage: '0 mm' },
  },
  'spine-bows': {
    sheet: { thickness: '6 mm' },
    bend: { radius: '60 mm' },
    board: { spine: 'mdf-3', stations: 'mdf-18', backing: 'mdf-18' },
    effort: { handForce: '1000 N', maxLeverage: '0 mm' },
    clamps: { rating: '18000 N' },
  },
  'throat-too-short': { bend: { legs: { held: '220 mm' } } },
  'larger-than-board': { bend: { length: '2600 mm' } },
  'offcut-of-no-use': { offcuts: [{ stock: 'mdf-3', thickness: '3 mm', width: '300 mm', length: '900 mm' }] },
  'offcut-too-small': { offcuts: [{ stock: 'mdf-18', width: '20 mm', length: '900 mm' }], cut: { border: '12 mm' } },
  // The finishing block
  'block-too-thick': { bend: { length: '20 mm' }, block: { at: '10 mm', length: '10 mm', stock: 'mdf-25' } },
  'block-too-many-layers': { bend: { length: '600 mm' }, block: { at: '300 mm', length: '590 mm', stock: 'mdf-3' } },
  'block-without-room-for-dowels': { bend: { radius: '6 mm', angle: 160 }, block: { at: '200 mm', length: '80 mm' } },
  'block-larger-than-board': {
    sheet: { material: 'aluminium-1100-o', thickness: '6 mm' },
    bend: { angle: 120, radius: '1450 mm' },
    block: { at: '200 mm', length: '40 mm' },
  },
  // Joints
  'loose-fit': { cut: { with: 'router', fit: '0.6 mm' } },
  'thick-for-laser': { cut: { with: 'laser' } },
  'board-not-measured': { cut: { with: 'router' } },
  'groove-depth': { cut: { with: 'router', groove: '12 mm' } },
  'groove-narrower-than-bit': {
    board: { stations: 'mdf-12', backing: 'mdf-18' },
    cut: { with: 'router', bit: '14 mm' },
  },
  'smaller-than-bit': { cut: { with: 'router', bit: '8 mm' } },
  'dowels-thinner': { board: { stock: 'mdf-6' }, cut: { with: 'laser', dowel: '16 mm' } },
  'no-room-for-tabs': {
    board: { stock: 'mdf-6' },
    cut: { with: 'laser' },
    bend: { radius: '23 mm' },
    clamps: { kind: 'f-heavy' },
  },
  // One end is of the size in mm, the other in inches, whose screws and dowels are others.
  'no-room-for-dowels': {
    board: { stock: 'mdf-6' },
    cut: { with: 'laser' },
    bend: { radius: { from: '23.5 mm', to: '25.5 mm' } },
    clamps: { kind: 'f-heavy' },
  },
  'screws-in-glue-line': { board: { stock: 'mdf-6' }, cut: { with: 'laser', layers: 2 } },
  'fit-tighter-than-beam': { board: { stock: 'mdf-6' }, cut: { with: 'laser', kerf: '0.3 mm', fit: '0.02 mm' } },
  'kerf-too-wide': { board: { stock: 'mdf-3' }, cut: { with: 'laser', kerf: '1.9 mm', gap: '5 mm' } },
  // Values
  'too-few': { trials: [] },
  'too-many': { offcuts: Array.from({ length: 41 }, () => ({ stock: 'mdf-18', width: '300 mm', length: '900 mm' })) },
  'bad-value': { bend: { radiusOf: 'formed' } },
  'unknown-key': { bend: { angel: 90 } },
  'decimal-comma': 'title: a\nbend: { angle: 90, length: 1,5 }\n',
  'hash-comment': 'title: a\nsheet: { material: steel-a36, thickness: #18 }\n',
  missing: 'title: a\n',
  'wrong-kind': { bend: { angle: [90] } },
  'title-with-slash': { title: 'left/right' },
  'title-of-dots': { title: '..' },
  'empty-name': { title: ' ' },
  'name-too-long': { title: 'a'.repeat(201) },
  'control-characters': { title: 'a\u0007b' },
  'out-of-range': { bend: { legs: { held: '5000 mm' } } },
  'not-whole': { cut: { with: 'laser', layers: 2.5 } },
  'bad-force': { effort: { handForce: 'strong' } },
  'bad-length': { bend: { length: 'long' } },
  'gauge-for-length': { bend: { length: '18 ga' } },
  'unknown-gauge': { sheet: { thickness: '99 ga' } },
  'unknown-metal': { sheet: { material: 'adamant' } },
  'unknown-board': { board: { stock: 'teak-18' } },
  'unknown-screw': { screws: { size: '#99' } },
  'unknown-colour': { cut: { colours: { hole: 'mauve' } } },
  // Rules between values
  'taper-too-steep': { bend: { length: '100 mm', radius: { from: '30 mm', to: '200 mm' } } },
  'runs-gone': { runs: [{ name: 'rim', from: '0 mm', to: '200 mm' }] },
  'block-outside-bend': { block: { at: '390 mm', length: '80 mm' } },
  'roll-without-width': { paper: { size: 'roll' } },
  'width-without-roll': { paper: { size: 'A4', width: '610 mm' } },
  'not-for-this-tool': { cut: { with: 'laser', bit: '6 mm' } },
  'gap-too-narrow': { cut: { with: 'router', bit: '6 mm', gap: '4 mm' } },
  'kerf-too-narrow': { cut: { with: 'laser', kerf: '0.001 mm' } },
  // The text itself
  'job-too-long': `title: ${'a'.repeat(70_000)}\n`,
  'job-too-deep': `title: ${'['.repeat(80)}\n`,
  'yaml-alias': 'title: &a x\nsheet: *a\n',
  'yaml-anchor': 'title: &a x\n',
  'yaml-tag': 'title: !!set x\n',
  'key-twice': 'title: a\ntitle: b\n',
  unreadable: 'title: [a\nsheet: b\n',
  'more-mistakes': `title: a\n${Array.from({ length: 120 }, (_, index) => `key${index}: 1\n`).join('')}`,
};

export type Change = Readonly<Record<string, unknown>>;

export const BASE: Change = {
  title: 'Hood edge',
  units: 'mm',
  sheet: { material: 'aluminium-3003-h14', thickness: '1.6 mm' },
  bend: { angle: 90, length: '400 mm', radius: '40 mm', legs: { held: '40 mm', free: '150 mm' } },
  board: { stock: 'mdf-18' },
};

function strips(...measured: readonly Change[]): Change {
  return { trials: measured.map((strip) => ({ radius: '40 mm', ...strip })) };
}
