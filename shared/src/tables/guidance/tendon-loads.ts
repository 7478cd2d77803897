import type { Entry } from '../../entry.ts';

/**
 * How a load on the tendon was found. Tensiometry reads about twice the others, so that it is never held against them; the review is
 * of inverse dynamics, as the fixed arm is.
 */
export type TendonMethod = 'fixed-arm' | 'review' | 'tensiometry';

/** Peak load on one tendon in an activity, of body weight. */
export interface TendonLoad extends Entry {
  readonly activity: 'single-raise' | 'seated-raise' | 'walking' | 'running' | 'forward-hop';
  readonly method: TendonMethod;
  /** lowest and highest that is told [times body weight] */
  readonly range: readonly [number, number];
  /** people that were measured; null where it is not told */
  readonly n: number | null;
}

const hops = {
  version: '1',
  unit: '1',
  source: 'Baxter 2021 Med Sci Sports Exerc 53:124 (8 people, arm of the tendon fixed at 5 cm)',
  mark: 'read',
  method: 'fixed-arm',
  n: 8,
} as const;
const unread = {
  ...hops,
  source: `${hops.source}; single value from memory, and by levers of 13 and 5 cm`,
  mark: 'from-memory',
} as const;
const review = {
  version: '1',
  unit: '1',
  source: 'a review of the load borne by the Achilles tendon (11 studies), as quoted elsewhere',
  mark: 'second-hand',
  method: 'review',
  n: null,
} as const;
const waves = {
  version: '1',
  unit: '1',
  source: 'shear-wave tensiometry of walking and running, PMC11096059',
  mark: 'read',
  method: 'tensiometry',
  n: null,
} as const;

/** Published peaks. A raise of 13 cm forefoot lever over an arm of 5 cm is 2.6; about 3 is remembered of the paper. */
export const TENDON_LOADS: readonly TendonLoad[] = [
  { ...unread, id: 'tendon.single-raise', activity: 'single-raise', range: [2.6, 3] },
  { ...hops, id: 'tendon.seated-raise', activity: 'seated-raise', range: [0.5, 0.5] },
  { ...hops, id: 'tendon.forward-hop', activity: 'forward-hop', range: [7.3, 7.3] },
  { ...unread, id: 'tendon.walking-arm', activity: 'walking', range: [3.3, 3.3] },
  { ...unread, id: 'tendon.running-arm', activity: 'running', range: [5.2, 5.2] },
  { ...review, id: 'tendon.walking', activity: 'walking', range: [2, 3] },
  { ...review, id: 'tendon.running', activity: 'running', range: [4, 7] },
  { ...waves, id: 'tendon.walking-waves', activity: 'walking', range: [4.49, 4.49] },
  { ...waves, id: 'tendon.running-waves', activity: 'running', range: [8.2, 10.1] },
];

/**
 * How each exercise loads one tendon beside a raise on that leg at body weight; null where no paper that was read tells. A raise on
 * two legs is half of one, by weight; slow lowering, a hold and a bent knee load the tendon by the same weight and lever.
 */
export interface RelativeLoad extends Entry {
  readonly exercise: string;
  readonly of: 'single-raise' | 'half-raise' | TendonLoad['activity'] | null;
}

const byWeight = { version: '1', unit: '1', source: 'ours: the same weight and lever', mark: 'computed' } as const;

const relative = (exercise: string, of: RelativeLoad['of'], basis: Omit<Entry, 'id'> = byWeight): RelativeLoad => ({
  ...basis,
  id: `tendon.relative-${exercise}`,
  exercise,
  of,
});

/** By the code of the exercise; one that is not here is not known. */
export const RELATIVE_LOADS: readonly RelativeLoad[] = [
  relative('seated-raise', 'seated-raise', unread),
  relative('two-leg-hold', 'half-raise'),
  relative('one-leg-hold', 'single-raise'),
  relative('two-leg-raise', 'half-raise'),
  relative('one-leg-lowering', 'single-raise'),
  relative('one-leg-raise', 'single-raise'),
  relative('bent-knee-raise', 'single-raise'),
  relative('loaded-one-leg-raise', 'single-raise'),
  relative('step-raise', null),
  relative('calf-stretch', null),
  relative('quick-rebounds', null),
  relative('one-leg-hops', null),
  relative('forward-hops', 'forward-hop', unread),
  relative('two-leg-hops', null),
  relative('rope-skipping', null),
  relative('leg-press-raise', null),
];
