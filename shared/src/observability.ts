import type { Observability, ObservingPlacement } from './criteria/criterion-entry.ts';
import { CRITERIA, CRITERION_IDS, type CriterionId } from './criterion.ts';
import type { Entry } from './entry.ts';

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

/** What the four placements see, and what a count by hand does not; whatever is not observed never passes in silence. */
export const OBSERVABILITY: readonly ObservabilityEntry[] = [
  {
    ...ours,
    id: 'observability.count',
    subject: 'count',
    by: { heel: 'measured', foot: 'measured', trunk: 'measured', platform: 'measured', hand: 'inferred' },
    note: 'Every placement counts the attempted repetitions; by hand it is what somebody saw and tapped.',
  },
  {
    ...ours,
    id: 'observability.heel-height',
    subject: 'heel-height',
    by: { heel: 'measured', foot: 'measured', trunk: 'not-observed', platform: 'not-observed', hand: 'not-observed' },
    note: 'The foot needs the lever of the heel; trunk and platform see the rise of the body, which is another quantity.',
  },
  {
    ...ours,
    id: 'observability.body-rise',
    subject: 'body-rise',
    by: { heel: 'inferred', foot: 'inferred', trunk: 'measured', platform: 'measured', hand: 'not-observed' },
    note: 'From the heel or the foot by the model of the foot lever only.',
  },
  ...CRITERION_IDS.map((id) => ({
    ...ours,
    id: `observability.${id}`,
    subject: id,
    by: CRITERIA[id].by,
    note: CRITERIA[id].note,
  })),
];
