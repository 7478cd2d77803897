import type { Entry } from '../entry.ts';

/** What a group of people did, and under which way of testing it may be held beside a result. */
export interface ReferenceEntry extends Entry {
  readonly measure: 'repetitions' | 'displacement' | 'work' | 'peak-height';
  readonly statistic: 'median' | 'mean';
  readonly group: {
    readonly sex: 'men' | 'women' | 'all';
    readonly ageFrom: number;
    readonly ageBelow: number;
    readonly people: number | null;
    /** body mass index up to which people were taken in; null where none is told [kg/m2] */
    readonly bodyMassIndexMost: number | null;
  };
  readonly value: number;
  readonly spread: number | null;
  /** ids of the protocols that match; an empty list matches none, the entry is context only */
  readonly protocols: readonly string[];
  readonly remark: string;
}

const decadeSource = {
  version: '1',
  unit: '1',
  source: 'Hébert-Losier 2017 Physiotherapy 103:446, table by decade as copied elsewhere',
  mark: 'second-hand',
} as const;

const DECADES = [
  { from: 20, men: 37, women: 30 },
  { from: 30, men: 32, women: 27 },
  { from: 40, men: 28, women: 24 },
  { from: 50, men: 23, women: 21 },
  { from: 60, men: 19, women: 19 },
  { from: 70, men: 14, women: 16 },
] as const;

const byDecade: readonly ReferenceEntry[] = DECADES.flatMap((decade) =>
  (['men', 'women'] as const).map((sex) => ({
    ...decadeSource,
    id: `reference.repetitions.${sex}.${decade.from}`,
    measure: 'repetitions' as const,
    statistic: 'median' as const,
    group: { sex, ageFrom: decade.from, ageBelow: decade.from + 10, people: null, bodyMassIndexMost: 30 },
    value: decade[sex],
    spread: null,
    protocols: ['single-leg.incline10'],
    remark:
      'Another copy of the table differs by up to one repetition. A newer sample found no link with age. Body mass index up to 30, as quoted elsewhere.',
  })),
);

const overall = {
  version: '1',
  source: 'Hébert-Losier 2017 Physiotherapy 103:446',
  mark: 'read',
  unit: '1',
  measure: 'repetitions',
  statistic: 'median',
  spread: null,
  protocols: ['single-leg.incline10'],
} as const;

const international = {
  version: '1',
  source: 'Sleeswijk Visser 2025 Braz J Phys Ther 29:101188',
  mark: 'read',
  statistic: 'median',
  group: { sex: 'all', ageFrom: 18, ageBelow: 120, people: 500, bodyMassIndexMost: null },
  spread: null,
  protocols: ['single-leg.incline10'],
  remark:
    'Dominant leg; no side difference. Lower with female sex, higher body mass index and lower activity; no link with age.',
} as const;

/** What groups of people did. Two sources disagree on age: both are shown, they are not averaged. */
export const REFERENCE_TABLES: readonly ReferenceEntry[] = [
  ...byDecade,
  {
    ...overall,
    id: 'reference.repetitions.men.all',
    group: { sex: 'men', ageFrom: 20, ageBelow: 82, people: null, bodyMassIndexMost: 30 },
    value: 24,
    remark: 'Of 566 people of 20 to 81 years.',
  },
  {
    ...overall,
    id: 'reference.repetitions.women.all',
    group: { sex: 'women', ageFrom: 20, ageBelow: 82, people: null, bodyMassIndexMost: 30 },
    value: 21,
    remark: 'Of 566 people of 20 to 81 years; women over 60 did more than men.',
  },
  { ...international, id: 'reference.international.repetitions', unit: '1', measure: 'repetitions', value: 25 },
  { ...international, id: 'reference.international.displacement', unit: 'm', measure: 'displacement', value: 1.92 },
  {
    ...international,
    id: 'reference.international.work',
    unit: 'J',
    measure: 'work',
    value: 1374,
    remark: 'Marker at the ankle: the work.ankle convention, not the heel. Fits 1.92 m times about 73 kg.',
  },
  {
    ...international,
    id: 'reference.international.peak-height',
    unit: 'm',
    measure: 'peak-height',
    value: 0.093,
    remark: 'Marker at the ankle, which rises about 0.54 to 0.65 of the heel.',
  },
  {
    id: 'reference.lunsford.repetitions',
    version: '1',
    unit: '1',
    source: 'Lunsford & Perry 1995 Phys Ther 75:694; spread from memory, not checked against the paper',
    mark: 'from-memory',
    measure: 'repetitions',
    statistic: 'mean',
    group: { sex: 'all', ageFrom: 20, ageBelow: 60, people: 203, bodyMassIndexMost: null },
    value: 27.9,
    spread: 11.1,
    protocols: [],
    remark: 'The often quoted 25 lies near the mean of this sample; it is no lower limit of anything.',
  },
];
