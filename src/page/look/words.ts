import { Vector3, type Camera } from 'three';
import type { inks } from './colours';
import type { LookWord } from './scene';

type Ink = (typeof inks)[keyof typeof inks];

/** Letters' height, pixels: ends are larger. */
const SIZE = { strong: 22, plain: 13 } as const;

/** Words over the 3-D picture, and the line between two measured points: plain 2-D drawing that follows the camera. */
export class Words {
  private readonly canvas = document.createElement('canvas');

  constructor(private readonly host: HTMLElement) {}

  /** Draws the words that keep clear of one another, the strong ones first. */
  place(words: readonly LookWord[], measured: readonly Vector3[], camera: Camera, ink: Ink): void {
    if (!this.canvas.isConnected) {
      this.canvas.className = 'words';
      this.host.append(this.canvas);
    }
    const ratio = Math.min(devicePixelRatio || 1, 2);
    const [width, height] = [this.host.clientWidth, this.host.clientHeight];
    const [across, down] = [Math.round(width * ratio), Math.round(height * ratio)];
    const context = this.canvas.getContext('2d');
    if (!context) return;
    if (this.canvas.width !== across || this.canvas.height !== down)
      [this.canvas.width, this.canvas.height] = [across, down];
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.clearRect(0, 0, across, down);
    context.setTransform(ratio, 0, 0, ratio, 0, 0);
    context.textAlign = 'center';
    context.textBaseline = 'middle';
    context.lineJoin = 'round';
    const taken: { x: number; y: number; half: number; size: number }[] = [];
    for (const word of [...words].sort((a, b) => Number(b.strong) - Number(a.strong))) {
      const size = word.strong ? SIZE.strong : SIZE.plain;
      context.font = `${word.strong ? 'bold ' : ''}${size}px system-ui, sans-serif`;
      const [x, y] = this.onPicture(new Vector3(...word.at), camera);
      const half = context.measureText(word.text).width / 2;
      const free = taken.every(
        (other) => Math.abs(other.x - x) > other.half + half || Math.abs(other.y - y) > 0.5 * (other.size + size),
      );
      if (!free) continue;
      taken.push({ x, y, half, size });
      context.lineWidth = 3;
      context.strokeStyle = ink.halo;
      context.fillStyle = ink.word;
      context.strokeText(word.text, x, y);
      context.fillText(word.text, x, y);
    }
    this.ruler(context, measured, camera, ink);
  }

  /** Where a point of space lies on the picture, pixels from its upper left. */
  onPicture(point: Vector3, camera: Camera): readonly [number, number] {
    const seen = point.clone().project(camera);
    return [((seen.x + 1) / 2) * this.host.clientWidth, ((1 - seen.y) / 2) * this.host.clientHeight];
  }

  private ruler(context: CanvasRenderingContext2D, measured: readonly Vector3[], camera: Camera, ink: Ink): void {
    const ends = measured.map((point) => this.onPicture(point, camera));
    context.strokeStyle = context.fillStyle = ink.measure;
    context.lineWidth = 2;
    context.beginPath();
    ends.forEach(([x, y], index) => (index === 0 ? context.moveTo(x, y) : context.lineTo(x, y)));
    context.stroke();
    for (const [x, y] of ends) {
      context.beginPath();
      context.arc(x, y, 4, 0, 2 * Math.PI);
      context.fill();
    }
  }
}
