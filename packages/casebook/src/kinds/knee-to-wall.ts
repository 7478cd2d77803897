import { KNEE_TO_WALL_TRIALS } from '@surae/shared';
import { z } from 'zod';
import { day, finite, side, zeroToTen } from './parts.ts';

/** How far a shank leans over the planted foot: a few trials of one leg, or why there are none. */
export const kneeToWall = z
  .strictObject({
    on: day,
    side,
    /** from the great toe to the wall in centimetres, or of the shank from the upright in degrees */
    unit: z.enum(['cm', 'deg']),
    /** in the order in which they were done */
    trials: z.array(finite.min(0)).max(KNEE_TO_WALL_TRIALS.value),
    /** the worst pain in them */
    pain: zeroToTen,
    skipped: z.enum(['sore-insertion', 'pain', 'other']).nullable(),
  })
  .refine(
    ({ trials, skipped }) => (trials.length === 0) === (skipped !== null),
    'expected trials, or why there are none',
  )
  .meta({
    title: 'Knee to wall',
    description:
      'Weight-bearing dorsiflexion of one leg, as a way from the toe to the wall or as a lean of the shank, in the unit that it was taken in',
  });

export type KneeToWall = z.infer<typeof kneeToWall>;
