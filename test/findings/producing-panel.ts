import { buildLeg } from '../../src/panel/flat/build-leg';
import { placeOnEdge } from '../../src/panel/flat/edge-bends';
import { whatStandsWhere } from '../../src/panel/flat/spec-findings';
import { squareCut } from '../../src/panel/corner/end-cut';
import { toRadians } from '../../src/base/angle';
import type { Finding } from '../../src/base/findings';
import type { Point } from '../../src/base/polygon';
import { layOutTraced } from '../../src/panel/traced/lay-out';
import { readOutline, type OutlineOptions } from '../../src/panel/trace/read-outline';
import { scaleFrom, type Reference } from '../../src/panel/trace/scale';
import type { Traced, TracedBend } from '../../src/panel/traced/traced';
import { findOrder } from '../../src/panel/order/find-order';
import { orderFindings } from '../../src/panel/order/order-findings';
import { bend, box, built, corner, refusal, rules } from '../panel/panels';
import { deep, shop, worksFor } from '../panel/works';
import { buildUp } from '../../src/panel/flat/build-up';
import type { BuiltUp } from '../../src/panel/flat/built-up';

type Findings = readonly Finding[];

const low = { radius: 12, reach: { leg: 50 } };
const lip = { radius: 8, reach: { leg: 80 } };

/** The order of a panel's bends, either side held or the base alone. */
function ordered(spec: BuiltUp, { held = 'either', reach = deep } = {}): Findings {
  const panel = built(spec);
  const work = worksFor(panel).map((one) =>
    held === 'base' ? { ...one, pulling: { ...one.pulling, leg: null } } : one,
  );
  return orderFindings(panel, findOrder(panel, { work, shop: reach, rules }));
}

/** For every code that a panel or a drawing raises, a panel or a drawing that raises it. */
export const producingPanel: Readonly<Record<string, () => Findings>> = {
  // Order of work
  'panel-crosses-itself': () =>
    ordered(
      box(200, 90, { bends: [bend('long', low), bend('top', low), bend('long.rim', lip), bend('top.rim', lip)] }),
    ),
  'no-order': () =>
    ordered(
      box(100, 100, {
        bends: ['long', 'back', 'top', 'short'].map((on) => bend(on, { radius: 20, reach: { leg: 90 } })),
      }),
      { held: 'base' },
    ),
  'clamps-too-short': () => ordered(box(400, 300, { bends: [bend('long')] }), { held: 'base', reach: shop }),
  // Drawing files
  'drawing-too-big': () => svg(' '.repeat(20_000_001)),
  'drawing-too-full': () => svg('<g/>'.repeat(20_001)),
  'drawing-left-out': () => svg(`${RIM}<text>Hood</text>`),
  'entities-left-out': () => dxf('0\nREGION\n8\n0\n'),
  'svg-broken': () => svg('<path d="M 0 0 L x"/>'),
  'svg-entities': () => outline('<!DOCTYPE svg [<!ENTITY a "b">]><svg/>', 'svg'),
  'svg-script': () => svg('<script/>'),
  'svg-external': () => svg('<use href="other.svg#a"/>'),
  'svg-size-assumed': () =>
    outline(`<svg xmlns="http://www.w3.org/2000/svg" width="400" height="300">${RIM}</svg>`, 'svg'),
  'svg-use': () => svg('<use href="#nothing"/>'),
  'dxf-broken': () => outline('0\nSECTION\n', 'dxf'),
  'dxf-no-unit': () => dxf('', 0),
  'dxf-unit': () => dxf('', 19),
  // Outlines and their scale
  'scale-factor': () => svg(RIM, { scale: 0 }),
  'reference-length': () => scaleFrom([reference(0, 0, 100)], 'outline.scale').findings,
  'reference-missing': () => scaleFrom([], 'outline.scale').findings,
  'references-weak': () => scaleFrom([reference(100, 0, 100), reference(87, 50, 100)], 'outline.scale').findings,
  'references-contradict': () =>
    scaleFrom([reference(100, 0, 100), reference(0, 100, 100), reference(0, 200, 230)], 'outline.scale').findings,
  'references-uneven': () => scaleFrom([reference(100, 0, 100), reference(0, 100, 110)], 'outline.scale').findings,
  'drawing-too-far': () => svg('<rect x="0" y="0" width="10000000" height="10"/>'),
  'outline-too-fine': () =>
    svg(`<path d="M0 0${Array.from({ length: 20_002 }, (_, at) => `L${at} ${(at % 2) + 5}`).join('')}"/>`),
  'outline-double': () => svg(`${RIM}<path d="M10 10h380"/>`),
  'outline-branch': () => svg(`${RIM}<path d="M10 10l-5 -5"/>`),
  'outline-open': () => svg('<path d="M10 10h380v280"/>'),
  'outline-gaps': () => svg('<path d="M10 10h380v280h-380v-279.95"/>'),
  'outline-missing': () => svg(''),
  'outline-crossing': () => svg('<path d="M10 10L390 290V10L10 290z"/>'),
  'outline-choice': () =>
    svg('<rect x="10" y="10" width="40" height="40"/><rect x="100" y="10" width="50" height="40"/>'),
  'outline-island': () =>
    svg(`${RIM}<rect x="50" y="50" width="100" height="100"/><rect x="70" y="70" width="20" height="20"/>`),
  // Panels, built up
  'base-too-small': () =>
    refused({ base: { ...box(20, 20).base, measured: 'outside' }, bends: [bend('long'), bend('top')] }),
  'base-edges': () => refused({ base: { ...box(300, 200).base, edges: ['long', 'back'] } }),
  'edge-names': () => refused({ base: { ...box(300, 200).base, edges: ['long', 'long', 'top', 'short'] } }),
  'base-clockwise': () =>
    refused({ base: { ...box(300, 200).base, corners: [...box(300, 200).base.corners].reverse() } }),
  'edge-without-length': () => refused(baseOf([0, 0], [300, 0], [300, 0], [0, 200])),
  'base-crosses': () => refused(baseOf([0, 0], [300, 0], [300, -1], [0, 200])),
  'no-such-corner': () => refused({ corners: [corner(['long', 'top'])] }),
  'unknown-edge': () => refused({ bends: [bend('left')] }),
  'edge-bent-twice': () => refused({ bends: [bend('long'), bend('long')] }),
  'not-a-neighbour': () => refused({ bends: [bend('long', { from: 'top' })] }),
  'radius-missing': () => refused({ bends: [bend('long', { radius: { back: 30 } })] }),
  'radius-not-positive': () => refused({ bends: [bend('long', { radius: 0 })] }),
  'bend-too-short': () => refused({ bends: [bend('long', { inset: { back: 200, short: 200 } })] }),
  'leg-too-short': () => refused({ bends: [bend('long', { reach: { leg: -1 } })] }),
  'height-within-bend': () => refused({ bends: [bend('long', { reach: { height: 10 } })] }),
  'no-leg-left': () =>
    refused({
      base: { ...box(300, 200).base, measured: 'inside' },
      bends: [bend('long', { reach: { height: 45 } }), bend('long.rim')],
    }),
  'rim-misses-leg': slantedRim,
  'flat-overlaps-itself': overlapping,
  'corner-metal-lacking': () =>
    refused({
      bends: [bend('long', { turn: 'down' }), bend('back')],
      corners: [corner(['long', 'back'], { treat: 'mitre' })],
    }),
  'corner-shrink': () => dressed(12, 60),
  'corner-shrink-much': () => dressed(90, 3),
  'corner-shrink-little': () => dressed(90, 1, 20),
  'mitre-never-meets': neverMeeting,
  // Panels, traced
  'bend-off-outline': () =>
    traced([
      [400, 0],
      [400, 100],
    ]),
  'bend-without-metal': () =>
    traced([
      [0, 190],
      [300, 190],
    ]),
  'hole-in-bend': () =>
    traced(
      [
        [0, 100],
        [300, 100],
      ],
      { holes: [square(140, 95)] },
    ),
  'hole-on-bend': () =>
    traced(
      [
        [0, 100],
        [300, 100],
      ],
      { holes: [square(140, 105)], mockup: 'metal-allowed' },
    ),
};

const RIM = '<rect x="10" y="10" width="380" height="280"/>';

function outline(text: string, format: 'svg' | 'dxf', more: Partial<OutlineOptions> = {}): Findings {
  return readOutline(text, { path: 'outline.file', format, ...more }).findings;
}

function svg(inside: string, more: Partial<OutlineOptions> = {}): Findings {
  const head = '<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="300mm" viewBox="0 0 400 300">';
  return outline(`${head}${inside}</svg>`, 'svg', more);
}

function dxf(entities: string, unit = 4): Findings {
  const circle = '0\nCIRCLE\n8\n0\n10\n50\n20\n50\n40\n30\n';
  const header = `0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n${unit}\n0\nENDSEC\n`;
  return outline(`${header}0\nSECTION\n2\nENTITIES\n${circle}${entities}0\nENDSEC\n0\nEOF\n`, 'dxf');
}

function reference(x: number, y: number, is: number): Reference {
  return {
    between: [
      { x: 0, y: 0 },
      { x, y },
    ],
    is,
  };
}

function refused(more: Partial<BuiltUp>): Findings {
  return refusal(box(300, 200, more));
}

/** The base of the usual box with corners of its own. */
function baseOf(...corners: Point[]): Partial<BuiltUp> {
  return { base: { ...box(300, 200).base, corners } };
}

/** Two legs round a corner left whole and rounded. */
function dressed(rounded: number, leg: number, degrees = 90): Findings {
  const bends = ['long', 'back'].map((on) => bend(on, { angle: toRadians(degrees), radius: 5, reach: { leg } }));
  return buildUp(box(300, 200, { bends, corners: [corner(['long', 'back'], { treat: 'dress', rounded })] }), rules)
    .findings;
}

function square(x: number, y: number): Traced['outline'] {
  return [
    [x, y],
    [x + 10, y],
    [x + 10, y + 10],
    [x, y + 10],
  ].map(([left = 0, low = 0]) => ({ x: left, y: low, bulge: 0 }));
}

function traced(line: TracedBend['line'], more: Partial<Traced> = {}): Findings {
  const edges = [
    [0, 0],
    [300, 0],
    [300, 200],
    [0, 200],
  ].map(([x = 0, y = 0]) => ({ x, y, bulge: 0 }));
  const one: TracedBend = {
    name: 'fold',
    line,
    free: 'left',
    turn: 'up',
    angle: toRadians(90),
    radius: { A: 30, B: 30 },
    neutral: null,
  };
  return layOutTraced({ thickness: 1.2, outline: edges, holes: [], mockup: 'sharp', bends: [one], ...more }).findings;
}

function overlapping(): Findings {
  const wide = { angle: toRadians(40), reach: { leg: 150 } };
  return refused({
    base: {
      ...box(200, 200).base,
      corners: [
        [0, 0],
        [200, 0],
        [200, 200],
        [-346, 200],
      ],
    },
    bends: [
      bend('long', { ...wide, radius: { short: 30, back: 120 } }),
      bend('short', { ...wide, radius: { long: 30, top: 190 } }),
    ],
    corners: [corner(['long', 'short'], { treat: 'open' })],
  });
}

/** Two legs turned over the base, at a corner far from square. */
function neverMeeting(): Findings {
  return refused({
    base: {
      corners: [
        [0, 0],
        [300, 0],
        [149.5, 66.5],
      ],
      edges: ['long', 'back', 'top'],
      measured: 'flat',
    },
    bends: [
      bend('long', { angle: toRadians(161), radius: 5, reach: { height: 179 } }),
      bend('back', { angle: toRadians(155), radius: { long: 42, top: 40 }, reach: { height: 84 } }),
    ],
  });
}

/** A rim that slants more than its leg's end does. */
function slantedRim(): Findings {
  const spec = box(300, 200, { bends: [bend('long')] });
  const placed = placeOnEdge(spec, { edge: 0, lines: spec.base.corners, standing: whatStandsWhere(spec).standing });
  if (!placed || 'code' in placed) throw new Error('no bend');
  const square = squareCut(placed.surface, 0);
  const leg = buildLeg(spec, {
    placed: { ...placed, rim: { start: 60, slope: 1 } },
    start: square,
    finish: { ...square, xAt: (out) => 300 + 2 * out },
    onRim: [null],
    base: 0,
    tab: { start: 0, finish: 0 },
  });
  return 'code' in leg ? [leg] : [];
}
