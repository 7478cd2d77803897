import { defaultSettings } from '@surae/analysis';
import { expect, test } from 'vitest';
import type { ComparedSet } from '../../apps/cli/src/compared-set.ts';
import { changeRows, differenceWords, legsRow, remarksOf } from '../../apps/cli/src/comparison-views.ts';
import { comparisonsOf, type LegsComparison, type VisitsComparison } from '../../apps/cli/src/comparisons.ts';
import { madeSetOf, wholeTold } from '../support/compared-set.ts';

const { judging } = defaultSettings();
const onDay = (visit: string, day: number, scored: number, features?: ComparedSet['features']): ComparedSet =>
  madeSetOf(
    {
      side: 'right',
      visit,
      told: wholeTold({ date: day, symptomatic: 'mild' }),
      ...(features === undefined ? {} : { features }),
    },
    scored,
  );

function visitsOf(...sets: ComparedSet[]): VisitsComparison {
  return comparisonsOf(sets, { own: {}, note: '' }, judging).find((one) => one.kind === 'visits')!;
}

test('three visits: a row since the one before, one since the first, and one for the course', () => {
  const rows = changeRows(visitsOf(onDay('1', 0, 19), onDay('2', 28, 22), onDay('3', 56, 30)));
  expect(rows).toMatchObject([
    { since: 'visit-before', fromVisit: '2', toVisit: '3', fromValue: 22, toValue: 30, zone: 'likely-real' },
    { since: 'first-visit', fromVisit: '1', toVisit: '3', fromValue: 19, change: { value: 11 } },
    {
      since: 'all-visits',
      fromVisit: '1',
      toVisit: '3',
      kind: 'trend',
      slope: { value: 11 / 8 },
      moves: 'cannot_tell',
    },
  ]);
});

test('sets that were not done alike: rows without a figure, each with reasons and differences', () => {
  const rows = changeRows(
    visitsOf(onDay('1', 0, 19), onDay('2', 28, 22), onDay('3', 56, 30, { footwearWorn: 'shoe' })),
  );
  for (const row of rows) {
    expect(row).toMatchObject({
      kind: 'side-by-side',
      notSubtracted: 'different-test',
      differences: 'footwearWorn: barefoot / shoe',
    });
    expect(row).not.toHaveProperty('change');
    expect(row).not.toHaveProperty('slope');
  }
  expect(differenceWords({ feature: 'footwear', before: null, after: 'shoe' })).toBe('footwear: not known / shoe');
});

test('what is said of a change names the change that it is said of', () => {
  const remarks = remarksOf(visitsOf(onDay('1', 0, 19), onDay('2', 28, 22), onDay('3', 56, 30)));
  const hangs = remarks.filter(({ code }) => code === 'hangs-on-reliability').map(({ since }) => since);
  expect(hangs).toEqual(['visit-before', 'first-visit']);
  expect(new Set(remarks.map(({ side }) => side))).toEqual(new Set(['right']));
});

test('a blocked visit has a row without any figure', () => {
  const [legs] = comparisonsOf([onDay('1', 0, 19)], { own: {}, note: 'note' }, judging) as LegsComparison[];
  expect(Object.keys(legsRow(legs))).toEqual(['person', 'visit', 'test', 'leftFile', 'rightFile', 'kind']);
  expect(remarksOf(legs).at(-1)).toMatchObject({ about: 'own-reliability', sentence: 'note' });
  expect(remarksOf(legs)[0]).toMatchObject({
    about: 'against-ratio',
    code: 'value-missing',
    unblock: 'Measure the leg.',
  });
});
