import { toRadians } from '../../src/base/angle';
import type { Finding } from '../../src/base/findings';
import { buildUp } from '../../src/panel/flat/build-up';
import { plainBend, plainCorner, type BendSpec, type BuiltUp, type CornerSpec } from '../../src/panel/flat/built-up';
import type { Panel } from '../../src/panel/flat/panel';
import { loadPanelRules } from '../../src/tables/panel-rules';

export const rules = loadPanelRules();

/** A right-angled bend up, radius 30, leg 60, unless said otherwise. */
export function bend(on: string, more: Partial<BendSpec> = {}): BendSpec {
  return { ...plainBend, on, angle: toRadians(90), radius: 30, reach: { leg: 60 }, ...more };
}

export function corner(between: readonly [string, string], more: Partial<CornerSpec> = {}): CornerSpec {
  return { ...plainCorner, between, ...more };
}

/** A rectangle with edges `long` (along x), `back`, `top`, `short`. */
export function box(width: number, height: number, more: Partial<BuiltUp> = {}): BuiltUp {
  return {
    thickness: 1.2,
    base: {
      corners: [
        [0, 0],
        [width, 0],
        [width, height],
        [0, height],
      ],
      edges: ['long', 'back', 'top', 'short'],
      measured: 'flat',
    },
    bends: [],
    corners: [],
    ...more,
  };
}

export function built(spec: BuiltUp): Panel {
  const { value, findings } = buildUp(spec, rules);
  if (!value) throw new Error(`no panel: ${findings.map(({ code, path }) => `${path}: ${code}`).join('; ')}`);
  return value;
}

export function refusal(spec: BuiltUp): readonly Finding[] {
  const { value, findings } = buildUp(spec, rules);
  if (value) throw new Error('a panel was built');
  return findings;
}
