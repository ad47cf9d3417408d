import { keyFigures, nameOf, sayFigure, type Figure, type Printers } from '../../output/plan/figures';
import type { Plan } from '../../output/plan/plan';

/** A key figure of two plans beside one another; empty where a plan has it not. */
export interface FigureRow {
  readonly id: string;
  readonly name: string;
  readonly why: string;
  readonly pinned: string;
  readonly now: string;
}

/** The key figures of two plans, each once, printed alike: those of the plan as it is now, then what only the pinned one has. */
export function figureRows(pinned: Plan, now: Plan, print: Printers): FigureRow[] {
  const [before, after] = [majorFigures(pinned), majorFigures(now)];
  const only = before.filter(({ id }) => !after.some((figure) => figure.id === id));
  return [...after, ...only].map((figure) => ({
    id: figure.id,
    name: nameOf(figure),
    why: `${figure.why}.`,
    pinned: sayOf(before, figure, print),
    now: sayOf(after, figure, print),
  }));
}

function majorFigures(plan: Plan): Figure[] {
  return keyFigures(plan).filter(({ minor }) => !minor);
}

function sayOf(figures: readonly Figure[], { id }: Figure, print: Printers): string {
  const own = figures.find((figure) => figure.id === id);
  return own ? sayFigure(own, print) : '';
}
