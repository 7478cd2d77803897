import { FLOOR, INCLINE_10, type Protocol } from '@surae/shared';
import { expect, test } from 'vitest';
import type { ComparedSet } from '../../apps/cli/src/compared-set.ts';
import { legGroups, visitGroups } from '../../apps/cli/src/comparison-groups.ts';
import { madeSetOf } from '../support/compared-set.ts';

const set = (person: string, visit: string, side: ComparedSet['side'], protocol: Protocol = INCLINE_10): ComparedSet =>
  madeSetOf({ file: `${person}${visit}${side}.csv`, person, visit, side, protocol });

test('one group for each person and visit, in the order in which they come', () => {
  const groups = visitGroups([
    set('B', '1', 'left'),
    set('A', '1', 'left'),
    set('B', '1', 'right'),
    set('B', '2', 'left'),
  ]);
  expect(groups.map(({ person, visit, legs }) => [person, visit, legs.left?.file, legs.right?.file])).toEqual([
    ['B', '1', 'B1left.csv', 'B1right.csv'],
    ['A', '1', 'A1left.csv', undefined],
    ['B', '2', 'B2left.csv', undefined],
  ]);
  expect(groups.every(({ blocks }) => blocks.length === 0)).toBe(true);
});

test('legs by different protocols are one group: that they differ is for the comparison to say', () => {
  const [group, another] = visitGroups([set('A', '1', 'left'), set('A', '1', 'right', FLOOR)]);
  expect(another).toBeUndefined();
  expect(group.legs.right?.protocol).toBe(FLOOR);
});

test('two protocols on both legs are two groups', () => {
  const groups = visitGroups([
    set('A', '1', 'left'),
    set('A', '1', 'left', FLOOR),
    set('A', '1', 'right', FLOOR),
    set('A', '1', 'right'),
  ]);
  expect(groups.map(({ legs }) => [legs.left?.protocol.id, legs.right?.protocol.id])).toEqual([
    [INCLINE_10.id, INCLINE_10.id],
    [FLOOR.id, FLOOR.id],
  ]);
});

test('of two sets of one leg by one protocol none counts, and neither is chosen', () => {
  const [group] = visitGroups([set('A', '1', 'left'), set('A', '1', 'left'), set('A', '1', 'right')]);
  expect(group).toMatchObject({ legs: { left: null }, blocks: ['several-sets'] });
  expect(legGroups([set('A', '1', 'left'), set('A', '1', 'left'), set('A', '2', 'left')])).toEqual([]);
});

test('a set whose leg is not known stands against a ratio', () => {
  expect(visitGroups([set('A', '1', 'left'), set('A', '1', null)])[0].blocks).toEqual(['side-uncertain']);
});

test('a leg over visits: one group for a leg, and one for each protocol where a visit has several', () => {
  const sets = [set('A', '1', 'left'), set('A', '1', 'right'), set('A', '2', 'left', FLOOR), set('A', '3', null)];
  expect(legGroups(sets).map(({ side, sets: of }) => [side, of.map(({ visit }) => visit)])).toEqual([
    ['left', ['1', '2']],
  ]);
  const both = [...sets, set('A', '2', 'left'), set('A', '4', 'left', FLOOR)];
  expect(legGroups(both).map(({ sets: of }) => of.map(({ visit, protocol }) => [visit, protocol.id]))).toEqual([
    [
      ['1', INCLINE_10.id],
      ['2', INCLINE_10.id],
    ],
    [
      ['2', FLOOR.id],
      ['4', FLOOR.id],
    ],
  ]);
});
