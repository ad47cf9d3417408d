import type { End } from '../../base/ends';
import makerjs from 'makerjs';
import { radiusAtCentre, type Cone } from '../../base/cone';
import type { Loop, Shape } from '../../base/drawing';
import type { Spine } from '../../design/fixture/fixture';
import type { Joints, RouterJoints, Slot } from '../../design/joints/joints';
import { loopsOf } from './model';

/** The spine's edge: both long edges on the cone, notches where a slot runs out of an end, their corners relieved so that the board in them reaches their bottom. */
export function spineOutline(spine: Spine, form: Cone, joints: Joints): Loop[] {
  const half = (s: number): number => radiusAtCentre(form, s);
  const [start, end] = [-spine.ears, spine.length + spine.ears];
  const relief = joints.with === 'laser' ? joints.relief : 0;
  const open = slotsOf(joints).sort((a, b) => a.offset - b.offset);
  const notches = (edge: End): [number, number][] =>
    open
      .filter((slot) => slot.open === edge)
      .flatMap(({ low, high, offset, width }): [number, number][] => {
        const [outer, inner, deeper] = edge === 'B' ? [high, low, low - relief] : [low, high, high + relief];
        const [bottom, top] = [offset - width / 2, offset + width / 2];
        return [
          [outer, bottom],
          [deeper, bottom],
          [deeper, bottom + relief],
          [inner, bottom + relief],
          [inner, top - relief],
          [deeper, top - relief],
          [deeper, top],
          [outer, top],
        ];
      });
  return loopsOf(
    new makerjs.models.ConnectTheDots(true, [
      [start, -half(start)],
      [end, -half(end)],
      ...notches('B'),
      [end, half(end)],
      [start, half(start)],
      ...notches('A').reverse(),
    ]),
    'outline',
  );
}

/** Slots through the spine that have wood all round. */
export function spineSlots(joints: Joints): Shape[] {
  return slotsOf(joints)
    .filter(({ open }) => open === null)
    .flatMap(({ low, high, offset, width }) =>
      loopsOf(
        new makerjs.models.ConnectTheDots(
          true,
          corners(
            low,
            high,
            () => offset - width / 2,
            () => offset + width / 2,
          ),
        ),
        'hole',
      ),
    );
}

function slotsOf(joints: Joints): Slot[] {
  return joints.with === 'laser' ? joints.boards.flatMap(({ slots }) => slots) : [];
}

/** Grooves across the spine's front; they run `overrun` mm past the long edges, and past the ends they are open to, so that the bit leaves them square. */
export function spineGrooves({ grooves }: RouterJoints, form: Cone, overrun: number): Shape[] {
  const edge = (s: number): number => radiusAtCentre(form, s) + overrun / Math.cos(form.halfAngle);
  return grooves.flatMap(({ low, high, open }) => {
    const [from, to] = [open === 'A' ? low - overrun : low, open === 'B' ? high + overrun : high];
    return loopsOf(
      new makerjs.models.ConnectTheDots(
        true,
        corners(from, to, (s) => -edge(s), edge),
      ),
      'groove',
    );
  });
}

function corners(
  low: number,
  high: number,
  bottom: (s: number) => number,
  top: (s: number) => number,
): [number, number][] {
  return [
    [low, bottom(low)],
    [high, bottom(high)],
    [high, top(high)],
    [low, top(low)],
  ];
}
