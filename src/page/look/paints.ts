import {
  BackSide,
  DoubleSide,
  FrontSide,
  LineBasicMaterial,
  MeshBasicMaterial,
  MeshLambertMaterial,
  type Material,
  type Plane,
} from 'three';
import { fills, inks } from './colours';
import type { LookPart } from './scene';

/** What the view paints with. Each is made once and kept: the graphics card would set up its programs anew with every new one. */
export class Paints {
  private readonly made = new Map<string, Material>();
  private dark = false;
  private cut = false;

  constructor(private readonly plane: Plane) {}

  /** From now on for a light or a dark page, cut through by the plane or whole. */
  set(dark: boolean, cut: boolean): void {
    if (dark === this.dark && cut === this.cut) return;
    this.forget();
    [this.dark, this.cut] = [dark, cut];
  }

  fill(kind: LookPart['kind']): Material {
    return this.once(
      `fill ${kind}`,
      () => new MeshLambertMaterial({ color: fills[kind], side: FrontSide, ...this.clipped, ...behind(1) }),
    );
  }

  /** What the plane opens is seen from within: its far walls in one flat colour stand for the cut face. */
  get within(): Material {
    return this.once('within', () => new MeshBasicMaterial({ color: this.ink.cut, side: BackSide, ...this.clipped }));
  }

  get edge(): Material {
    return this.once('edge', () => new LineBasicMaterial({ color: this.ink.edge, ...this.clipped }));
  }

  get spot(): Material {
    return this.once(
      'spot',
      () => new MeshBasicMaterial({ color: this.ink.spot, side: DoubleSide, ...this.clipped, ...behind(-1) }),
    );
  }

  get arrow(): Material {
    return this.once('arrow', () => new MeshBasicMaterial({ color: this.ink.measure }));
  }

  get ink(): (typeof inks)[keyof typeof inks] {
    return inks[this.dark ? 'dark' : 'light'];
  }

  /** Gives back what the graphics card holds of them. */
  forget(): void {
    for (const one of this.made.values()) one.dispose();
    this.made.clear();
  }

  private get clipped(): { clippingPlanes: Plane[] } {
    return { clippingPlanes: this.cut ? [this.plane] : [] };
  }

  private once(name: string, make: () => Material): Material {
    const held = this.made.get(name) ?? make();
    this.made.set(name, held);
    return held;
  }
}

/** Lets what lies in one plane lie behind, or, below nought, before it. */
function behind(by: number): { polygonOffset: true; polygonOffsetFactor: number; polygonOffsetUnits: number } {
  return { polygonOffset: true, polygonOffsetFactor: by, polygonOffsetUnits: by };
}
