import { expect, test } from 'vitest';
import { filledGroups, joinedNames, namesBelow } from '../../../packages/records/src/form/group-names.ts';

test('an empty cell has the group of the last filled one to its left', () => {
  expect(filledGroups(['', 'Left', ' ', 'Right', ''])).toEqual(['', 'Left', 'Left', 'Right', 'Right']);
});

test('names are joined with their groups and parted again', () => {
  const groupRow = ['', 'Left', '', 'Right', ''];
  const names = ['Time', 'Force', 'Angle', 'Force', ''];
  const joined = joinedNames(groupRow, names);
  expect(joined).toEqual(['Time', 'Left Force', 'Left Angle', 'Right Force', 'Right']);
  expect(namesBelow(groupRow, joined)).toEqual(names);
  expect(namesBelow(['', 'Links', '', 'Right', ''], joined)).toBeUndefined();
  expect(namesBelow(groupRow, joined.slice(0, 3))).toBeUndefined();
});
