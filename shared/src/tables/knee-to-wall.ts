import type { Entry } from '../entry.ts';

/** A number that the knee-to-wall test is done or read by. */
export interface KneeToWallRule extends Entry {
  readonly value: number;
}

const practice = { version: '1', source: 'common practice, no source', mark: 'common-practice' } as const;

/** Trials of a leg, at most; the best of them counts. */
export const KNEE_TO_WALL_TRIALS = {
  ...practice,
  id: 'knee-to-wall.trials-most',
  unit: '1',
  value: 3,
} as const satisfies KneeToWallRule;

/**
 * How the reach of the shank over the planted foot is taken, as a way from the great toe to the wall or as the lean of the
 * shank: the step of a press and of a press of the outer buttons, where a stepper begins (nothing is told before it is pressed), and what no foot and shank reach.
 */
export const KNEE_TO_WALL_SCALES = {
  cm: {
    step: { ...practice, id: 'knee-to-wall.step-distance', unit: 'cm', value: 0.5 },
    stride: { ...practice, id: 'knee-to-wall.stride-distance', unit: 'cm', value: 2 },
    begin: { ...practice, id: 'knee-to-wall.begin-distance', unit: 'cm', value: 8 },
    most: { ...practice, id: 'knee-to-wall.most-distance', unit: 'cm', value: 25 },
  },
  deg: {
    step: { ...practice, id: 'knee-to-wall.step-lean', unit: 'deg', value: 1 },
    stride: { ...practice, id: 'knee-to-wall.stride-lean', unit: 'deg', value: 5 },
    begin: { ...practice, id: 'knee-to-wall.begin-lean', unit: 'deg', value: 35 },
    most: { ...practice, id: 'knee-to-wall.most-lean', unit: 'deg', value: 70 },
  },
} as const satisfies Readonly<
  Record<'cm' | 'deg', Readonly<Record<'step' | 'stride' | 'begin' | 'most', KneeToWallRule>>>
>;

/** How large a change of the reach has to be before it is more than its wobble. */
export interface KneeToWallChange extends Entry {
  readonly value: number;
  readonly group: string;
}

/** Detectable changes of the reach by what it was taken in: sources do not agree, and the greatest counts. */
export const KNEE_TO_WALL_CHANGES = {
  cm: [
    {
      id: 'knee-to-wall.change.distance-same-tester',
      version: '1',
      unit: 'cm',
      source: 'Powden 2015 Man Ther 20:524 (mean of the studies reviewed)',
      mark: 'read',
      value: 1.9,
      group: 'one tester, 12 studies',
    },
    {
      id: 'knee-to-wall.change.distance-testers',
      version: '1',
      unit: 'cm',
      source: 'Powden 2015 Man Ther 20:524 (mean of the studies reviewed)',
      mark: 'read',
      value: 1.6,
      group: 'two testers, 9 studies',
    },
    {
      id: 'knee-to-wall.change.distance-sore-ankle',
      version: '1',
      unit: 'cm',
      source: 'Chisholm 2012 Physiother Can 64:347',
      mark: 'read',
      value: 1,
      group: '53 people with an ankle complaint, three days apart',
    },
  ],
  deg: [
    {
      id: 'knee-to-wall.change.lean-same-tester',
      version: '1',
      unit: 'deg',
      source: 'Powden 2015 Man Ther 20:524 (mean of the studies reviewed)',
      mark: 'read',
      value: 4.7,
      group: 'one tester, 12 studies',
    },
    {
      id: 'knee-to-wall.change.lean-testers',
      version: '1',
      unit: 'deg',
      source: 'Powden 2015 Man Ther 20:524 (mean of the studies reviewed)',
      mark: 'read',
      value: 4.6,
      group: 'two testers, 9 studies',
    },
  ],
} as const satisfies Readonly<Record<'cm' | 'deg', readonly KneeToWallChange[]>>;
