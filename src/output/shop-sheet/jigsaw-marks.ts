import { reliefCuts } from '../../drawing/tooling/relief-cuts';
import type { Shop } from './shop';

/** Names of the parts that relief cuts are drawn at. */
export function withReliefCuts({ job: { cut }, parts, tables }: Shop): string[] {
  return cut.with === 'jigsaw'
    ? parts.filter(({ drawing }) => reliefCuts(drawing.shapes, cut, tables.tools).length > 0).map(({ id }) => id)
    : [];
}

/** Whether narrow waste is hatched on any of the boards: there are lines there beside those of the parts. */
export function isHatched({ job, boards, parts }: Pick<Shop, 'job' | 'boards' | 'parts'>): boolean {
  const lines = (shapes: readonly { readonly kind: string }[]): number =>
    shapes.filter(({ kind }) => kind === 'line').length;
  return (
    job.cut.with === 'jigsaw' &&
    boards.some(
      ({ drawing, placements }) =>
        lines(drawing.shapes) >
        placements.reduce((sum, { part }) => sum + lines(parts.find(({ id }) => id === part)?.drawing.shapes ?? []), 0),
    )
  );
}
