import { defaultSettings } from '@surae/analysis';
import { expect, test } from 'vitest';
import type { ComparedRaises, ComparedSet } from '../../apps/cli/src/compared-set.ts';
import { type Comparison, comparisonsOf, type LegsComparison } from '../../apps/cli/src/comparisons.ts';
import type { Told } from '../../packages/study/src/listed/told-columns.ts';
import { madeSetOf, pulledSet, wholeTold } from '../support/compared-set.ts';
import { testedLeg } from '../support/tested-leg.ts';

const { judging } = defaultSettings();
const compare = (...sets: ComparedSet[]): Comparison[] => comparisonsOf(sets, { own: {}, note: '' }, judging);

const left = (told: Partial<Told> = {}, changes: Partial<ComparedRaises> = {}): ComparedSet =>
  madeSetOf({ side: 'left', told: wholeTold({ order: 'first', ...told }), ...changes }, 27);
const right = (told: Partial<Told> = {}, changes: Partial<ComparedRaises> = {}): ComparedSet =>
  madeSetOf(
    { side: 'right', told: wholeTold({ order: 'second', rest_s: 150, symptomatic: 'dominant', ...told }), ...changes },
    19,
  );

function legsOf(...sets: ComparedSet[]): LegsComparison {
  const [found] = compare(...sets);
  if (found.kind !== 'legs') throw new Error('no legs');
  return found;
}

function blocks(...sets: ComparedSet[]): readonly string[] {
  const { comparison } = legsOf(...sets).found;
  return comparison.kind === 'blocked' ? comparison.blocks.map(({ code }) => code) : [];
}

test('everything told as it should be: the legs of a visit are compared, the sore one over the other', () => {
  const { found } = legsOf(left(), right());
  expect(found.comparison).toMatchObject({ kind: 'ratio', direction: { over: 'right', why: 'sore-over-other' } });
});

test.each([
  ['rest_s', 'rest-not-recorded'],
  ['source', 'source-not-recorded'],
  ['date', 'day-not-recorded'],
  ['symptomatic', 'soreness-not-asked'],
] as const)('a right leg of which %s is not told: %s', (column, code) => {
  expect(blocks(left(), right({ [column]: null }))).toEqual([code]);
});

test.each([
  [{}, { rest_s: 90 }, ['short-rest']],
  [{}, { date: 0 }, ['different-days']],
  [{}, { source: 'simulation' }, ['different-source']],
  [{}, { order: 'first' }, ['rest-not-recorded', 'order-not-recorded']],
  [{ earlier_injury: null }, {}, ['earlier-injury-not-asked']],
  [{ earlier_injury: true }, {}, ['earlier-injury']],
  [{ symptomatic: 'mild' }, {}, ['both-sides-sore']],
  [{ nerve_signs: true }, {}, ['nerve-signs']],
] as const)('case %#: left %j, right %j', (onLeft, onRight, codes) => {
  expect(blocks(left(onLeft), right(onRight))).toEqual(codes);
});

test('one row that says which leg came first is enough, and numbers say it as well', () => {
  expect(blocks(left({ order: null }), right())).toEqual([]);
  expect(blocks(left(), right({ order: null }))).toEqual([]);
  expect(blocks(left({ order: '1' }), right({ order: '2' }))).toEqual([]);
  // the rest belongs to the second leg: where that is the left one, the rest on the row of the right one says nothing
  expect(blocks(left({ order: 'second' }), right({ order: 'first' }))).toEqual(['rest-not-recorded']);
  expect(blocks(left({ order: 'second', rest_s: 200 }), right({ order: 'first', rest_s: null }))).toEqual([]);
});

test('visits stand in the order of their days, and their sets with them', () => {
  const later = right({ date: wholeTold().date! + 56 }, { visit: '8', file: 'later.csv' });
  const found = compare(later, right({}, { file: 'earlier.csv' })).find(({ kind }) => kind === 'visits');
  expect(found?.kind === 'visits' && found.ordered.map(({ file }) => file)).toEqual(['earlier.csv', 'later.csv']);
});

test('a set from another kind of source is another test over visits', () => {
  const later = right({ date: wholeTold().date! + 56, source: null }, { visit: '8' });
  const found = compare(right(), later).find(({ kind }) => kind === 'visits');
  expect(found?.found).toMatchObject({
    changes: [{ outcome: { reasons: ['different-test'], differences: [{ feature: 'source', after: null }] } }],
  });
});

test('other values of a parameter: each its own counts and answer; one without a ratio leaves it open', () => {
  const varied = (side: 'left' | 'right', ...counts: number[]) =>
    counts.map((count, at) => {
      const { report, protocol } = testedLeg(side, count);
      return { value: `heightFraction ${0.6 + at / 10}`, report, protocol };
    });
  const of = (lefts: number[], rights: number[]) =>
    legsOf(left({}, { varied: varied('left', ...lefts) }), right({}, { varied: varied('right', ...rights) })).varied;
  expect(of([30, 27], [19, 15])).toMatchObject({
    robust: 'yes',
    cases: [
      { value: 'heightFraction 0.6', counts: { left: { scored: 30 }, right: { scored: 19 } }, lower: 'yes' },
      { lower: 'yes' },
    ],
  });
  expect(of([30, 20], [19, 25])?.robust).toBe('no');
  expect(of([30, 4], [19, 3])).toMatchObject({ robust: 'cannot_tell', cases: [{ lower: 'yes' }, { lower: null }] });
  expect(legsOf(left(), right()).varied).toBeNull();
});

test('isometric efforts are compared by their own test, and never with a set of heel raises', () => {
  const found = compare(
    pulledSet('left', 1425, { order: 'first', symptomatic: 'none' }),
    pulledSet('right', 1150, { order: 'second', rest_s: 300, symptomatic: 'mild' }),
    right(),
  );
  expect(found.map(({ kind, group }) => [kind, group.test])).toEqual([
    ['legs', 'isometric'],
    ['legs', 'heel-raise'],
  ]);
  expect(found[0].found).toMatchObject({ comparison: { kind: 'ratio', unit: 'N' } });
  expect(found[1].found).toMatchObject({ comparison: { kind: 'blocked' } });
});
