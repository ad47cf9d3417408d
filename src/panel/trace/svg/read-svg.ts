import { compose, IDENTITY, moveBy, stretch, type Affine } from '../affine';
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
import type { Staged } from '../../../base/findings';
import { readLength } from './numbers';
import { checkSafe } from './safety';
import { DRAWN, shapeCurves, type Measure } from './shapes';
import { readTransform } from './transform-list';
import { readViewBox, viewBoxMap, type Viewport } from './viewport';
import { readXml, type XmlElement } from './xml-tree';

const MM_PER_INCH = 25.4;
const CSS_DPI = 96;
/** Inkscape before 0.92 wrote 90 px to the inch (its release notes for 0.92). */
const OLD_DPI = 90;

/** Elements whose children are drawn in place. */
const GROUPS: readonly string[] = ['svg', 'g', 'a', 'switch'];
/** Elements that draw nothing where they stand, or tell about the drawing. */
const SILENT: readonly string[] = [
  ...['defs', 'symbol', 'clipPath', 'mask', 'marker', 'pattern', 'linearGradient', 'radialGradient', 'filter'],
  ...['title', 'desc', 'metadata', 'style', 'animate', 'set', 'animateTransform', 'animateMotion', 'view', 'cursor'],
];
/** No more steps than this from one `use` to the next. */
const DEEPEST_USE = 20;

/** How things stand where an element is drawn. */
interface Setting {
  readonly map: Affine;
  readonly measure: Measure;
  readonly layer: string;
  /** The layer is one that the program which drew it calls so. */
  readonly named: boolean;
  readonly uses: number;
}

/**
 * SVG text → the lines drawn in it, mm, y up from the page's lower edge, every transform and unit applied. Refused, with the place named:
 * broken XML, scripts, entities, anything outside the file, a file of more than 20 million characters. Source: SVG 1.1, 2nd edition.
 */
export function readSvg(text: string, options: ReadOptions): Staged<Tracing | null> {
  const troubles = new Troubles(options.path);
  if (text.length > LONGEST_FILE) {
    troubles.say('drawing-too-big', { kind: 'SVG', megabytes: Math.round(text.length / 1e6) });
    return { value: null, findings: troubles.findings };
  }
  const root = readXml(text, troubles);
  if (root && root.name !== 'svg') {
    troubles.say('svg-broken', { trouble: `the file's first element is ${shown(root.name)}, not svg` });
  }
  if (root) checkSafe(root, troubles);
  if (!root || troubles.refused) return { value: null, findings: troubles.findings };
  const reader = new SvgReader(root, options, troubles);
  const tracing = reader.read();
  return { value: troubles.refused ? null : tracing, findings: troubles.findings };
}

class SvgReader {
  private readonly traces: Trace[] = [];
  private readonly leftOut = new Map<string, number>();
  private readonly byId = new Map<string, XmlElement>();
  private readonly dpi: number;
  private visited = 0;

  constructor(
    private readonly root: XmlElement,
    private readonly options: ReadOptions,
    private readonly troubles: Troubles,
  ) {
    this.dpi = options.dpi ?? dpiOf(root);
  }

  read(): Tracing {
    this.indexIds(this.root);
    const { viewport, sizes } = this.rootViewport();
    const mm = MM_PER_INCH / this.dpi;
    const page = compose(moveBy(0, viewport.height * mm), stretch(mm, -mm));
    this.drawSvg(this.root, viewport, {
      map: page,
      measure: { dpi: this.dpi, ...viewport },
      layer: '',
      named: false,
      uses: 0,
    });
    for (const [what, count] of this.leftOut) {
      this.troubles.say('drawing-left-out', { what, times: count });
    }
    return { traces: this.traces, sizes };
  }

  private indexIds(root: XmlElement): void {
    const waiting = [root];
    for (let element = waiting.pop(); element; element = waiting.pop()) {
      const id = element.attributes['id'];
      if (id !== undefined && !this.byId.has(id)) this.byId.set(id, element);
      waiting.push(...element.children);
    }
  }

  /** The page in px, and in what words its size was taken. */
  private rootViewport(): { readonly viewport: Viewport; readonly sizes: string } {
    const box = readViewBox(this.root.attributes['viewBox'] ?? '');
    const side = (name: 'width' | 'height'): ReturnType<typeof readLength> =>
      readLength(this.root.attributes[name] ?? '100%', this.dpi, box?.[name] ?? 0);
    const [width, height] = [side('width'), side('height')];
    if (!width || !height || !(width.px >= 0 && height.px >= 0)) {
      this.troubles.say('svg-broken', { trouble: 'the width or height of the SVG page is no length' });
    }
    const physical = (width?.physical ?? false) && (height?.physical ?? false);
    if (!physical) {
      this.troubles.say('svg-size-assumed', { dpi: this.dpi });
    }
    const viewport = { x: 0, y: 0, width: width?.px ?? 0, height: height?.px ?? 0 };
    return { viewport, sizes: physical ? 'as the file states its page' : `${this.dpi} px to the inch` };
  }

  private drawSvg(element: XmlElement, viewport: Viewport, setting: Setting): void {
    const box = readViewBox(element.attributes['viewBox'] ?? '');
    if (element.attributes['viewBox'] !== undefined && !box) {
      this.troubles.say('svg-broken', { trouble: `line ${element.line}: viewBox is not four numbers with a size` });
      return;
    }
    const inside = viewBoxMap(viewport, box, element.attributes['preserveAspectRatio'] ?? '');
    const measure = { dpi: this.dpi, width: box?.width ?? viewport.width, height: box?.height ?? viewport.height };
    this.drawAll(element.children, { ...setting, map: compose(setting.map, inside), measure });
  }

  private drawAll(elements: readonly XmlElement[], setting: Setting): void {
    for (const element of elements) this.draw(element, setting);
  }

  private draw(element: XmlElement, outside: Setting): void {
    if (SILENT.includes(element.name) || element.name.includes(':')) return;
    this.visited += 1;
    if (this.visited > MOST_TRACES || this.troubles.refused) return this.refuseSize();
    if (isHidden(element)) return this.leaveOut('what is hidden');
    const setting = this.within(element, outside);
    if (!setting) return;
    if (element.name === 'svg') this.drawSvg(element, this.nested(element, setting.measure), setting);
    else if (GROUPS.includes(element.name)) this.drawAll(element.children, setting);
    else if (element.name === 'use') this.drawUse(element, setting);
    else if (DRAWN.includes(element.name)) this.drawShape(element, setting);
    else
      this.leaveOut(
        element.name === 'image' ? 'a picture' : element.name === 'text' ? 'text' : `${shown(element.name)} elements`,
      );
  }

  private refuseSize(): void {
    if (this.visited > MOST_TRACES) {
      this.troubles.say('drawing-too-full', { most: MOST_TRACES });
    }
  }

  /** The setting inside an element: its transform and its layer. */
  private within(element: XmlElement, outside: Setting): Setting | null {
    const style = element.attributes['style'] ?? '';
    const text = element.attributes['transform'] ?? /(?:^|;)\s*transform\s*:([^;]*)/u.exec(style)?.[1] ?? '';
    const map = text.trim() === 'none' ? IDENTITY : readTransform(text);
    if (!map || /transform-(?:origin|box)/u.test(style) || element.attributes['transform-origin'] !== undefined) {
      this.troubles.say('svg-broken', { trouble: `${nameOf(element)}: its transform cannot be read: ${shown(text)}` });
      return null;
    }
    return { ...outside, ...layerOf(element, outside), map: compose(outside.map, map) };
  }

  private nested(element: XmlElement, { width, height }: Measure): Viewport {
    const side = (name: string, whole: number, missing: string): number =>
      readLength(element.attributes[name] ?? missing, this.dpi, whole)?.px ?? NaN;
    const viewport = {
      x: side('x', width, '0'),
      y: side('y', height, '0'),
      width: side('width', width, '100%'),
      height: side('height', height, '100%'),
    };
    if (!Object.values(viewport).every(Number.isFinite)) {
      this.troubles.say('svg-broken', { trouble: `${nameOf(element)}: its place or size is no length` });
    }
    return viewport;
  }

  /** A copy of something drawn elsewhere; symbols as a picture of their own. */
  private drawUse(element: XmlElement, setting: Setting): void {
    const { attributes } = element;
    const target = this.byId.get((attributes['href'] ?? attributes['xlink:href'] ?? '').trim().slice(1));
    if (!target || setting.uses >= DEEPEST_USE) {
      this.troubles.say('svg-use', { where: nameOf(element) });
      return;
    }
    const viewport = this.nested(element, setting.measure);
    const map = compose(setting.map, moveBy(viewport.x, viewport.y));
    const inside = { ...setting, map, uses: setting.uses + 1 };
    if (target.name === 'symbol') this.drawSvg(target, { ...viewport, x: 0, y: 0 }, inside);
    else this.draw(target, inside);
  }

  private drawShape(element: XmlElement, { map, measure, layer }: Setting): void {
    if (!isTaken(layer, this.options)) return this.leaveOut(`layer ${shown(layer)}`);
    const where = nameOf(element);
    try {
      for (const curves of shapeCurves(element, measure)) {
        if (curves.length > 0) this.traces.push({ where, layer, curves: curves.map((curve) => mapCurve(map, curve)) });
      }
    } catch (trouble) {
      if (!(trouble instanceof Error)) throw trouble;
      this.troubles.say('svg-broken', { trouble: `${where}: ${shown(trouble.message)}` });
    }
  }

  private leaveOut(what: string): void {
    this.leftOut.set(what, (this.leftOut.get(what) ?? 0) + 1);
  }
}

function nameOf({ name, attributes, line }: XmlElement): string {
  const label = attributes['inkscape:label'] ?? attributes['id'];
  return `${name}${label === undefined ? '' : ` “${shown(label)}”`} (line ${line})`;
}

function dpiOf(root: XmlElement): number {
  const version = /^(\d+)\.(\d+)/u.exec(root.attributes['inkscape:version'] ?? '');
  return version && version[1] === '0' && Number(version[2]) < 92 ? OLD_DPI : CSS_DPI;
}

function isHidden({ attributes }: XmlElement): boolean {
  const style = attributes['style'] ?? '';
  return (
    attributes['display'] === 'none' ||
    attributes['visibility'] === 'hidden' ||
    /(?:^|;)\s*(?:display\s*:\s*none|visibility\s*:\s*(?:hidden|collapse))/u.test(style)
  );
}

/** A layer is what a drawing program marks as one, else the outermost group with a name. */
function layerOf({ name, attributes }: XmlElement, outside: Setting): Pick<Setting, 'layer' | 'named'> {
  const { layer, named } = outside;
  if (name !== 'g') return { layer, named };
  const label = attributes['inkscape:label'] ?? attributes['id'] ?? '';
  if (attributes['inkscape:groupmode'] === 'layer') return { layer: label, named: true };
  return { layer: layer === '' ? label : layer, named };
}
