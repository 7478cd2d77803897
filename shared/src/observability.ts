import type { CriterionId } from './criterion.ts';
import type { Entry } from './entry.ts';

/** How far a placement can see something. */
export type Observability = 'measured' | 'inferred' | 'not-observed';

/** Where the sensor sits. */
export type ObservingPlacement = 'heel' | 'foot' | 'trunk' | 'platform';

/** What one placement sees of one thing, and what it takes. */
export interface ObservabilityEntry extends Entry {
  readonly subject: CriterionId | 'count' | 'heel-height' | 'body-rise';
  readonly by: Readonly<Record<ObservingPlacement, Observability>>;
  readonly note: string;
}

const ours = {
  version: '1',
  unit: '1',
  source: 'ours, from the geometry of each placement',
  mark: 'computed',
} as const;

/** What the four placements see; whatever is not observed never passes in silence. */
export const OBSERVABILITY: readonly ObservabilityEntry[] = [
  {
    ...ours,
    id: 'observability.count',
    subject: 'count',
    by: { heel: 'measured', foot: 'measured', trunk: 'measured', platform: 'measured' },
    note: 'Every placement counts the attempted repetitions.',
  },
  {
    ...ours,
    id: 'observability.heel-height',
    subject: 'heel-height',
    by: { heel: 'measured', foot: 'measured', trunk: 'not-observed', platform: 'not-observed' },
    note: 'The foot needs the lever of the heel; trunk and platform see the rise of the body, which is another quantity.',
  },
  {
    ...ours,
    id: 'observability.body-rise',
    subject: 'body-rise',
    by: { heel: 'inferred', foot: 'inferred', trunk: 'measured', platform: 'measured' },
    note: 'From the heel or the foot by the model of the foot lever only.',
  },
  {
    ...ours,
    id: 'observability.height',
    subject: 'height',
    by: { heel: 'measured', foot: 'measured', trunk: 'not-observed', platform: 'not-observed' },
    note: 'The criterion is on the height of the heel.',
  },
  {
    ...ours,
    id: 'observability.return',
    subject: 'return',
    by: { heel: 'measured', foot: 'measured', trunk: 'inferred', platform: 'measured' },
    note: 'Trunk: the level is known only from one standstill to the next.',
  },
  {
    ...ours,
    id: 'observability.tempo',
    subject: 'tempo',
    by: { heel: 'measured', foot: 'measured', trunk: 'measured', platform: 'measured' },
    note: 'The period is judged, not the phase against the beat.',
  },
  {
    ...ours,
    id: 'observability.rest',
    subject: 'rest',
    by: { heel: 'measured', foot: 'measured', trunk: 'measured', platform: 'measured' },
    note: 'From the end of one repetition to the start of the next.',
  },
  {
    ...ours,
    id: 'observability.knee',
    subject: 'knee',
    by: { heel: 'not-observed', foot: 'not-observed', trunk: 'not-observed', platform: 'inferred' },
    note: 'A force signature only asks for a second look; a sensor on the shank or a tester sees the knee.',
  },
  {
    ...ours,
    id: 'observability.lean',
    subject: 'lean',
    by: { heel: 'not-observed', foot: 'not-observed', trunk: 'measured', platform: 'not-observed' },
    note: 'A platform would need its centre of pressure, and then infers it with caution.',
  },
  {
    ...ours,
    id: 'observability.hands',
    subject: 'hands',
    by: { heel: 'not-observed', foot: 'not-observed', trunk: 'not-observed', platform: 'measured' },
    note: 'Only the force under the foot shows weight that the hands carry.',
  },
  {
    ...ours,
    id: 'observability.bounce',
    subject: 'bounce',
    by: { heel: 'measured', foot: 'inferred', trunk: 'inferred', platform: 'measured' },
    note: 'Foot and trunk see the speed at contact through their own filtering.',
  },
  {
    ...ours,
    id: 'observability.other-foot',
    subject: 'other-foot',
    by: { heel: 'not-observed', foot: 'not-observed', trunk: 'not-observed', platform: 'not-observed' },
    note: 'A second sensor or a tester sees the other foot.',
  },
  {
    ...ours,
    id: 'observability.gap',
    subject: 'gap',
    by: { heel: 'measured', foot: 'measured', trunk: 'measured', platform: 'measured' },
    note: 'Missing samples are seen by every placement.',
  },
];
