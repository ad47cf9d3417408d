import makerjs from 'makerjs';
import type { Shape } from '../../base/drawing';
import type { FixtureLayout } from '../../design/fixture/fixture';
import type { Joints } from '../../design/joints/joints';
import { grooveOverrun } from '../../design/joints/overrun';
import type { Job, LaserCut, RouterCut } from '../../job/job';
import type { ToolRules } from '../../tables/tables';
import { labelLength } from './lengths';
import { loopsOf } from './model';
import type { Part } from './part';
import { label } from './shapes';
import { tabbedEdge } from './tabbed-edge';

/** Width of the strip the openings are in, mm. */
const STRIP = 46;
/** Wood round the openings, mm. */
const WALL = 12;
/** Length of the tongue's tab along the slots, mm. */
const TAB = 20;
/** The tongue, which has room for a hand to hold, mm. */
const TONGUE = { half: 22, height: 34 };
const LETTERS = 3;

/**
 * Pieces to try the joints' fit on, cut before anything else: a strip of the spine's board with three openings, one narrower and one
 * wider than the job's, each marked with its own fit; for a laser also a tongue of as many layers as a station, with a tab.
 * A jigsaw needs none. Openings as wide as the stations' stack is thick; a router tries them with an offcut of the stations' board.
 */
export function drawFitTest(layout: FixtureLayout, job: Job, joints: Joints, tools: ToolRules): Part[] {
  const { cut } = job;
  if (cut.with === 'jigsaw' || joints.with === 'jigsaw') return [];
  const thickness = layout.layers.stations * layout.boardThickness.stations;
  const spine = { stock: job.board.spine.stock, thickness: layout.boardThickness.spine };
  const strip: Part = {
    id: 'fit-test',
    kind: 'test',
    name: 'Fit test strip',
    ...spine,
    drawing: { shapes: drawStrip(thickness, cut, job, tools) },
  };
  if (joints.with !== 'laser') return [strip];
  const { stations } = layout.layers;
  const tongue = { kind: 'test' as const, stock: job.board.stations.stock, thickness: layout.boardThickness.stations };
  return [
    strip,
    ...Array.from({ length: stations }, (_, index): Part => {
      const id = `fit-tongue-${index + 1}`;
      return {
        id,
        name: `Fit test tongue ${index + 1}`,
        ...tongue,
        drawing: { shapes: drawTongue(id, joints.tabLength / layout.layers.spine, joints.relief) },
      };
    }),
  ];
}

/** The job's fit with one tighter and one looser beside it, mm; two looser ones where none is tighter. */
export function fitsToTry(fit: number, step: number): number[] {
  return fit > 0 ? [Math.max(0, fit - step), fit, fit + step] : [fit, fit + step, fit + 2 * step];
}

function drawStrip(thickness: number, cut: RouterCut | LaserCut, job: Job, tools: ToolRules): Shape[] {
  const overrun = grooveOverrun(cut, tools);
  const fits = fitsToTry(cut.fit, tools.fitStep);
  const pitch = thickness + WALL;
  const length = fits.length * pitch + WALL;
  const outline = rectangle({ left: 0, low: 0, right: length, high: STRIP }, 'outline');
  const openings = fits.map((fit, index) => ({
    fit,
    low: WALL + index * pitch - fit / 2,
    high: WALL + index * pitch + thickness + fit / 2,
  }));
  const text = openings.flatMap(({ fit, low }) =>
    label(labelLength(fit, job.units), {
      x: low - WALL / 2 + LETTERS / 2,
      y: STRIP / 2,
      width: STRIP - 4,
      tallest: LETTERS,
      angle: Math.PI / 2,
    }),
  );
  if (cut.with === 'router')
    return [
      ...outline,
      ...openings.flatMap(({ low, high }) =>
        rectangle({ left: low, low: -overrun, right: high, high: STRIP + overrun }, 'groove'),
      ),
      ...text,
    ];
  return [
    ...outline,
    ...openings.flatMap(({ fit, low, high }) =>
      rectangle({ left: low, low: (STRIP - TAB - fit) / 2, right: high, high: (STRIP + TAB + fit) / 2 }, 'hole'),
    ),
    ...text,
  ];
}

function drawTongue(id: string, tabLength: number, relief: number): Shape[] {
  const edge = tabbedEdge(TONGUE.half, [{ offset: 0, width: TAB }], tabLength, relief);
  const { half, height } = TONGUE;
  return [
    ...loopsOf(new makerjs.models.ConnectTheDots(true, [...edge, [half, height], [-half, height]]), 'outline'),
    ...label(id, { x: 0, y: height / 2, width: 2 * half - 4, tallest: LETTERS }),
  ];
}

function rectangle(
  {
    left,
    low,
    right,
    high,
  }: { readonly left: number; readonly low: number; readonly right: number; readonly high: number },
  operation: 'outline' | 'groove' | 'hole',
): Shape[] {
  return loopsOf(
    new makerjs.models.ConnectTheDots(true, [
      [left, low],
      [right, low],
      [right, high],
      [left, high],
    ]),
    operation,
  );
}
