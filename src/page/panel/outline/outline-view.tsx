import type { JSX, TargetedPointerEvent } from 'preact';
import { useMemo, useRef, useState } from 'preact/hooks';
import { boundsOfLoops, cornersOf, drawnOutline, nearestCorner, pathOf, type Drawn } from './drawn';
import { parseLength, type LengthUnit } from '../../../base/units';
import { nodeAt, textAt, type Draft, type OpenedDrawing } from '../../draft';
import { Findings } from '../../know';
import { rootOf } from '../panel-root';
import { lineAt, withBend, withReference, type DrawnPlace, type Placing } from './placing';
import { SAME_PLACE } from '../../../base/tolerance';

interface OutlineProps {
  readonly draft: Draft;
  readonly drawing: OpenedDrawing | null;
  readonly replace: (draft: Draft, place: string) => void;
}

/** A place touched nearer than this to a corner is meant to be it, px. */
const SNAP = 14;
/** Letters’ height as a share of the outline. */
const LETTERS = 0.026;
/** Air round the outline, as a share of it. */
const AIR = 0.06;

/** The maker's own outline as drawn, with what is placed on it: two touches make the line of a bend, or a length known on the part. */
export function OutlineView({ draft, drawing, replace }: OutlineProps): JSX.Element {
  const units: LengthUnit = textAt(draft, ['units']) === 'in' ? 'in' : 'mm';
  const outline = nodeAt(draft, ['outline']);
  const drawn = useMemo(() => drawnOutline(outline, drawing, units), [outline, drawing, units]);
  const [placing, setPlacing] = useState<Placing>('bend');
  const [first, setFirst] = useState<DrawnPlace | null>(null);
  const [asked, setAsked] = useState<readonly [DrawnPlace, DrawnPlace] | null>(null);
  const put = (at: DrawnPlace): void => {
    if (!first) return setFirst(at);
    setFirst(null);
    if (Math.hypot(at[0] - first[0], at[1] - first[1]) < SAME_PLACE) return;
    if (placing === 'bend') replace(withBend(draft, [first, at], units), 'place a bend');
    else setAsked([first, at]);
  };
  const name = textAt(draft, ['outline', 'file']);
  return (
    <section class="outline" aria-labelledby="outline-name">
      <h2 id="outline-name" tabIndex={-1}>
        Your outline, as drawn
      </h2>
      {drawn.kind === 'missing' ? (
        <p role="status">
          The drawing <strong>{name === '' ? 'is not named yet' : name}</strong>
          {name === '' ? '' : ' is not here: drop it on the page, or open it above'}. It stays in this browser.
        </p>
      ) : null}
      {drawn.kind === 'refused' ? (
        <Findings findings={drawn.findings} root={rootOf(draft)} id="outline-findings" />
      ) : null}
      {drawn.kind === 'read' ? (
        <>
          <div class="look-tools" role="group" aria-label="What two touches place">
            <button type="button" aria-pressed={placing === 'bend'} onClick={() => setPlacing('bend')}>
              Place a bend
            </button>
            <button type="button" aria-pressed={placing === 'reference'} onClick={() => setPlacing('reference')}>
              Give a length
            </button>
            {first ? (
              <button type="button" onClick={() => setFirst(null)}>
                Not there
              </button>
            ) : null}
          </div>
          <Sheet drawn={drawn} draft={draft} units={units} first={first} put={put} />
          <p class="told" role="status">
            {saysNext(placing, first)}
          </p>
          {asked ? (
            <AskLength
              units={units}
              give={(is) => {
                setAsked(null);
                if (is !== null) replace(withReference(draft, { between: asked, is }, units), 'give a length');
              }}
            />
          ) : null}
          <p class="quiet">
            {drawn.sizes}; places are counted from the page’s lower left corner (SVG) or the drawing’s origin (DXF).
            Every line and length is in the fields too, by numbers.
          </p>
        </>
      ) : null}
    </section>
  );
}

function saysNext(placing: Placing, first: DrawnPlace | null): string {
  if (first) return placing === 'bend' ? 'Now its end B.' : 'Now the other end of the length.';
  return placing === 'bend'
    ? 'Touch where a bend begins, its end A; a corner nearby is taken exactly.'
    : 'Touch the two ends of a length that you know on the part. Best one along and one across.';
}

/** Asks how long a length is on the part. */
function AskLength({ units, give }: { units: LengthUnit; give: (is: string | null) => void }): JSX.Element {
  const [text, setText] = useState('');
  const read = parseLength(text, units);
  const isLength = read.ok && 'mm' in read && read.mm > 0;
  return (
    <form
      class="look-tools"
      onSubmit={(event) => {
        event.preventDefault();
        if (isLength) give(text.trim());
      }}
    >
      <label for="known-length">How long is it on the part, {units}?</label>
      <input
        id="known-length"
        type="text"
        value={text}
        autocomplete="off"
        ref={(element) => element?.focus()}
        onInput={(event) => setText(event.currentTarget.value)}
      />
      <button type="submit" disabled={!isLength}>
        Scale by it
      </button>
      <button type="button" onClick={() => give(null)}>
        Leave it
      </button>
    </form>
  );
}

interface SheetProps {
  readonly drawn: Extract<Drawn, { kind: 'read' }>;
  readonly draft: Draft;
  readonly units: LengthUnit;
  readonly first: DrawnPlace | null;
  readonly put: (at: DrawnPlace) => void;
}

/** The drawing to touch; y points up in it, as in the job. */
function Sheet({ drawn, draft, units, first, put }: SheetProps): JSX.Element {
  const holder = useRef<SVGSVGElement>(null);
  const { outline } = drawn;
  const { path, box, corners, letters } = useMemo(() => {
    const loops = [outline.vertices, ...outline.holes];
    const { minX, maxX, minY, maxY } = boundsOfLoops(loops);
    const air = AIR * Math.max(maxX - minX, maxY - minY);
    return {
      path: loops.map(pathOf).join(''),
      box: `${minX - air} ${-maxY - air} ${maxX - minX + 2 * air} ${maxY - minY + 2 * air}`,
      corners: cornersOf(loops),
      letters: LETTERS * Math.max(maxX - minX, maxY - minY),
    };
  }, [outline]);
  const touch = (event: TargetedPointerEvent<SVGSVGElement>): void => {
    const turned = holder.current?.getScreenCTM()?.inverse();
    if (!turned) return;
    const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(turned);
    put(nearestCorner([x, -y], corners, SNAP * turned.a) ?? [x, -y]);
  };
  return (
    <svg ref={holder} class="drawn" viewBox={box} role="img" aria-label={sayDrawn(drawn, draft)} onPointerUp={touch}>
      <path class="edge" d={path} fill-rule="evenodd" />
      <g font-size={letters.toFixed(2)}>
        {entries(draft, ['outline', 'scale']).map((_, index) => (
          <Mark
            key={`r${index}`}
            kind="reference"
            name={textAt(draft, ['outline', 'scale', index, 'is'])}
            line={lineAt(draft, ['outline', 'scale', index, 'between'], units)}
          />
        ))}
        {entries(draft, ['bends']).map((_, index) => (
          <Mark
            key={`b${index}`}
            kind="bend"
            name={textAt(draft, ['bends', index, 'name'])}
            line={lineAt(draft, ['bends', index, 'line'], units)}
          />
        ))}
      </g>
      {first ? <line class="first" x1={first[0]} y1={-first[1]} x2={first[0]} y2={-first[1]} /> : null}
    </svg>
  );
}

function sayDrawn({ outline }: SheetProps['drawn'], draft: Draft): string {
  const [bends, lengths] = [entries(draft, ['bends']).length, entries(draft, ['outline', 'scale']).length];
  return `The outline with ${outline.vertices.length} sides and ${outline.holes.length} holes; ${bends} bends and ${lengths} lengths placed`;
}

function entries(draft: Draft, path: readonly string[]): readonly unknown[] {
  const there = nodeAt(draft, path);
  return Array.isArray(there) ? there : [];
}

interface MarkProps {
  readonly kind: 'bend' | 'reference';
  readonly name: string;
  readonly line: readonly [DrawnPlace, DrawnPlace] | null;
}

function Mark({ kind, name, line }: MarkProps): JSX.Element | null {
  if (!line) return null;
  const [[ax, ay], [bx, by]] = line;
  return (
    <g class={kind}>
      <line x1={ax} y1={-ay} x2={bx} y2={-by} />
      {kind === 'bend' ? (
        <>
          <Word at={[ax, ay]} text="A" />
          <Word at={[bx, by]} text="B" />
        </>
      ) : null}
      <Word at={[(ax + bx) / 2, (ay + by) / 2]} text={name} />
    </g>
  );
}

/** A word of a size on the screen, however large the drawing. */
function Word({ at: [x, y], text }: { at: DrawnPlace; text: string }): JSX.Element {
  return (
    <text class="word" x={x} y={-y} text-anchor="middle">
      {text}
    </text>
  );
}
