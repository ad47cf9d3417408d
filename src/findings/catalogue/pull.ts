import { error, warning } from '../entry';

/** What the pull and the hold forbid or make doubtful. */
export const pullFindings = {
  'too-limp': error({ lever: 'length', longest: 'length' }, ({ lever, longest }, { field }) => ({
    message: `the leg is too limp: pulled by its end it folds before the sheet lies on the form, unless it is held within ${longest} of where the sheet leaves it`,
    hint: `let ${field('pull.with')} be yoke, which grips the leg near the bend, or shorten the free leg`,
    got: lever,
    allowed: `at most ${longest}`,
  })),
  'all-tail': error({ angle: 'angle', lever: 'length' }, ({ angle, lever }, { field }) => ({
    message: `pulled ${lever} from the form the leg alone bends more than the ${angle} wanted: nothing is left to wrap`,
    hint: `let ${field('pull.with')} be yoke, or bend further`,
  })),
  'leg-bows': warning(
    { departure: 'length', most: 'length', bow: 'length', way: 'text' },
    ({ departure, most, bow, way }, { field }) => ({
      message: `pulled so, the leg bends beyond the form too: the bend strays ${departure} from the round one (${most} is usual) and the leg bows by ${bow}`,
      hint:
        way === 'yoke'
          ? `let more people pull (${field('effort.people')}): the nearer to the bend, the flatter the leg`
          : `let ${field('pull.with')} be yoke, or pull nearer to the bend with more people`,
    }),
  ),
  'yoke-gives': warning(
    { opens: 'length', stays: 'angle', nose: 'text', outer: 'text' },
    ({ opens, stays, nose, outer }, { field }) => ({
      message: `even ${nose} and ${outer} give: the yoke opens ${opens} in the middle and the sheet keeps ${stays} inside it, or the free leg is too short to grip`,
      hint: `make the yoke stiffer, clamp its middle where your clamps’ throat reaches the nose, or let ${field('pull.with')} be bare`,
    }),
  ),
  'pull-square': warning({ turn: 'angle' }, ({ turn }) => ({
    message: `the leg turns ${turn} beyond the form while it is pulled, so the way you pull tells: 10° inward adds more than 1°`,
    hint: 'pull exactly square to the leg at your hands, never in toward the bend',
  })),
  'held-leg-tail': warning({ vary: 'angle?', clamps: 'count', more: 'count' }, ({ vary, more }) => ({
    message:
      vary === null
        ? 'clamps of this kind, done up on the weak side, let the held leg bend up and the form lift'
        : `the held leg bends a little under the form, more or less as the clamps are done up: the finished angle may vary by ${vary}`,
    hint: `${more} more ${more === 1 ? 'clamp' : 'clamps'} would halve it; else check the angle and pull a little further`,
  })),
  'front-edge-lifts': warning({ lift: 'length', most: 'length' }, ({ lift, most }) => ({
    message: `the pull lifts the form’s front edge by ${lift} (${most} is usual), so that the bend starts a little late`,
    hint: 'use more or stronger clamps',
  })),
};
