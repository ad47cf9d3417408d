import { parse, stringify } from 'yaml';

/** Ways of cutting a job, as its `cut` block; a laser's boards are named too. */
export const tools = {
  jigsaw: { cut: { with: 'jigsaw' } },
  router: { cut: { with: 'router', bridges: true } },
  laser: { cut: { with: 'laser' }, board: { stock: 'mdf-6' } },
  'router, measured board': { cut: { with: 'router', bit: '3 mm' }, board: { stock: 'mdf-18', thickness: '17.8 mm' } },
  'laser, measured board': { cut: { with: 'laser' }, board: { stock: 'mdf-6', thickness: '5.8 mm' } },
  'laser, thin board': { cut: { with: 'laser', kerf: '0.15 mm' }, board: { stock: 'mdf-3' } },
  'laser, one layer': { cut: { with: 'laser', kerf: '0.3 mm', fit: '0.2 mm' } },
} as const;

/** The same job cut another way. */
export function cutWith(tool: keyof typeof tools): (text: string) => string {
  return (text) => stringify({ ...(parse(text) as object), ...tools[tool] });
}
