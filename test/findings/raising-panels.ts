import { readFileSync } from 'node:fs';
import { stringify } from 'yaml';
import { parseAssembly, parseFile, parseJob } from '../../src/job/parse';
import { planJob } from '../../src/output/pipeline';
import { planAssembly, type AssemblyMember } from '../../src/output/panel/assembly/plan-assembly';
import { planPanel } from '../../src/output/panel/plan-panel';
import { loadPanelRules } from '../../src/tables/panel-rules';
import { coverOverFrame } from '../helpers/over-bend';
import { drawingOf, tables } from '../helpers/starters';
import { BASE, type Change } from './producing';
import type { Vertex } from '../../src/base/drawing';
import type { Finding } from '../../src/base/findings';
import { finding } from '../../src/findings/finding';
import { layOutMetal } from '../../src/drawing/boards/lay-out-metal';
import { edgeWork } from '../../src/panel/edges/edges';
import { checkClearOfBends } from '../../src/panel/seams/clear-of-bends';
import { checkJoin } from '../../src/panel/seams/join';
import { layOutSeam } from '../../src/panel/seams/lay-out-seam';
import type { Seam, SeamLayout } from '../../src/panel/seams/seam';
import { outlineOf } from '../../src/panel/trace/outline';
import { cutAndTrim } from '../../src/panel/trim/cut-and-trim';
import type { PulledSide } from '../../src/panel/trim/trim';
import { loadFasteners } from '../../src/tables/fasteners';

/** Findings of stages of a panel, raised by the stage itself with what raises them. */

const { fasteners, rules } = loadFasteners();

function fastener(id: string): Seam['fastener'] {
  const found = fasteners.find((row) => row.id === id);
  if (!found) throw new Error(`no fastener ${id}`);
  return found;
}

const loop = (...corners: readonly (readonly [number, number])[]): Vertex[] =>
  corners.map(([x, y]) => ({ x, y, bulge: 0 }));
const EDGE = loop([0, 0], [560, 0]);

const plain: Seam = {
  on: 'top',
  lap: 32,
  fastener: fastener('M4'),
  countersunk: false,
  ends: 16,
  spacing: { count: 7 },
  rows: 1,
  drill: 'now',
};

function lay(change: Partial<Seam>, run = EDGE) {
  return layOutSeam({ ...plain, ...change }, { run, thickness: 1.5, mating: 1.5 }, rules, 'seams[0]');
}

const seam =
  (change: Partial<Seam>, run = EDGE) =>
  (): readonly Finding[] =>
    lay(change, run).findings;

function laid(change: Partial<Seam>, run = EDGE): SeamLayout {
  const { value } = lay(change, run);
  if (!value) throw new Error('no seam');
  return value;
}

const join =
  (change: Partial<Seam>, run = EDGE) =>
  (): readonly Finding[] =>
    checkJoin(
      {
        outer: { name: 'middle.left', layout: laid({}) },
        inner: { name: 'left.top', layout: laid(change, run) },
        drill: 'both',
      },
      rules,
      'joins[0]',
    );

/** A leg of 50 below a base, and what reaches under it. */
const leg = (lever: number): PulledSide => ({
  bend: 'long',
  line: [
    { x: 300, y: 50 },
    { x: 0, y: 50 },
  ],
  free: [loop([0, 50], [0, 0], [300, 0], [300, 50])],
  lever,
});
const hooked = outlineOf(
  loop(
    [300, 50],
    [330, 50],
    [330, -100],
    [100, -100],
    [100, -120],
    [360, -120],
    [360, 200],
    [0, 200],
    [0, 50],
    [0, 0],
    [300, 0],
  ),
  [],
);
/** Two legs that are pulled toward each other, across the mouth of a U. */
const mouth = outlineOf(loop([0, 0], [50, 0], [50, 300], [450, 300], [450, 0], [500, 0], [500, 400], [0, 400]), []);
const inward = (
  bend: string,
  from: readonly [number, number],
  to: readonly [number, number],
  free: Vertex[],
): PulledSide => ({
  bend,
  line: [
    { x: from[0], y: from[1] },
    { x: to[0], y: to[1] },
  ],
  free: [free],
  lever: 260,
});

const BOARD = 'board';
const SEAM = (on: string): string => `{ on: ${on}, lap: 1, fastener: rivet-1/8, count: 6 }`;

export const raising: Readonly<Record<string, () => readonly Finding[]>> = {
  'seam-corner': seam({}, loop([0, 0], [300, 0], [300, 300])),
  'seam-diameter': seam({ fastener: fastener('M8'), lap: 60, ends: 30, spacing: { count: 4 } }),
  'seam-lap': seam({ lap: 12 }),
  'seam-ends': seam({ ends: 5 }),
  'seam-count': seam({ spacing: { count: 1 } }),
  'seam-short': seam({ ends: 300 }),
  'seam-pitch': seam({ spacing: { count: 100 } }),
  'seam-over-bend': () =>
    checkClearOfBends(
      laid({}),
      [{ name: 'short', outline: loop([200, -5], [250, -5], [250, 90], [200, 90]) }],
      'seams[0]',
    ),
  'join-length': join({}, loop([0, 0], [570, 0])),
  'join-lap': join({ lap: 40 }),
  'join-fastener': join({ fastener: fastener('M3') }),
  'join-count': join({ spacing: { count: 8 } }),
  'join-holes': join({ ends: 18 }),
  'trim-on-panel': () => cutAndTrim(hooked, [leg(160)], 'trim').findings,
  'trim-on-trim': () =>
    cutAndTrim(
      mouth,
      [
        inward('left', [40, 200], [40, 10], loop([40, 10], [50, 10], [50, 200], [40, 200])),
        inward('right', [460, 10], [460, 200], loop([450, 10], [460, 10], [460, 200], [450, 200])),
      ],
      'trim',
    ).findings,
  'metal-too-small': () =>
    layOutMetal(
      [{ id: 'left', name: 'left', outline: hooked }],
      {
        metal: 'steel-cold-rolled-cs',
        thickness: 1,
        density: 7850,
        sheet: { width: 200, length: 300 },
        offcuts: [],
        grain: 'any',
        gap: 5,
        border: 3,
      },
      'sheet.stock',
    ).findings,
  'no-such-edge': () => edgeWork(hooked, ['side'], 'edges.cap').findings,
  'leg-or-height': fromFile('tray', (text) => text.replace('leg: 60', 'leg: 60, height: 90')),
  'unknown-fastener': deflector(BOARD, 'seams: [{ on: deck, lap: 30, fastener: bolt-99, count: 5 }]\nboard'),
  'count-or-pitch': deflector(BOARD, 'seams: [{ on: deck, lap: 30, fastener: M4, count: 5, pitch: 40 }]\nboard'),
  'no-such-rim': deflector(BOARD, 'trim: { after: [bow.rim] }\nboard'),
  'seams-crowded': fromFile('hood-side', (text) =>
    text.replace(/\nseams:.*?\n\n/su, `\nseams: [${['top', 'back'].map(SEAM).join(', ')}]\n\n`),
  ),
  'corner-block': fromFile('hood-side', (text) =>
    text.replace('long/short: {', 'long/back: { block: true }\n  long/short: {'),
  ),
  'trim-before-next': fromFile('hood-side', (text) => text),
  'panel-name': assembly('middle:', 'mid/dle:'),
  'panel-file-outside': assembly('dust-hood/middle', '../middle'),
  'panel-file-unread': () => [finding('panel-file-unread', 'panels.left', { file: 'side.yaml', trouble: 'missing' })],
  'mirror-of-none': assembly('mirror: left', 'mirror: lefd'),
  'panel-refused': assembly('title', 'title', (text) => text.replace('[[0, 0], [400, 0]', '[[400, 0], [0, 0]')),
  'no-such-seam': assembly('middle.left', 'middle.front'),
  'join-drill': assembly('drill: inner', 'drill: both'),
  // The middle of 1.6 mm, the sides still of 1.2.
  'join-mating': assembly('title', 'title', (text) =>
    text.includes('drill: match') ? text.replace('thickness: 1.2', 'thickness: 1.6') : text,
  ),
  'join-over-bend': () => coverOverFrame({ drill: 'now' }, 'both').findings,
  'join-bends': () => coverOverFrame({ bends: false }).findings,
  'join-bend-angle': () => coverOverFrame({ angle: 85 }).findings,
  'join-bend-radius': () => coverOverFrame({ radius: 30 }).findings,
  'join-bend-place': () => coverOverFrame({ line: 86 }).findings,
  'join-length-over-bends': () => coverOverFrame({ long: 300 }).findings,
  'file-or-corners': deflector('mockup: sharp', 'corners: [[0, 0], [9, 0], [9, 9]]\n  mockup: sharp'),
  'drawing-outside': deflector('file: traced', 'file: ../traced'),
  'drawing-kind': deflector('deflector.svg', 'deflector.png'),
  'drawing-unread': () => [finding('drawing-unread', 'outline.file', { file: 'wing.svg', trouble: 'missing' })],
  'bend-line-short': deflector('[230, 70]]', '[20, 70]]'),
  'bend-named-twice': deflector('\nboard', `${second('spray', '[[60, 20], [60, 30]]')}\nboard`),
  'zones-overlap': deflector('\nboard', `${second('lug', '[[60, 20], [60, 30]]')}\nboard`),
  'corners-as-drawn': deflector('\nboard', '\ncorners: { deck/spray: { treat: open } }\nboard'),
  'stations-overlap': sharing({}, [0, 400], [10, 300]),
  'parts-clash': sharing({ board: { spine: 'mdf-18', stations: 'mdf-3' } }, [0, 200], [200, 400]),
  'grooves-too-close': sharing({ cut: { with: 'router' } }, [0, 400], [0, 39]),
  'slots-too-close': sharing({ cut: { with: 'laser' }, board: { stock: 'mdf-6' } }, [0, 400], [0, 39]),
  'no-such-form': fromFile('tray', (text) => text.replace('leg: 60', 'leg: 60, form: { with: front }')),
  'form-too-short': fromFile('tray', (text) => text.replace(BACK, 'radius: 30, leg: 60, form: { with: left } }')),
  'form-differs': fromFile('bracket', (text) => text.replace('leg: 70', 'leg: 70, form: { with: arm }')),
  // Too small round for holes, it is clamped over its ears: no place for a shorter bend.
  'form-lacks-clamps': fromFile('bracket', (text) =>
    text
      .replace('[260, 120], [0, 120]', '[230, 120], [30, 120]')
      .replace('radius: { left: 20, right: 26 }', 'radius: 20, form: { with: foot }'),
  ),
  'form-nearly': fromFile('tray', (text) =>
    text.replace('radius: 30, leg: 60 }', 'radius: 30.6, leg: 60, form: { with: right } }'),
  ),
};

/** What the form of {@link BASE} finds that two bends are made on, each from one place of it to another, mm. */
function sharing(
  change: Change,
  ...stretches: readonly (readonly [from: number, to: number])[]
): () => readonly Finding[] {
  return () => {
    const { job, findings } = parseJob(stringify({ ...BASE, ...change }), tables);
    if (!job) return findings;
    const runs = stretches.map(([from, to], index) => ({ name: `bend ${index + 1}`, from, to }));
    return planJob({ ...job, runs }, tables).findings;
  };
}

/** The tray's longest bend, its last. */
const BACK = /radius: 30, leg: 60 \}(?=\n\nboard)/u;

/** Another bend, as the deflector's file writes them. */
function second(name: string, line: string): string {
  return `  - { name: ${name}, line: ${line}, free: left, angle: 90, radius: 10 }\n`;
}

/** What the dust hood's file finds with one thing in it put in place of another, its middle changed. */
function assembly(was: string, is: string, middle = (text: string) => text): () => readonly Finding[] {
  return () => {
    const parsed = parseAssembly(readFileSync('templates/assemblies/dust-hood.yaml', 'utf8').replace(was, is), tables);
    if (!parsed?.job) return parsed?.findings ?? [];
    const plan = (file: string): AssemblyMember['planned'] => {
      const panel = parseFile(middle(readFileSync(`templates/assemblies/${file}`, 'utf8')), tables);
      if (panel.kind !== 'panel' || !panel.job) throw new Error(`${file} is no panel`);
      return planPanel(panel.job, { tables, rules: loadPanelRules() }, panel.findings);
    };
    const members = ['left', 'middle', 'right'].map((name): AssemblyMember => {
      const file = `dust-hood/${name === 'middle' ? 'middle' : 'side'}.yaml`;
      return { name, file, mirrors: name === 'right' ? 'left' : null, planned: plan(file) };
    });
    return planAssembly(parsed.job, members).findings;
  };
}

/** What the deflector's file finds with one thing in it put in place of another. */
function deflector(was: string, is: string): () => readonly Finding[] {
  return fromFile('traced-deflector', (text) => text.replace(was, is));
}

/** What a panel's file finds, changed. */
function fromFile(starter: string, change: (text: string) => string): () => readonly Finding[] {
  return () => {
    const parsed = parseFile(change(readFileSync(`templates/panels/${starter}.yaml`, 'utf8')), tables);
    if (parsed.kind !== 'panel' || !parsed.job) return parsed.findings;
    return planPanel(parsed.job, { tables, rules: loadPanelRules(), drawing: drawingOf(starter) }, parsed.findings)
      .findings;
  };
}
