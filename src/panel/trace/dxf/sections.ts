import type { Entity } from './entities';
import { DxfMistake, numberOf, textOf, toNumber, type Record0 } from './tags';

/** A block: its base point and what is drawn in it. */
export interface Block {
  readonly x: number;
  readonly y: number;
  readonly entities: readonly Entity[];
}

/** The parts of a DXF file that an outline needs. */
export interface DxfFile {
  /** `$INSUNITS` of the header; 0 where it states none. */
  readonly unit: number;
  /** Layers that are off or frozen. */
  readonly hidden: ReadonlySet<string>;
  readonly blocks: ReadonlyMap<string, Block>;
  readonly entities: readonly Entity[];
}

/** Records → sections. Throws {@link DxfMistake} where there is no ENTITIES section. */
export function readSections(records: readonly Record0[]): DxfFile {
  const sections = new Map<string, Record0[]>();
  let current: Record0[] | undefined;
  for (const record of records) {
    if (record.type === 'SECTION') sections.set(textOf(record, 2) ?? '', (current = [record]));
    else if (record.type === 'ENDSEC') current = undefined;
    else current?.push(record);
  }
  const entities = sections.get('ENTITIES');
  if (!entities) throw new DxfMistake('the DXF file has no ENTITIES section');
  return {
    unit: headerUnit(sections.get('HEADER')?.[0]),
    hidden: hiddenLayers(sections.get('TABLES') ?? []),
    blocks: readBlocks(sections.get('BLOCKS') ?? []),
    entities: gathered(entities.slice(1)),
  };
}

function headerUnit(header: Record0 | undefined): number {
  const at = header?.tags.findIndex(({ code, value }) => code === 9 && value.trim() === '$INSUNITS') ?? -1;
  const tag = header?.tags[at + 1];
  return at < 0 || !tag ? 0 : toNumber(tag);
}

/** Off: colour below 0; frozen: bit 1 of group 70. */
function hiddenLayers(tables: readonly Record0[]): ReadonlySet<string> {
  const layers = tables.filter(({ type }) => type === 'LAYER');
  const hidden = layers.filter((layer) => numberOf(layer, 62, 7) < 0 || numberOf(layer, 70, 0) % 2 === 1);
  return new Set(hidden.map((layer) => textOf(layer, 2) ?? ''));
}

function readBlocks(records: readonly Record0[]): Map<string, Block> {
  const blocks = new Map<string, Block>();
  for (const [index, record] of records.entries()) {
    if (record.type !== 'BLOCK') continue;
    const end = records.findIndex(({ type }, place) => place > index && type === 'ENDBLK');
    const inside = records.slice(index + 1, end < 0 ? undefined : end);
    const block = { x: numberOf(record, 10, 0), y: numberOf(record, 20, 0), entities: gathered(inside) };
    blocks.set((textOf(record, 2) ?? '').toLowerCase(), block);
  }
  return blocks;
}

/** VERTEX records go with the POLYLINE before them. */
function gathered(records: readonly Record0[]): Entity[] {
  const entities: (Record0 & { vertices: Record0[] })[] = [];
  for (const record of records) {
    const last = entities.at(-1);
    if (record.type === 'VERTEX' && last?.type === 'POLYLINE') last.vertices.push(record);
    else if (record.type !== 'SEQEND') entities.push({ ...record, vertices: [] });
  }
  return entities;
}
