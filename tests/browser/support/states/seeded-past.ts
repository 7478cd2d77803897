import { FLOOR } from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { ALL_TOLD, legTold, MODERATE, type ToldVisit, tellVisits } from '../../../support/told-visit.ts';

const one: Pick<ToldVisit, 'sore' | 'history'> = {
  sore: { left: 'no', right: 'mid-portion' },
  history: { ...ALL_TOLD, legs: { ...ALL_TOLD.legs, right: legTold('none', MODERATE) } },
};
const two: Pick<ToldVisit, 'sore' | 'history'> = {
  sore: { left: 'insertion', right: 'insertion' },
  history: {
    ...ALL_TOLD,
    legs: { left: legTold('none', { ...MODERATE, peakPain: 6 }), right: legTold('none', MODERATE) },
  },
};
const onFloor = { protocol: FLOOR };

/** Visits of earlier weeks, each by the name of what its result shows beside others. */
const past = [
  {
    person: 'Ilse Marant',
    visits: [
      { name: 'first', day: '2026-06-14', ...one, left: { count: 27 }, right: { count: 15, pain: 4 } },
      { name: 'change', day: '2026-07-26', ...one, left: { count: 26 }, right: { count: 23, pain: 3 } },
      { name: 'third', day: '2026-09-06', ...one, left: { count: 28 }, right: { count: 24, pain: 3 } },
      { name: 'course', day: '2026-10-18', ...one, left: { count: 27 }, right: { count: 29, pain: 1 } },
    ],
  },
  {
    person: 'Odd Brekke',
    visits: [
      {
        name: 'both-sore-pain',
        day: '2026-10-04',
        ...two,
        left: { count: 9, reason: 'pain', pain: 6, exertion: 6, ...onFloor },
        right: { count: 16, pain: 3, ...onFloor },
      },
      {
        name: 'both-sore',
        day: '2026-11-15',
        ...two,
        left: { count: 13, ...onFloor },
        right: { count: 20, ...onFloor },
      },
    ],
  },
  {
    person: 'Salka Nemer',
    visits: [
      {
        name: 'earlier-unlike',
        day: '2026-09-20',
        left: { count: 24, ...onFloor },
        right: { count: 25, ...onFloor },
        pushes: { left: { netN: 640 }, right: { netN: 655 } },
      },
      {
        name: 'unlike',
        day: '2026-11-15',
        left: { count: 38 },
        right: { count: 38 },
        pushes: { left: { netN: 652 }, right: { netN: 643 } },
      },
    ],
  },
] as const satisfies readonly { person: string; visits: readonly (ToldVisit & { readonly name: string })[] }[];

/** Name of an earlier visit. */
export type PastName = (typeof past)[number]['visits'][number]['name'];

/** Writes the earlier visits into a store; gives their names and ids. */
export async function tellPast(store: RecordStore): Promise<readonly { name: PastName; id: string }[]> {
  const told: { name: PastName; id: string }[] = [];
  for (const { person, visits } of past) {
    const ids = await tellVisits(
      store,
      { name: person, bodyMassKg: 70, heelLeverM: 0.18, sex: 'women', birthYear: 1992 },
      visits,
    );
    told.push(...visits.map(({ name }, i) => ({ name, id: ids[i] })));
  }
  return told;
}
