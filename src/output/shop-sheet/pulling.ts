import { midRadiusAt } from '../../base/cone';
import { toDegrees } from '../../base/angle';
import type { Yoke } from '../../design/bend/bend-plan';
import { noseLines } from '../../design/pull/nose-lines';
import { handlePlaces, yokeDepth, yokeHoles } from '../../design/pull/yoke-parts';
import { html, type HtmlElement, type HtmlNode } from '../html';
import { footPast } from './foot-short';
import { clampOpening, clampThroat } from './hardware';
import { keyFigures, sayRows, type FigureId } from '../plan/figures';
import { pullDetails, type Detail } from '../plan/pull-details';
import { degrees, printersIn } from './measures';
import { caution, count, list, table, theirs } from './pieces';
import type { Shop } from './shop';
import { ROUNDING } from '../../base/tolerance';
import { sentences } from '../sentences';

/** Sheet, form, packing and clamps, ready to pull. */
export function setUp(shop: Shop): HtmlNode[] {
  const { bend, job, layout, plan, say } = shop;
  const reach = layout.spine.thickness + layout.foot;
  const yoke = bend.pull.yoke;
  const ears = layout.spine.ears > 0;
  return [
    list(
      'Deburr every edge of the sheet. Mark the tangent line of the held leg on the inside face, and ends A and B.',
      yoke
        ? `Set the form and the held leg on a plank ${say.atLeast(yokeDepth(yoke))} thick, as thick as the yoke is below the sheet (outer member and handles), its front edge at least ${say.atLeast(shop.tables.rules.plankShort)} short of the yoke’s nose line, so that the yoke has room under the free leg, which lies on the bench.`
        : `Lay the sheet flat on a firm bench, inside face up, the tangent line ${say.atLeast(reach)} in from the bench’s edge so that the foot ends at that edge and the free leg lies inward; or turn it so that the free leg hangs out past the opposite edge, if your clamps reach.`,
      `Stand the form on the sheet: one long edge of the spine with its front face on the held leg’s mark${markWords(shop)}, its ${job.cut.with === 'jigsaw' || ears ? 'lines' : 'ends'} A and B on the sheet’s ends, stations toward the free leg, the held leg back under the spine.`,
      ...(bend.runs.length > 1
        ? [
            [
              `For each bend, set the sheet’s edge to its own stretch of the form: `,
              ...bend.runs.flatMap((run, index): HtmlNode[] => [
                index > 0 ? '; ' : '',
                theirs(run.name),
                ` from ${say.length(run.from)} to ${say.length(run.to)}`,
              ]),
              '.',
            ],
          ]
        : []),
      packing(shop, reach),
      sentences(
        `Clamp ${layout.clampHoles.length > 0 ? 'through every hole' : ''}${layout.clampHoles.length > 0 && ears ? ' and ' : ''}${ears ? 'over both ears' : ''} to the bench: ${count(layout.clamps, 'clamp')}, each done up to about ${say.force(job.clamps.rating)} (at least ${say.force(layout.clampForce / layout.clamps)}).`,
        `They need a throat of ${say.atLeast(clampThroat(shop))} and open ${say.atLeast(clampOpening(shop))} plus the bench top.`,
      ),
      'Try to rock the form backward by hand: it must not move.',
      ...(plan.hold
        ? [
            sentences(
              `The held leg bends up a little behind the form, ${degrees(plan.hold.tail.from)} that stays; that is in the wrap below.`,
              `It bears on the bench ${say.length(plan.hold.bearing)} back and pushes the spine’s front edge up by ${say.force(plan.hold.up)}. ${spreadWords(plan.hold.spread)}`,
            ),
          ]
        : []),
      ...(yoke ? [yokeOn(shop)] : []),
    ),
    caution(
      'Cut sheet edges are sharp: cut-resistant gloves. The bench must not tip or slide: the pull lifts its front.',
    ),
  ];
}

/** Where the mark lies beside the tangent line of the bend as it was asked for. */
function markWords({ bend: { pull }, say }: Shop): string {
  if (Math.abs(pull.early) < LEAST_SHIFT) return '';
  return ` (drawn ${say.length(Math.abs(pull.early))} ${pull.early > 0 ? 'behind the bend’s own tangent line, toward the held edge' : 'ahead of the bend’s own tangent line, toward the free leg'}, where the bend really starts)`;
}

/** Below this a shift is finer than a pencil line, mm. */
const LEAST_SHIFT = 0.15;

function packing({ bend, layout, say }: Shop, reach: number): string {
  const held = bend.heldAlong
    ? Math.min(bend.legs.held, ...footPast(bend, layout).map(({ past }) => reach - past))
    : bend.legs.held;
  const ears = layout.spine.ears > 0;
  const under = held < layout.spine.thickness ? 'the rear of the spine and under each foot' : 'each foot';
  return held < reach
    ? `The held leg reaches ${say.length(held)} back${held < bend.legs.held ? ' where it is least deep under a foot' : ''} and the foot ${say.length(reach)}: lay packing of the same thickness as the sheet (${say.thickness(bend.section.thickness)}) under ${under}${ears ? ' and each ear' : ''}, or the form rocks.`
    : `The held leg reaches under the whole foot${ears ? '; pack the ears up by the thickness of the sheet' : ''}.`;
}

function spreadWords({ weak, strong }: { readonly weak: number | null; readonly strong: number }): string {
  if (weak === null) return 'Do the clamps up well: weak ones let the form lift.';
  return `With the clamps weaker or stronger by a third it is ${degrees(strong)} to ${degrees(weak)}.`;
}

function yokeOn({ bend, say, tables }: Shop): string {
  const yoke = bend.pull.yoke;
  if (!yoke) return '';
  const { A, B } = noseLines(bend);
  const where =
    Math.abs(A - B) < LEAST_SHIFT ? say.length(A) : `${say.length(A)} at end A and ${say.length(B)} at end B`;
  return sentences(
    `Mark the yoke’s nose line on the inside face, ${where} from the held leg’s mark.`,
    `Bolt the yoke on with its nose along that line: the ${yoke.nose.name} flat on the inside face, its other flange standing up at the edge away from the form; the ${yoke.outer.name} under the outside face, its front edge below the nose, the handles screwed to its underside; two ${yoke.bolt.name} bolts past each end of the sheet, ${say.length(tables.rules.yokeBoltBehind)} behind the nose, done up tight.`,
    `Handles reach to ${say.length(bend.pull.lever)} from the bend. ${noseWords(yoke, say)}`,
  );
}

/** Pulling the leg round and when to stop. */
export function pullRound({ bend, say, plan }: Shop): HtmlNode[] {
  const { pull } = bend;
  const angle = (pull.legAngle.A + pull.legAngle.B) / 2;
  const near = (pull.nearAngle.A + pull.nearAngle.B) / 2;
  const people = plan.pull && plan.pull.people > 1 ? `, ${plan.pull.people} people together` : '';
  const grasp = {
    bare: sentences(
      `Take hold of the free leg ${say.length(pull.lever)} from where it leaves the form, hands spread to the quarter points; a stiff batten clamped along the edge gives the fingers hold and spreads the pull.`,
      `Expect ${say.force(pull.handForce)} in all${people}.`,
    ),
    yoke: `Take hold of the yoke’s handles ${say.length(pull.lever)} from where the sheet leaves the form. Expect ${say.force(pull.handForce)} in all${people}.`,
    press: `Press a stiff batten down on the leg ${say.length(pull.lever)} from where it leaves the form, and follow the bend with it. Expect ${say.force(pull.handForce)} in all${people}.`,
  }[pull.with];
  return [
    list(
      `Cut the angle gauge lettered WHILE PULLED from the templates, or set a bevel to ${degrees(180 - toDegrees(angle))} between the legs (${say.angle(angle)} from flat).`,
      grasp,
      `Pull up and over in one steady motion, always square to the leg ${pull.with === 'yoke' ? 'or the yoke' : 'at your hands'}, never in toward the bend and never straight up: at the end you pull ${toDegrees(angle) > 90 ? 'back over the form' : 'up and back'}.`,
      sentences(
        `The leg bends beyond the form too, so it leads: stop when the gauge fits ${pull.with === 'yoke' ? 'the yoke' : 'the leg at your hands'}, ${say.angle(angle)} from flat.`,
        `Close to the bend, past its round, the leg then stands at ${say.angle(near)}.`,
      ),
      `The marks on the stations show where the sheet should now leave the round edges, at ${say.angle(bend.wrap.chosen)} of wrap: look at them before you let go.`,
    ),
    caution(
      sentences(
        'A sheet pulled tight stores energy.',
        'Stand to the side of its swing, keep faces and fingers out of it, nobody opposite you; let it back under control, never by dropping it.',
        'Stop at any crack, slip or creak.',
      ),
    ),
  ];
}

/** Letting go, measuring, and how much further. */
export function letGo({ bend, say }: Shop): HtmlNode[] {
  const { pull } = bend;
  const angle = (pull.legAngle.A + pull.legAngle.B) / 2;
  const radii =
    bend.form.halfAngle === 0
      ? `${say.length(bend.finished.radiusA)} inside`
      : `${say.length(bend.finished.radiusA)} inside at A, ${say.length(bend.finished.radiusB)} at B, measured square to the centre line`;
  const opens =
    midRadiusAt(bend.finished, bend.section.thickness, bend.length / 2) /
    midRadiusAt(bend.form, bend.section.thickness, bend.length / 2);
  return [
    list(
      `Ease the leg back by ${say.angle(Math.max(0, angle - bend.angle))}, until it pushes no more; only then loosen the clamps, a little each in turn.`,
      `Check the angle with the gauge lettered FINISHED or a bevel: ${say.angle(bend.angle)} from flat (${degrees(180 - toDegrees(bend.angle))} between the legs). Check the radius: ${radii}.`,
      `Short of the angle: clamp up again and pull further than before, ${degrees(opens)} at the gauge for every degree that lacks. Too far: open it by hand over the edge of the bench.`,
      sentences(
        'Write down what the gauge showed while pulled, where the sheet left the form, and the angle and radius that came out: the best trial strip there is.',
        'Entered among the job’s trials as a finished part, they say whether to recut or shim the form and how far to pull the next.',
      ),
      `The bend’s round runs out ${say.length(pull.reach)} past the form and departs by up to ${say.length(Math.max(pull.departure.A, pull.departure.B))} from one round arc; measure the leg for trimming now, after bending.`,
    ),
    caution(
      'A clamped, bent sheet can kick when a clamp is let off. Keep a hand on the leg, stand clear of the sheet’s end.',
    ),
  ];
}

/** How the nose is ground so that it stays out of the wood, and by how much it does. */
function noseWords({ clears, nose, wedge }: Yoke, say: Shop['say']): string {
  return sentences(
    `Before that, grind the ${nose.name} to a wedge at its front edge, from the side away from the sheet: ${say.thickness(wedge.edge)} thick at the edge, whole ${say.length(wedge.back)} back, its corner on the sheet broken with a file.`,
    `So it clears the stations by ${say.length(clears)} at the end of the pull, and nothing is taken off them: the other hand is bent on the same edges.`,
  );
}

/** Numbers of pull and hold as rows of a table. */
function detailRows({ plan, say }: Shop, which: (detail: Detail) => boolean): (readonly [string, string])[] {
  return sayRows(pullDetails(plan).filter(which), printersIn(say));
}

/** How the leg beyond the form bends and how the form is held, in numbers. */
export function legAndHoldTable(shop: Shop): HtmlElement {
  const figures = keyFigures(shop.plan).filter(({ id }) => LEG_AND_HOLD.includes(id));
  return table(
    'Pull and hold in numbers',
    ['What', 'Measure'],
    [
      ...sayRows(figures, printersIn(shop.say)),
      ...detailRows(shop, ({ of, id }) => (of === 'leg' || of === 'hold') && id !== 'with' && id !== 'stands'),
    ],
  );
}

/** Key figures that stand in no summary. */
const LEG_AND_HOLD: readonly FigureId[] = ['wrap-needed', 'tail', 'departure', 'held'];

/** How the yoke is drilled and joined; what bare hands would need. Nothing without a yoke. */
export function yokeTable(shop: Shop): HtmlElement[] {
  const { bend, say, plan, job, tables } = shop;
  const yoke = bend.pull.yoke;
  if (!yoke) return [];
  const bare = plan.pull?.bare ?? null;
  const people = bare ? Math.ceil(bare.handForce / job.effort.handForce - ROUNDING) : 0;
  const holes = [...new Set(yokeHoles(yoke, tables.rules).map((hole) => say.length(hole.at)))];
  return [
    table(
      'Yoke, to grip the free leg',
      ['What', 'Measure'],
      [
        ...detailRows(shop, ({ of, id }) => of === 'yoke' && !['with', 'handles', 'bare'].includes(id)),
        [
          `Holes ${say.tool(yoke.bolt.hole)} through nose and outer member, from their end at A`,
          `${holes.join(', ')}; all ${say.length(tables.rules.yokeBoltBehind)} behind the nose`,
        ],
        [
          'Middles of the handles from that end',
          handlePlaces(yoke)
            .map((place) => say.length(place))
            .join(', '),
        ],
      ],
    ),
    html(
      'p',
      {},
      bare
        ? sentences(
            `With bare hands the leg would come out flat only if held within ${say.length(bare.lever)} of the bend, at ${say.force(bare.handForce)}: ${count(people, 'person', 'people')}.`,
            'With the yoke the blank needs no extra metal for leverage.',
          )
        : 'With bare hands the leg would not come out flat at any lever. With the yoke the blank needs no extra metal for leverage.',
    ),
  ];
}
