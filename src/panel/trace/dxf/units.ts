/** mm in one of each unit `$INSUNITS` names. Source: the format owner's published reference, "HEADER section", $INSUNITS. */
const INSERT_UNITS: Readonly<Record<number, readonly [name: string, mm: number]>> = {
  1: ['inches', 25.4],
  2: ['feet', 304.8],
  4: ['mm', 1],
  5: ['cm', 10],
  6: ['m', 1000],
  8: ['microinches', 25.4e-6],
  9: ['thousandths of an inch', 0.0254],
  10: ['yards', 914.4],
  13: ['micrometres', 1e-3],
  14: ['dm', 100],
};

const OWN_UNITS = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 } as const;

export interface DxfUnit {
  readonly name: string;
  readonly mm: number;
}

/** The unit a header states; null for one that no sheet is drawn in. 0 is none stated. */
export function insertUnit(code: number): DxfUnit | null {
  const [name, mm] = INSERT_UNITS[code] ?? [];
  return name === undefined || mm === undefined ? null : { name, mm };
}

/** A unit as a job names it. */
export function ownUnit(name: keyof typeof OWN_UNITS): DxfUnit {
  return { name, mm: OWN_UNITS[name] };
}
