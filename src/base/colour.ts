import type { Operation } from './drawing';

/** Colours that every drawing format knows by name, as #rrggbb. */
export const colourNames = {
  red: '#ff0000',
  yellow: '#ffff00',
  green: '#00ff00',
  cyan: '#00ffff',
  blue: '#0000ff',
  magenta: '#ff00ff',
  black: '#000000',
} as const;

const HEX = /^#[0-9a-f]{6}$/u;

/** A colour written as one of the names or as #rrggbb, upper or lower case, as #rrggbb; null for anything else. */
export function parseColour(text: string): string | null {
  const wanted = text.trim().toLowerCase();
  if (Object.hasOwn(colourNames, wanted)) return colourNames[wanted as keyof typeof colourNames];
  return HEX.test(wanted) ? wanted : null;
}

/** The colour of each operation's lines on screen and paper, any of which a job may change. */
export const lineColours: Readonly<Record<Operation, string>> = {
  outline: '#111111',
  hole: '#00708c',
  pilot: '#8a2be2',
  countersink: '#2e7d32',
  groove: '#b35900',
  mark: '#777777',
  label: '#1f3fbf',
  board: '#b0b0b0',
};
