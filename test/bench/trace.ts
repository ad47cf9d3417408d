import { readOutline, type OutlineOptions } from '../../src/panel/trace/read-outline';

/** A drawing of an outline with so many corners, every fifth side an arc, and so many round holes, as it is read: first time and median, ms. */
export interface Row {
  readonly name: string;
  readonly sides: number;
  readonly holes: number;
  readonly first: number;
  readonly median: number;
}

const TIMES = 15;
type Point = readonly [number, number];

function corners(count: number): Point[] {
  return Array.from({ length: count }, (_, index) => {
    const angle = (2 * Math.PI * index) / count;
    const radius = 400 + 30 * Math.sin(9 * angle);
    return [500 + radius * Math.cos(angle), 500 + radius * Math.sin(angle)];
  });
}

function centres(count: number): Point[] {
  return Array.from({ length: count }, (_, index) => [320 + 40 * (index % 10), 350 + 50 * Math.floor(index / 10)]);
}

function svg(outline: readonly Point[], holes: readonly Point[]): string {
  const sides = outline.map(([x, y], index) =>
    index === 0 ? `M${x} ${y}` : index % 5 === 0 ? `A60 60 0 0 1 ${x} ${y}` : `L${x} ${y}`,
  );
  const circles = holes.map(([x, y]) => `<circle cx="${x}" cy="${y}" r="4"/>`).join('');
  return `<svg xmlns="http://www.w3.org/2000/svg" width="1000mm" height="1000mm" viewBox="0 0 1000 1000"><path d="${sides.join('')}Z"/>${circles}</svg>`;
}

function dxf(outline: readonly Point[], holes: readonly Point[]): string {
  const vertices = outline.map(([x, y], index) => `10\n${x}\n20\n${y}\n42\n${index % 5 === 4 ? 0.05 : 0}\n`).join('');
  const circles = holes.map(([x, y]) => `0\nCIRCLE\n8\n0\n10\n${x}\n20\n${y}\n40\n4\n`).join('');
  return `0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n0\nLWPOLYLINE\n8\n0\n70\n1\n${vertices}${circles}0\nENDSEC\n0\nEOF\n`;
}

export function rows(): Row[] {
  const [outline, holes] = [corners(200), centres(60)];
  return [row('SVG', svg(outline, holes), 'svg'), row('DXF', dxf(outline, holes), 'dxf')];
}

function row(name: string, text: string, format: OutlineOptions['format']): Row {
  const times: number[] = [];
  let read = null;
  for (let time = 0; time < TIMES; time++) {
    const began = performance.now();
    read = readOutline(text, { path: 'outline.file', format }).value;
    times.push(performance.now() - began);
  }
  if (!read) throw new Error(`the bench's own ${name} is refused`);
  const { vertices, holes } = read.outline;
  const median = [...times].sort((a, b) => a - b)[Math.floor(TIMES / 2)] ?? NaN;
  return { name, sides: vertices.length, holes: holes.length, first: times[0] ?? NaN, median };
}
