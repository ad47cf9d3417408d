import type { LookPart } from './scene';

/** Colours of the view, ours; the same woods and metal as the painted pictures. */
export const fills: Readonly<Record<LookPart['kind'], string>> = {
  spine: '#c9a566',
  station: '#ecd7ab',
  backing: '#b8955d',
  sheet: '#a9b8c2',
  yoke: '#a39a8a',
  plank: '#d9bd8b',
  clamp: '#7d838c',
  bench: '#c4bfb5',
};

export const inks = {
  light: { edge: '#3a332a', spot: '#33281c', word: '#1d1a16', halo: '#ffffff', measure: '#a3171f', cut: '#7a5a24' },
  dark: { edge: '#0c0c0c', spot: '#15110c', word: '#f2efe8', halo: '#1b1d1f', measure: '#ff9a94', cut: '#4f3a17' },
} as const;
