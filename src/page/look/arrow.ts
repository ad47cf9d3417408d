import { CatmullRomCurve3, ConeGeometry, Group, Mesh, TubeGeometry, Vector3, type Material } from 'three';
import type { Polygon } from './scene';

/** Thickness of the shaft and size of the head as shares of the way's length. */
const SHAFT = 0.012;
const HEAD = { wide: 0.04, long: 0.12 } as const;

/** An arrow along a way in space; null where it is too short to be one. Hidden with the sheet, which it pulls. */
export function arrowAlong(path: Polygon, material: Material): Group | null {
  const points = path.map(([x, y, z]) => new Vector3(x, y, z));
  const length = points.reduce((sum, point, index) => sum + point.distanceTo(points[index - 1] ?? point), 0);
  const [tip, before] = [points.at(-1), points.at(-2)];
  if (!tip || !before || length === 0) return null;
  const shaft = new Mesh(
    new TubeGeometry(new CatmullRomCurve3(points), 4 * points.length, SHAFT * length, 8),
    material,
  );
  const head = new Mesh(new ConeGeometry(HEAD.wide * length, HEAD.long * length, 16), material);
  const way = tip.clone().sub(before).normalize();
  head.position.copy(tip);
  head.quaternion.setFromUnitVectors(new Vector3(0, 1, 0), way);
  const group = new Group();
  group.name = 'pull';
  group.userData['group'] = 'sheet';
  group.add(shaft, head);
  return group;
}
