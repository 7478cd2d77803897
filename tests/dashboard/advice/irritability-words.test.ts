import type { IrritabilityTold } from '@surae/casebook';
import { ADVICE_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { activityFor } from '../../../apps/dashboard/src/advice/activity-cards.ts';
import { adviceFor } from '../../../apps/dashboard/src/advice/advice-cards.ts';
import { irritabilityInputLines } from '../../../apps/dashboard/src/advice/irritability-words.ts';
import { advisedPerson, advisedVisit, inMarch, madeRun } from '../../support/advised-person.ts';
import { MODERATE } from '../../support/told-visit.ts';

const base = advisedVisit();
function visitOf(changes: Partial<IrritabilityTold>) {
  const { legs } = base.history!;
  const right = { ...legs.right, irritability: { ...MODERATE, ...changes } };
  return advisedVisit({ history: { ...base.history!, legs: { ...legs, right } } });
}
const linesOf = (changes: Partial<IrritabilityTold>) => irritabilityInputLines(visitOf(changes), 'right');

/** One of six answers is of another grade than the rest, each in turn. */
const low: Partial<IrritabilityTold> = {
  provokedBy: 'fast-or-heavy-load',
  peakPain: 3,
  settles: 'under-12-hours',
  stiffness: 'under-10-minutes',
  restPain: 'none',
  trend: 'steady-or-better',
};
// the highest grade that any one reaches is the grade: common practice, no source
const high = [
  ['what brings the pain on', { provokedBy: 'walking-or-standing' }, 'walking, stairs, standing, raises on both legs'],
  ['greatest pain', { peakPain: 6 }, '6 of 10'],
  ['time until the pain settles', { settles: 'over-24-hours' }, 'over 24 hours'],
  ['morning stiffness', { stiffness: 'over-30-minutes' }, 'over 30 minutes'],
  ['pain at rest or at night', { restPain: 'present' }, 'yes'],
  ['the last two weeks', { trend: 'worsening' }, 'getting worse'],
] as const satisfies readonly (readonly [string, Partial<IrritabilityTold>, string])[];

test.each(high)('six answers are named with value and grade, and %s alone decided', (name, change, value) => {
  const lines = linesOf({ ...low, ...change });
  expect(lines).toHaveLength(8);
  expect(lines.slice(0, 6).map((line) => line.split(':')[0])).toEqual(high.map(([one]) => one));
  expect(lines).toContain(`${name}: ${value} (that alone: high)`);
  expect(lines.filter((line) => line.endsWith('(that alone: low)'))).toHaveLength(5);
  expect(lines[6]).toBe(`Together high, the highest that one of them reaches. Decided by: ${name}.`);
  expect(lines[7]).toBe('Common practice, no source.');
});

test('an answer that was not asked says so; the grade is then open, or high where a known one is', () => {
  const open = linesOf({ ...low, peakPain: null, trend: null });
  expect(open).toContain('greatest pain: not asked, so not graded by it');
  expect(open).toContain('the last two weeks: not asked, so not graded by it');
  expect(open[6]).toBe('Not graded, since answers are missing: 2 of 6. For limits it is taken as moderate.');
  const known = linesOf({ ...low, peakPain: null, restPain: 'present' });
  expect(known[6]).toMatch(/^Together high.*Decided by: pain at rest or at night\.$/);
});

test('a leg that is not sore, or of which nobody asked, has none', () => {
  expect(irritabilityInputLines(base, 'left')).toEqual([]);
  expect(irritabilityInputLines({ ...base, sore: { left: null, right: null } }, 'right')).toEqual([]);
});

test('they stand in why beside each leg and beside running, wherever a rule reads the grade', () => {
  const [person, visit] = [advisedPerson({ runs: [madeRun(28)] }), visitOf({ trend: null })];
  const title = ADVICE_WORDS['why-irritable'].text;
  const of = (parts: readonly { readonly title: string; readonly lines: readonly string[] }[] | undefined) =>
    parts?.find((part) => part.title === title)?.lines;
  const advice = adviceFor(person, visit, inMarch(31));
  expect(of(advice.cards.find(({ leg }) => leg === 'right')?.why)).toEqual(irritabilityInputLines(visit, 'right'));
  expect(of(advice.cards.find(({ leg }) => leg === 'left')?.why)).toBeUndefined();
  const [running] = activityFor(person, visit, inMarch(31)).cards;
  expect(of(running?.why)).toEqual(irritabilityInputLines(visit, 'right'));
});
