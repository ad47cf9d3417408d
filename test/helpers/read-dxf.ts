import DxfParser from 'dxf-parser';

/** A DXF read by a parser that shares no code with the writer: what a reader sees. */
export interface ReadDxf {
  readonly units: number | undefined;
  readonly layers: readonly string[];
  readonly polylines: readonly {
    layer: string;
    closed: boolean;
    vertices: { x: number; y: number; bulge: number }[];
  }[];
  readonly circles: readonly { layer: string; x: number; y: number; radius: number }[];
  readonly lines: readonly { layer: string; ends: readonly { x: number; y: number }[] }[];
  readonly texts: readonly { layer: string; text: string }[];
  /** Kinds and layers of the entities as they follow each other in the file. */
  readonly order: readonly { type: string; layer: string }[];
  readonly count: number;
}

interface Entity {
  type: string;
  layer: string;
  shape?: boolean;
  vertices?: { x: number; y: number; bulge?: number }[];
  center?: { x: number; y: number };
  radius?: number;
  text?: string;
}

export function readDxf(text: string): ReadDxf {
  const parsed = new DxfParser().parseSync(text);
  if (!parsed) throw new Error('not a DXF');
  const entities = parsed.entities as unknown as Entity[];
  const of = (type: string): Entity[] => entities.filter((entity) => entity.type === type);
  return {
    units: parsed.header['$INSUNITS'] as number | undefined,
    layers: Object.keys(parsed.tables.layer.layers),
    polylines: of('POLYLINE').map(({ layer, shape, vertices = [] }) => ({
      layer,
      closed: shape === true,
      vertices: vertices.map(({ x, y, bulge = 0 }) => ({ x, y, bulge })),
    })),
    circles: of('CIRCLE').map(({ layer, center, radius }) => ({
      layer,
      x: center?.x ?? NaN,
      y: center?.y ?? NaN,
      radius: radius ?? NaN,
    })),
    lines: of('LINE').map(({ layer, vertices = [] }) => ({ layer, ends: vertices.map(({ x, y }) => ({ x, y })) })),
    texts: of('TEXT').map(({ layer, text: value = '' }) => ({ layer, text: value })),
    order: entities.map(({ type, layer }) => ({ type, layer })),
    count: entities.length,
  };
}
