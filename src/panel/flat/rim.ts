import { movedBy } from '../../base/space';
import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import { roundCentre } from '../fold/bend-motion';
import type { RimLine } from '../corner/end-cut';
import type { BendSurface } from './bend';
import type { BendSpec, Measured } from './built-up';

/** The line a leg ends in: a constant leg, or the level line at a height over the base, on the face `measured` names. */
export function rimLine(
  bend: BendSurface,
  reach: BendSpec['reach'],
  measured: Measured,
  path: string,
): RimLine | Finding {
  if ('leg' in reach) {
    if (reach.leg >= 0) return { start: reach.leg, slope: 0 };
    return finding('leg-too-short', `${path}.leg`, { leg: reach.leg });
  }
  const inward = measured === 'inside' ? bend.thickness / 2 : measured === 'outside' ? -bend.thickness / 2 : 0;
  const toLeg = roundCentre(bend.finished, bend.thickness, bend.wrap);
  const heightAt = (x: number, y: number): number => movedBy(toLeg, [x, y, inward])[2] - inward;
  const [start, alongX, alongY] = [heightAt(0, 0), heightAt(1, 0) - heightAt(0, 0), heightAt(0, 1) - heightAt(0, 0)];
  const rim = { start: (reach.height - start) / alongY, slope: -alongX / alongY };
  const least = Math.max(start, heightAt(bend.finished.length, 0));
  if (rim.start >= 0 && rim.start + rim.slope * bend.finished.length >= 0) return rim;
  return finding('height-within-bend', `${path}.height`, { height: reach.height, least });
}
