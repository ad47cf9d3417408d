import { Box3, MathUtils, type OrthographicCamera, Vector3 } from 'three';
import type { OrbitControls } from 'three/addons/controls/OrbitControls.js';
import type { Polygon } from './scene';

/** Where one may stand at once. */
export const stands = ['corner', 'front', 'end', 'top'] as const;
export type Stand = (typeof stands)[number];

/** Toward the eye. Front looks at the stations, end at end A. */
const TOWARD: Readonly<Record<Stand, readonly [number, number, number]>> = {
  corner: [-0.55, 0.6, 0.5],
  front: [0, 1, 0.02],
  end: [-1, 0, 0.02],
  top: [0, 0.02, 1],
};

/** Air left round everything, as a share. */
const AIR = 1.12;

/** Puts the camera where it sees everything, the whole swept leg too, from there. */
export function standAt(where: Stand, reach: Polygon, camera: OrthographicCamera, controls: OrbitControls): void {
  const box = new Box3().setFromPoints(reach.map(([x, y, z]) => new Vector3(x, y, z)));
  const middle = box.getCenter(new Vector3());
  const size = box.getSize(new Vector3()).length() || 1;
  camera.up.set(0, 0, 1);
  camera.position.copy(middle).addScaledVector(new Vector3(...TOWARD[where]).normalize(), 2 * size);
  camera.near = size * 0.01;
  camera.far = size * 5;
  controls.target.copy(middle);
  camera.lookAt(middle);
  camera.updateMatrixWorld();
  camera.zoom = zoomToHold(reach, camera);
  camera.updateProjectionMatrix();
  controls.update();
}

/** The zoom at which every point is in sight from where the camera stands. */
function zoomToHold(reach: Polygon, camera: OrthographicCamera): number {
  const inverse = camera.matrixWorld.clone().invert();
  let [wide, tall] = [1e-6, 1e-6];
  for (const [x, y, z] of reach) {
    const seen = new Vector3(x, y, z).applyMatrix4(inverse);
    wide = Math.max(wide, Math.abs(seen.x));
    tall = Math.max(tall, Math.abs(seen.y));
  }
  return MathUtils.clamp(Math.min(camera.right / wide, camera.top / tall) / AIR, 1e-4, 1e4);
}
