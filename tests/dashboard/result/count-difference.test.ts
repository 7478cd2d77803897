import type { Report } from '@surae/analysis';
import { expect, test } from 'vitest';
import { countDifference } from '../../../apps/dashboard/src/result/count-difference.ts';
import { madeReport, madeSet, madeVisit, sureCount } from '../../support/made-visit.ts';

function between(left: Report, right: Report): readonly string[] {
  return countDifference(madeVisit(madeSet('left', left), madeSet('right', right)));
}

function by(id: string, placement: Report['placement'] = 'foot'): Partial<Report> {
  return { placement, protocol: { id, version: '1', fingerprint: `${id} ${placement}` } };
}

const inclined = (side: 'left' | 'right', number: number, changes: Partial<Report> = {}): Report =>
  madeReport(side, sureCount(number), 'fatigue', { ...by('single-leg.incline10'), ...changes });

test('equal counts cannot be told apart', () => {
  expect(between(inclined('left', 22), inclined('right', 22))).toEqual([
    'The two legs did the same number; the count cannot tell them apart.',
  ]);
});

test('a difference up to the published change can be ordinary variation, one above it is larger than the wobble', () => {
  const [within, basis] = between(inclined('left', 22), inclined('right', 28));
  expect(within).toBe('A difference of 6 can come from ordinary variation.');
  expect(basis).toMatch(/up to 6 between days.*Hébert-Losier 2017/);
  expect(between(inclined('left', 29), inclined('right', 22))[0]).toBe(
    'A difference of 7 is larger than the usual wobble of this test.',
  );
});

test('the way of testing decides whose figure is used', () => {
  const pair = (changes: Partial<Report>): string =>
    between(inclined('left', 20, changes), inclined('right', 40, changes)).join(' ');
  expect(pair(by('single-leg.floor', 'heel'))).toMatch(/larger.*up to 19 .*Byrne 2017/);
  expect(pair(by('single-leg.floor', 'foot'))).toMatch(/larger.*up to 6 .*Ross & Fontenot 2000/);
  expect(pair(by('single-leg.step'))).toMatch(/larger.*taken to vary by up to 12 .*common practice/);
});

test('where nothing is published the change grows with the count and is never less than six', () => {
  const step = by('single-leg.step');
  expect(between(inclined('left', 10, step), inclined('right', 15, step)).join(' ')).toMatch(/up to 6 /);
  expect(between(inclined('left', 40, step), inclined('right', 38, step)).join(' ')).toMatch(/up to 12 /);
});

test('nothing is said about legs that may not be held beside each other', () => {
  const left = inclined('left', 12);
  const refused: Report[] = [
    madeReport('right', sureCount(25), 'pain', by('single-leg.incline10')),
    madeReport('right', sureCount(25), 'technical', by('single-leg.incline10')),
    madeReport('right', sureCount(60), 'cap', by('single-leg.incline10')),
    madeReport('right', { ...sureCount(60), censored: true }, 'fatigue', by('single-leg.incline10')),
    madeReport('right', sureCount(0), 'fatigue', by('single-leg.incline10')),
    inclined('right', 25, by('single-leg.step')),
    inclined('right', 25, { gate: { usable: 'no', reasons: ['invalid-signal'] } }),
    inclined('right', 25, { effort: { good: 'no', signs: [], reason: 'stopped-before-signs-of-fatigue' } }),
  ];
  for (const right of refused) expect(between(left, right)).toEqual([]);
  expect(countDifference(madeVisit(madeSet('left', left)))).toEqual([]);
  expect(countDifference(madeVisit(madeSet('left', left), madeSet('right', null)))).toEqual([]);
});
