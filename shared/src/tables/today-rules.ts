import type { Entry } from '../entry.ts';

/** A limit by which somebody is told to ask for something today. */
export interface TodayRule extends Entry {
  readonly value: number;
}

/** When a re-test is due after the first test of an episode. */
export interface RetestTime extends Entry {
  /** days after the first test */
  readonly value: number;
  /** a look at what the last test did to the tendon: any visit is one; else a test */
  readonly what: 'tolerance' | 'test';
}

const practice = { version: '1', source: 'common practice, no source', mark: 'common-practice' } as const;
const ours = { version: '1', source: 'ours', mark: 'computed' } as const;

/** Re-tests after the first test of an episode, in order: weeks 2, 4, 8 and 12. */
export const RETEST_TIMES: readonly RetestTime[] = [
  { ...practice, id: 'retest.week-2', unit: 'd', value: 14, what: 'tolerance' },
  { ...practice, id: 'retest.week-4', unit: 'd', value: 28, what: 'test' },
  { ...practice, id: 'retest.week-8', unit: 'd', value: 56, what: 'test' },
  { ...practice, id: 'retest.week-12', unit: 'd', value: 84, what: 'test' },
];

/** What asks for something on the page of the day. */
export const TODAY_RULES = {
  /** days between tests after the last of the re-tests, from which one is due and up to which it is */
  furtherFrom: { ...practice, id: 'today.further-from', unit: 'd', value: 28 },
  furtherUntil: { ...practice, id: 'today.further-until', unit: 'd', value: 42 },
  /** days before its time from which a visit stands for a re-test */
  retestEarly: { ...ours, id: 'today.retest-early', unit: 'd', value: 3 },
  /** age of a body mass, at most, before it is asked again */
  massAgeMost: { ...practice, id: 'today.mass-age-most', unit: 'd', value: 90 },
  /** share of the mass before, by which it may have changed at most without being asked again */
  massChangeMost: { ...practice, id: 'today.mass-change-most', unit: '1', value: 0.05 },
  /** pain in the morning over its usual level, at most, of 10; more is a flare */
  morningRiseMost: { ...practice, id: 'today.morning-rise-most', unit: '1', value: 2 },
  /** mornings before, at least and at most, whose middle value is the usual level */
  morningsLeast: { ...ours, id: 'today.mornings-least', unit: '1', value: 3 },
  morningsMost: { ...ours, id: 'today.mornings-most', unit: '1', value: 7 },
} as const satisfies Readonly<Record<string, TodayRule>>;
