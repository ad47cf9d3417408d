import type { Staged } from '../../../base/findings';
import { compose, moveBy, stretch, turn, type Affine } from '../affine';
import { mapCurve } from '../curve';
import {
  isTaken,
  LONGEST_FILE,
  MOST_TRACES,
  shown,
  Troubles,
  type ReadOptions,
  type Trace,
  type Tracing,
} from '../trace';
import { BESIDE, EDGES, entityCurves, planeOf, type Entity } from './entities';
import { readSections, type DxfFile } from './sections';
import { DxfMistake, numberOf, readRecords, textOf, type Record0 } from './tags';
import { insertUnit, ownUnit, type DxfUnit } from './units';

/** Blocks within blocks no deeper than this. */
const DEEPEST_BLOCK = 20;

/**
 * DXF text → the lines drawn in its model space, mm, blocks unfolded. Refused, with the line named: what is no ASCII DXF, a number that is
 * none, a block that holds itself, an entity that does not lie flat. Source: the format owner's published reference.
 */
export function readDxf(text: string, options: ReadOptions): Staged<Tracing | null> {
  const troubles = new Troubles(options.path);
  if (text.length > LONGEST_FILE) {
    troubles.say('drawing-too-big', { kind: 'DXF', megabytes: Math.round(text.length / 1e6) });
    return { value: null, findings: troubles.findings };
  }
  const records = readRecords(text, troubles);
  const file = records && attempt(troubles, () => readSections(records));
  const unit = file && unitOf(file, options, troubles);
  if (!file || !unit) return { value: null, findings: troubles.findings };
  const traces = new DxfReader(file, options, troubles).read(stretch(unit.mm, unit.mm));
  const sizes = file.unit === 0 ? `${unit.name}: the file states no unit` : `${unit.name}, as the file states`;
  return { value: troubles.refused ? null : { traces, sizes }, findings: troubles.findings };
}

function attempt<Value>(troubles: Troubles, read: () => Value): Value | null {
  try {
    return read();
  } catch (mistake) {
    if (!(mistake instanceof DxfMistake)) throw mistake;
    troubles.say('dxf-broken', { trouble: mistake.message });
    return null;
  }
}

function unitOf({ unit }: DxfFile, options: ReadOptions, troubles: Troubles): DxfUnit | null {
  if (unit === 0) {
    if (options.unit) return ownUnit(options.unit);
    troubles.say('dxf-no-unit');
    return ownUnit('mm');
  }
  const stated = insertUnit(unit);
  if (!stated) troubles.say('dxf-unit', { unit });
  return stated;
}

class DxfReader {
  private readonly traces: Trace[] = [];
  private readonly leftOut = new Map<string, number>();
  private visited = 0;

  constructor(
    private readonly file: DxfFile,
    private readonly options: ReadOptions,
    private readonly troubles: Troubles,
  ) {}

  read(map: Affine): Trace[] {
    this.drawAll(this.file.entities, { map, layer: '0', depth: 0 });
    for (const [what, count] of this.leftOut) {
      this.troubles.say('drawing-left-out', { what, times: count });
    }
    return this.traces;
  }

  private drawAll(entities: readonly Entity[], setting: Setting): void {
    for (const entity of entities) {
      this.visited += 1;
      if (this.visited > MOST_TRACES) {
        this.troubles.say('drawing-too-full', { most: MOST_TRACES });
        return;
      }
      attempt(this.troubles, () => this.draw(entity, setting));
    }
  }

  private draw(entity: Entity, setting: Setting): void {
    const own = textOf(entity, 8) ?? '0';
    // What lies on layer 0 of a block is on the layer the block is put on.
    const layer = own === '0' ? setting.layer : own;
    if (numberOf(entity, 67, 0) === 1) return this.leaveOut('what is on paper layouts');
    if (numberOf(entity, 60, 0) === 1 || this.file.hidden.has(layer)) return this.leaveOut('what is hidden');
    if (entity.type === 'INSERT') return this.insert(entity, { ...setting, layer });
    if (!EDGES.includes(entity.type))
      return this.leaveOut(`${shown(entity.type)} entities`, BESIDE.includes(entity.type));
    if (!isTaken(layer, this.options)) return this.leaveOut(`layer ${shown(layer)}`);
    const curves = entityCurves(entity).map((curve) => mapCurve(setting.map, curve));
    if (curves.length > 0) this.traces.push({ where: `${entity.type} (line ${entity.line})`, layer, curves });
  }

  /** A block put in place: its base point to the insertion point, stretched, turned, in rows and columns. */
  private insert(entity: Entity, setting: Setting): void {
    const name = textOf(entity, 2) ?? '';
    const block = this.file.blocks.get(name.toLowerCase());
    const what = `INSERT at line ${entity.line}: block ${shown(name)}`;
    if (!block) throw new DxfMistake(`${what} is not in the file`);
    if (setting.depth >= DEEPEST_BLOCK)
      throw new DxfMistake(`${what} holds itself, or blocks lie more than ${DEEPEST_BLOCK} deep`);
    for (const cell of cellsOf(entity)) {
      const map = [planeOf(entity), cell, moveBy(-block.x, -block.y)].reduce(compose, setting.map);
      this.drawAll(block.entities, { map, layer: setting.layer, depth: setting.depth + 1 });
      if (this.troubles.refused) return;
    }
  }

  private leaveOut(what: string, expected = true): void {
    if (expected) this.leftOut.set(what, (this.leftOut.get(what) ?? 0) + 1);
    else this.troubles.say('entities-left-out', { what });
  }
}

interface Setting {
  readonly map: Affine;
  readonly layer: string;
  readonly depth: number;
}

function cellsOf(insert: Record0): Affine[] {
  const [columns, rows] = [numberOf(insert, 70, 1), numberOf(insert, 71, 1)];
  const most = Math.max(1, columns) * Math.max(1, rows);
  if (!(most <= MOST_TRACES)) throw new DxfMistake(`INSERT at line ${insert.line} repeats its block ${most} times`);
  const [acrossStep, upStep] = [numberOf(insert, 44, 0), numberOf(insert, 45, 0)];
  const place = moveBy(numberOf(insert, 10), numberOf(insert, 20));
  const turned = turn((numberOf(insert, 50, 0) * Math.PI) / 180);
  const sized = stretch(numberOf(insert, 41, 1), numberOf(insert, 42, 1));
  return Array.from({ length: most }, (_, index) => {
    const cell = moveBy((index % Math.max(1, columns)) * acrossStep, Math.floor(index / Math.max(1, columns)) * upStep);
    return [turned, cell, sized].reduce(compose, place);
  });
}
