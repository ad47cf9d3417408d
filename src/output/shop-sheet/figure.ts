import type { Picture } from '../picture/isometric';
import type { Ink, PaperPoint, PictureShape } from '../picture/paint';
import { fixed } from '../number';
import { el, type Element } from '../xml';

/** Lit and unlit colour of each body, ours: woods apart from the sheet in black and white too. */
const PAINT: Readonly<Record<Extract<PictureShape, { kind: 'fill' }>['body'], readonly [dark: Rgb, light: Rgb]>> = {
  spine: [
    [150, 120, 82],
    [226, 203, 165],
  ],
  station: [
    [178, 150, 105],
    [250, 234, 203],
  ],
  backing: [
    [160, 132, 92],
    [236, 215, 178],
  ],
  sheet: [
    [140, 154, 164],
    [222, 231, 237],
  ],
  'sheet-outside': [
    [120, 134, 146],
    [200, 211, 219],
  ],
  yoke: [
    [128, 122, 112],
    [205, 199, 188],
  ],
  plank: [
    [170, 140, 100],
    [240, 222, 190],
  ],
  clamp: [
    [90, 94, 100],
    [165, 170, 178],
  ],
};

type Rgb = readonly [number, number, number];

const PEN: Readonly<Record<Ink, readonly [colour: string, width: number]>> = {
  edge: ['#222222', 0.22],
  hole: ['#222222', 0.22],
  screw: ['#222222', 0.15],
  scribe: ['#3a4a55', 0.18],
  pull: ['#b3261e', 0.7],
  leader: ['#555555', 0.15],
};

const SPOT: Readonly<Record<Ink, string>> = {
  edge: 'none',
  hole: '#3b2f22',
  screw: '#8d8d8d',
  scribe: 'none',
  pull: '#b3261e',
  leader: 'none',
};

/** Below what a printer resolves, mm. */
const DECIMALS = 2;

/** A picture as an SVG element of its true size on paper, mm; `title` says what it shows to those who cannot see it. */
export function drawFigure(picture: Picture, title: string): Element {
  const [width, height] = [num(picture.width), num(picture.height)];
  return el(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${width}mm`,
      height: `${height}mm`,
      viewBox: `0 0 ${width} ${height}`,
    },
    [el('title', {}, [title]), ...picture.shapes.map(draw)],
  );
}

function draw(shape: PictureShape): Element {
  switch (shape.kind) {
    case 'fill': {
      const colour = mix(...PAINT[shape.body], shape.shade);
      // A hair of the same colour closes the seams between facets.
      return el('path', { d: path(shape.points, true), fill: colour, stroke: colour, 'stroke-width': '0.1' });
    }
    case 'stroke':
      return el('path', {
        d: path(shape.points, false),
        fill: 'none',
        stroke: PEN[shape.ink][0],
        'stroke-width': String(PEN[shape.ink][1]),
      });
    case 'spot':
      return el('path', {
        d: path(shape.points, true),
        fill: SPOT[shape.ink],
        stroke: PEN[shape.ink][0],
        'stroke-width': String(Math.min(0.2, PEN[shape.ink][1])),
      });
    case 'word':
      return el(
        'text',
        {
          x: num(shape.at[0]),
          y: num(shape.at[1]),
          'font-size': num(shape.size),
          'font-family': 'Helvetica, Arial, sans-serif',
          'text-anchor': shape.tag === 'pull' ? 'start' : 'middle',
          fill: shape.tag === 'pull' ? PEN.pull[0] : '#111111',
        },
        [shape.text],
      );
  }
}

function path(points: readonly PaperPoint[], closed: boolean): string {
  return `M${points.map(([x, y]) => `${num(x)} ${num(y)}`).join('L')}${closed ? 'Z' : ''}`;
}

function mix(dark: Rgb, light: Rgb, share: number): string {
  return `#${dark
    .map((value, index) =>
      Math.round(value + share * ((light[index] ?? value) - value))
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`;
}

function num(value: number): string {
  return fixed(value, DECIMALS);
}
