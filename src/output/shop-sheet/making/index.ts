import type { Shop } from '../shop';
import { jigsawSteps } from './jigsaw';
import { laserSteps } from './laser';
import { routerSteps } from './router';
import type { Step } from './step';

/** How the form is made with the job's tool, from board to standing form. */
export function makingSteps(shop: Shop): Step[] {
  const { cut } = shop.job;
  const { joints } = shop;
  if (cut.with === 'router' && joints.with === 'router') return routerSteps(shop, cut, joints);
  if (cut.with === 'laser' && joints.with === 'laser') return laserSteps(shop, cut, joints);
  return jigsawSteps(shop);
}
