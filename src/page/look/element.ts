import { Look } from './look';
import type { Group, LookEvents, LookScene } from './scene';
import type { Stand } from './stand';

/** The element `<form-look>` as the rest of the page knows it; it is defined by a script of its own, after the numbers. */
export interface LookElement extends HTMLElement {
  scene: LookScene;
  dark: boolean;
  hidden3: readonly Group[];
  /** Where a plane square to the tangent line cuts all away that lies beyond it, mm from end A; null for whole. */
  section: number | null;
  measuring: boolean;
  events: LookEvents | null;
  stand: (where: Stand) => void;
}

class FormLook extends HTMLElement {
  private readonly look = new Look(this);

  connectedCallback(): void {
    this.look.begin();
  }

  disconnectedCallback(): void {
    this.look.end();
  }

  set scene(scene: LookScene) {
    this.look.show(scene);
  }

  set dark(dark: boolean) {
    this.look.ink(dark);
  }

  set hidden3(hidden: readonly Group[]) {
    this.look.hide(hidden);
  }

  set section(at: number | null) {
    this.look.cutAt(at);
  }

  set measuring(on: boolean) {
    this.look.measure(on);
  }

  set events(events: LookEvents | null) {
    this.look.events = events;
  }

  stand(where: Stand): void {
    this.look.stand(where);
  }
}

customElements.define('form-look', FormLook);
