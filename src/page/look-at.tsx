import type { JSX } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { formatLength, type LengthUnit } from '../base/units';
import type { LookElement } from './look/element';
import { groupsIn, type Group, type LookScene } from './look/scene';
import type { Stand } from './look/stand';

const NAMES: Readonly<Record<Group, string>> = {
  sheet: 'sheet',
  boards: 'boards',
  yoke: 'yoke',
  plank: 'plank',
  clamps: 'clamps',
  bench: 'bench',
};
const PLACES = [
  ['corner', 'All'],
  ['front', 'Front'],
  ['end', 'End A'],
  ['top', 'Top'],
] as const;

/** What is asked of the 3-D view. */
export interface Looking {
  readonly scene: LookScene;
  readonly dark: boolean;
  readonly units: LengthUnit;
  /** Of the bend, mm: as far as the cutting plane goes. */
  readonly length: number;
  /** What a part is: size, screws. */
  readonly tell: (name: string) => string;
  /** What the picture shows, in words. */
  readonly says: string;
  /** Where the cutting plane's way begins, mm; end A unless said. */
  readonly from?: number;
  /** What can be shown and hidden; all that is there unless said. */
  readonly groups?: readonly Group[];
  /** Where one may stand at once, and what that is called. */
  readonly places?: readonly (readonly [Stand, string])[];
}

/** Whether this browser can draw in three dimensions and the view's own script has come. */
export function useLook(): boolean {
  const [ready, setReady] = useState(false);
  useEffect(() => {
    if (!canDraw()) return;
    void customElements.whenDefined('form-look').then(() => setReady(true));
  }, []);
  return ready;
}

function canDraw(): boolean {
  try {
    return document.createElement('canvas').getContext('webgl2') !== null;
  } catch {
    return false;
  }
}

/** The form in three dimensions: turn, move, draw nearer, cut through, touch, measure. */
export function LookAt(props: Looking): JSX.Element {
  const { scene, dark, units, from = 0, length, tell, says, groups, places = PLACES } = props;
  const holder = useRef<HTMLDivElement>(null);
  const look = useRef<LookElement | null>(null);
  const [hidden, setHidden] = useState<readonly Group[]>([]);
  const [cut, setCut] = useState<number | null>(null);
  const [measuring, setMeasuring] = useState(false);
  const [told, setTold] = useState('');

  useLayoutEffect(() => {
    const element = document.createElement('form-look') as LookElement;
    holder.current?.append(element);
    look.current = element;
    return () => element.remove();
  }, []);
  useLayoutEffect(() => {
    const element = look.current;
    if (!element) return;
    element.dark = dark;
    element.scene = scene;
    element.hidden3 = hidden;
    element.section = cut === null ? null : from + cut * length;
    element.measuring = measuring;
    element.tabIndex = 0;
    element.setAttribute('role', 'img');
    element.setAttribute(
      'aria-label',
      `${says} Arrow keys turn it, with shift they move it; plus and minus draw nearer and away, Home shows all.`,
    );
    element.events = {
      touched: (name) => setTold(name === null ? '' : tell(name)),
      measured: (distance) =>
        setTold(
          distance === null ? 'Touch a second point.' : `${formatLength(distance, units)} between the two points.`,
        ),
    };
  });

  const toggle = (group: Group): void =>
    setHidden((held) => (held.includes(group) ? held.filter((one) => one !== group) : [...held, group]));
  return (
    <div class="look">
      <div class="look-holder" ref={holder} />
      <div class="look-tools" role="group" aria-label="The picture">
        {places.map(([where, name]) => (
          <button key={where} type="button" onClick={() => look.current?.stand(where)}>
            {name}
          </button>
        ))}
        {(groups ?? groupsIn(scene)).map((group) => (
          <label key={group}>
            <input type="checkbox" checked={!hidden.includes(group)} onChange={() => toggle(group)} />
            {NAMES[group]}
          </label>
        ))}
        <label>
          <input
            type="checkbox"
            checked={measuring}
            onChange={() => {
              setTold(measuring ? '' : 'Touch two points.');
              setMeasuring(!measuring);
            }}
          />
          measure
        </label>
        <label>
          <input type="checkbox" checked={cut !== null} onChange={() => setCut(cut === null ? 0.5 : null)} />
          cut through
        </label>
        {cut === null ? null : (
          <input
            type="range"
            min="0"
            max="1"
            step="0.005"
            value={cut}
            aria-label="Where it is cut through"
            aria-valuetext={`${formatLength(cut * length, units)} from ${places === PLACES ? 'end A' : 'the left'}`}
            onInput={(event) => setCut(Number(event.currentTarget.value))}
          />
        )}
      </div>
      <p class="told" role="status">
        {told || 'Touch a part to see what it is. Drag to turn; on a touch screen use two fingers.'}
      </p>
    </div>
  );
}
