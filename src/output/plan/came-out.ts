import { toDegrees } from '../../base/angle';
import type { BendPlan } from '../../design/bend/bend-plan';
import type { Printers } from './figures';
import type { Plan, PlanPart } from './plan';

/** The wrap and the leg's angle while pulled that the plan now asks for, degrees. */
export interface NewPull {
  readonly wrap: number;
  readonly gauge: number;
}

/** What the plan now asks for. */
export function newPull({ wrap, pull: { legAngle } }: BendPlan): NewPull {
  return { wrap: toDegrees(wrap.chosen), gauge: toDegrees((legAngle.A + legAngle.B) / 2) };
}

/** What came out of the form, part by part, in sentences; nothing where no part is among the job's trials. */
export function sayParts({ trials, bend, pull }: Plan, print: Printers): readonly (readonly string[])[] {
  if (!trials || !bend || !pull) return [];
  const to = { wrap: bend.wrap.chosen, gauge: (pull.legAngle.from + pull.legAngle.to) / 2 };
  return trials.parts.map((part) => sayPart(part, to, print));
}

/** What came out of the form and what to do about it, in sentences: the same in the table, on the page and on the shop sheet. */
export function sayPart(part: PlanPart, to: NewPull, print: Printers): readonly string[] {
  return [cameOut(part, print), formWords(part, print), ...pullWords(part, to, print), sureWords(part, print)];
}

function cameOut({ trial, at, form, radius, angle, reckoned }: PlanPart, print: Printers): string {
  const measured = [
    ...(radius === null ? [] : [`radius ${print.length(radius)} (reckoned ${print.length(reckoned.radius)})`]),
    ...(angle === null ? [] : [`angle ${print.angle(angle)} (reckoned ${print.angle(reckoned.angle ?? angle)})`]),
  ];
  return `Trial ${trial}, a finished part, ${print.length(at)} from end A, off a form of ${print.length(form)}: ${measured.join(', ')}.`;
}

function formWords({ advice, form, cameOut: came, sure }: PlanPart, print: Printers): string {
  const { by, to, wanted } = advice;
  switch (advice.do) {
    case 'recut':
      return `Recut the form there ${print.length(by)} smaller, to ${print.length(to)}.`;
    case 'shim':
      return `Shim the form’s round edge there by ${print.length(by)}, to ${print.length(to)}: sheet or card laid round it over the whole wrap.`;
    case 'keep':
      return wanted === null
        ? `The form’s radius is as the job gives it, ${print.length(form)} there.`
        : `Leave the form as it is: ${print.length(came)} is ${print.length(wanted)} as near as it is measured, within ${print.length(sure.radius)}.`;
  }
}

function pullWords({ again, wrap, advice }: PlanPart, to: NewPull, print: Printers): string[] {
  const anew = `${advice.do === 'keep' ? 'For a form cut anew' : `On the ${advice.do === 'recut' ? 'recut' : 'shimmed'} form`}: let the sheet leave it at ${print.angle(to.wrap)} of wrap, the leg at ${print.angle(to.gauge)}.`;
  if (again === null || wrap === null) return [anew];
  const more = again - wrap;
  const how =
    Math.abs(more) < 0.05
      ? 'pull as far as before'
      : `pull ${print.angle(Math.abs(more))} ${more > 0 ? 'further' : 'less'} than before`;
  return [`On the form as it is: ${how}, to ${print.angle(again)} of wrap.`, anew];
}

function sureWords({ sure, radius }: PlanPart, print: Printers): string {
  const bounds = [
    `radius ± ${print.length(sure.radius)}${radius === null ? ', by the angle alone' : ''}`,
    ...(sure.angle === null
      ? ['angle no surer than the clamps and the pull are alike']
      : [`angle ± ${print.angle(sure.angle)}`]),
  ];
  return `Good to: ${bounds.join('; ')}, pulled and clamped the same way.`;
}
