import {
  AmbientLight,
  DirectionalLight,
  Group as Three,
  LineSegments,
  Mesh,
  OrthographicCamera,
  Plane,
  Raycaster,
  Scene,
  TOUCH,
  Vector2,
  Vector3,
  WebGLRenderer,
  type BufferGeometry,
} from 'three';
import { OrbitControls } from 'three/addons/controls/OrbitControls.js';
import { Paints } from './paints';
import type { Group, LookEvents, LookPart, LookScene } from './scene';
import { arrowAlong } from './arrow';
import { geometryOf, segmentsOf } from './shapes';
import { standAt, type Stand } from './stand';
import { Words } from './words';

/** A touch is one where the pointer moved less than this, pixels; a corner nearer than SNAP is meant. */
const STILL = 4;
const SNAP = 14;
/** One press of an arrow key: radians turned, or share of the view moved. */
const KEY_TURN = 0.1;

const NOTHING: LookScene = { parts: [], words: [], pull: [], reach: [] };

/** The 3-D view: drawn only when something changes, so that a still page costs nothing. */
export class Look {
  events: LookEvents | null = null;
  private readonly scene = new Scene();
  private readonly camera = new OrthographicCamera(-1, 1, 1, -1);
  private readonly parts = new Three();
  private readonly plane = new Plane(new Vector3(-1, 0, 0), 0);
  private readonly paints = new Paints(this.plane);
  private readonly words: Words;
  private renderer: WebGLRenderer | null = null;
  private controls: OrbitControls | null = null;
  private observer: ResizeObserver | null = null;
  private sight: IntersectionObserver | null = null;
  /** Whether it is on the screen; what nobody sees is drawn once it is. */
  private seen = true;
  private shown: LookScene = NOTHING;
  private hidden: readonly Group[] = [];
  private dark = false;
  private cut: number | null = null;
  private measuring = false;
  private points: Vector3[] = [];
  private pending = false;
  /** Whether something changed since it was last drawn. */
  private owed = false;
  /** Whether what is shown has yet to be built. */
  private behind = false;
  private stood = false;

  constructor(private readonly host: HTMLElement) {
    this.words = new Words(host);
  }

  begin(): void {
    const renderer = new WebGLRenderer({ antialias: true, alpha: true });
    renderer.setPixelRatio(Math.min(devicePixelRatio || 1, 2));
    renderer.localClippingEnabled = true;
    // Asking what became of a program keeps the page waiting until the graphics card has made it.
    renderer.debug.checkShaderErrors = false;
    const canvas = renderer.domElement;
    canvas.tabIndex = -1;
    this.host.prepend(canvas);
    const sun = new DirectionalLight('#ffffff', 1.9);
    sun.position.set(-0.5, 0.8, 1.4);
    this.camera.add(sun);
    this.scene.add(this.camera, new AmbientLight('#ffffff', 1.5), this.parts);
    const controls = new OrbitControls(this.camera, canvas);
    controls.enableDamping = false;
    // One finger scrolls the page.
    controls.touches = { ONE: null, TWO: TOUCH.DOLLY_ROTATE };
    canvas.style.touchAction = 'pan-y';
    controls.addEventListener('change', () => this.redraw());
    canvas.addEventListener('touchmove', (event) => event.touches.length > 1 && event.preventDefault(), {
      passive: false,
    });
    this.listen(canvas);
    this.renderer = renderer;
    this.controls = controls;
    this.observer = new ResizeObserver(() => this.fitRoom());
    this.observer.observe(this.host);
    this.sight = new IntersectionObserver((entries) => this.see(entries.at(-1)?.isIntersecting ?? true), {
      rootMargin: '150px',
    });
    this.sight.observe(this.host);
    this.fitRoom();
    this.rebuild();
  }

  end(): void {
    this.observer?.disconnect();
    this.sight?.disconnect();
    this.controls?.dispose();
    this.clear();
    this.paints.forget();
    this.renderer?.dispose();
    this.renderer?.domElement.remove();
    [this.renderer, this.controls, this.observer, this.sight] = [null, null, null, null];
  }

  show(scene: LookScene): void {
    if (this.shown === scene) return;
    this.shown = scene;
    this.rebuild();
    if (!this.stood) this.stand('corner');
  }

  ink(dark: boolean): void {
    if (this.dark === dark) return;
    this.dark = dark;
    this.rebuild();
  }

  hide(hidden: readonly Group[]): void {
    if (this.hidden === hidden) return;
    this.hidden = hidden;
    this.veil();
    this.redraw();
  }

  cutAt(at: number | null): void {
    if (this.cut === at) return;
    const toggled = (this.cut === null) !== (at === null);
    this.cut = at;
    this.plane.constant = at ?? 0;
    if (toggled) this.rebuild();
    else this.redraw();
  }

  measure(on: boolean): void {
    if (this.measuring === on) return;
    this.measuring = on;
    this.points = [];
    this.redraw();
  }

  stand(where: Stand): void {
    if (!this.controls || this.shown.reach.length === 0) return;
    this.stood = true;
    standAt(where, this.shown.reach, this.camera, this.controls);
    this.redraw();
  }

  private fitRoom(): void {
    const [width, height] = [this.host.clientWidth, this.host.clientHeight];
    if (!this.renderer || width === 0 || height === 0) return;
    this.renderer.setSize(width, height);
    [this.camera.left, this.camera.right] = [-width / 2, width / 2];
    [this.camera.top, this.camera.bottom] = [height / 2, -height / 2];
    this.camera.updateProjectionMatrix();
    if (this.stood) this.redraw();
    else this.stand('corner');
  }

  /** Has everything built anew before it is next drawn: changes that come quicker than frames are built once. */
  private rebuild(): void {
    this.behind = true;
    this.redraw();
  }

  private buildAll(): void {
    this.behind = false;
    this.clear();
    this.paints.set(this.dark, this.cut !== null);
    for (const part of this.shown.parts) this.parts.add(this.build(part));
    const arrow = arrowAlong(this.shown.pull, this.paints.arrow);
    if (arrow) this.parts.add(arrow);
    this.veil();
  }

  private veil(): void {
    for (const part of this.parts.children) part.visible = !this.hidden.includes(part.userData['group'] as Group);
  }

  private clear(): void {
    this.parts.traverse((thing) => {
      if (thing instanceof Mesh || thing instanceof LineSegments) forget(thing);
    });
    this.parts.clear();
  }

  private build(part: LookPart): Three {
    const { paints } = this;
    const { faces, edges } = geometryOf(part.polygons);
    const group = new Three();
    group.name = part.name;
    group.userData['group'] = part.group;
    group.add(new Mesh(faces, paints.fill(part.kind)), new LineSegments(edges, paints.edge));
    if (this.cut !== null) group.add(new Mesh(faces, paints.within));
    if (part.spots.length > 0) group.add(new Mesh(geometryOf(part.spots).faces, paints.spot));
    if (part.lines.length > 0) group.add(new LineSegments(segmentsOf(part.lines, false), paints.edge));
    return group;
  }

  private see(seen: boolean): void {
    this.seen = seen;
    if (seen && this.owed) this.redraw();
  }

  private redraw(): void {
    this.owed = true;
    if (this.pending || !this.renderer || !this.seen) return;
    this.pending = true;
    requestAnimationFrame(() => {
      this.pending = false;
      this.draw();
    });
  }

  private draw(): void {
    if (!this.renderer) return;
    this.owed = false;
    if (this.behind) this.buildAll();
    this.renderer.render(this.scene, this.camera);
    const hidesBoards = this.hidden.includes('boards');
    this.words.place(hidesBoards ? [] : this.shown.words, this.points, this.camera, this.paints.ink);
  }

  private listen(canvas: HTMLCanvasElement): void {
    let from = { x: 0, y: 0 };
    canvas.addEventListener('pointerdown', ({ clientX, clientY }) => (from = { x: clientX, y: clientY }));
    canvas.addEventListener('pointerup', ({ clientX, clientY }) => {
      if (Math.hypot(clientX - from.x, clientY - from.y) > STILL) return;
      const box = canvas.getBoundingClientRect();
      this.touch(clientX - box.left, clientY - box.top);
    });
    this.host.addEventListener('keydown', (event) => {
      if (event.target === this.host && this.key(event)) event.preventDefault();
    });
  }

  /** Arrow keys turn, with shift they move; + and − draw nearer and away; Home shows all again. */
  private key({ key, shiftKey }: KeyboardEvent): boolean {
    const { controls, camera } = this;
    if (!controls) return false;
    const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[key];
    if (way) {
      const [across = 0, up = 0] = way;
      if (shiftKey) this.move(across * 40, up * 40);
      else this.turn(-across * KEY_TURN, up * KEY_TURN);
      return true;
    }
    if (key === 'Home') this.stand('corner');
    else if (key === '+' || key === '=') camera.zoom *= 1.15;
    else if (key === '-') camera.zoom /= 1.15;
    else return false;
    camera.updateProjectionMatrix();
    this.redraw();
    return true;
  }

  private turn(about: number, up: number): void {
    const { controls, camera } = this;
    if (!controls) return;
    const from = camera.position.clone().sub(controls.target);
    const [turn, height] = [Math.atan2(from.y, from.x) + about, Math.asin(from.z / from.length()) + up];
    const level = Math.max(-1.55, Math.min(1.55, height));
    const reach = from.length();
    camera.position.set(
      controls.target.x + reach * Math.cos(level) * Math.cos(turn),
      controls.target.y + reach * Math.cos(level) * Math.sin(turn),
      controls.target.z + reach * Math.sin(level),
    );
    camera.lookAt(controls.target);
    controls.update();
    this.redraw();
  }

  private move(across: number, up: number): void {
    const { controls, camera } = this;
    if (!controls) return;
    const by = new Vector3(-across / camera.zoom, -up / camera.zoom, 0).applyQuaternion(camera.quaternion);
    camera.position.add(by);
    controls.target.add(by);
    controls.update();
    this.redraw();
  }

  private touch(x: number, y: number): void {
    const hit = this.hitAt(x, y);
    if (!this.measuring) {
      this.events?.touched(hit ? (hit.object.parent?.name ?? null) : null);
      return;
    }
    if (!hit) return;
    if (this.points.length === 2) this.points = [];
    this.points.push(this.snapped(hit.point, x, y));
    const [a, b] = this.points;
    this.events?.measured(a && b ? a.distanceTo(b) : null);
    this.redraw();
  }

  private hitAt(x: number, y: number): { object: { parent: { name: string } | null }; point: Vector3 } | null {
    const { clientWidth, clientHeight } = this.host;
    const ray = new Raycaster();
    ray.setFromCamera(new Vector2((2 * x) / clientWidth - 1, 1 - (2 * y) / clientHeight), this.camera);
    const seen = this.parts.children.filter(({ visible }) => visible);
    const hits = ray.intersectObjects(seen, true).filter(({ object, point }) => {
      return object instanceof Mesh && (this.cut === null || this.plane.distanceToPoint(point) >= 0);
    });
    return hits[0] ?? null;
  }

  /** The corner that is meant, where one is near on the picture; else the touched point itself. */
  private snapped(point: Vector3, x: number, y: number): Vector3 {
    let best = { at: point, off: SNAP };
    const seen = this.shown.parts.filter(({ group }) => !this.hidden.includes(group) && group !== 'bench');
    for (const corner of seen.flatMap(({ polygons }) => polygons.flat())) {
      const at = new Vector3(...corner);
      const [px, py] = this.words.onPicture(at, this.camera);
      const off = Math.hypot(px - x, py - y);
      // Near on the picture and near in depth, else a corner behind would be taken.
      if (off < best.off && at.distanceTo(point) < (4 * SNAP) / this.camera.zoom) best = { at, off };
    }
    return best.at.clone();
  }
}

/** Gives back what the graphics card holds of a thing's shape. */
function forget({ geometry }: { readonly geometry: BufferGeometry }): void {
  geometry.dispose();
}
