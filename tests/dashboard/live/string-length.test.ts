import type { SetChoice, Visit } from '@surae/casebook';
import { MANIFEST_NUMBERS } from '@surae/shared';
import { expect, test } from 'vitest';
import {
  stringAsked,
  stringBefore,
  stringLengthM,
  stringText,
} from '../../../apps/dashboard/src/live/string-length.ts';
import { madeSet, madeVisit } from '../../support/made-visit.ts';

test.each([
  ['12.3', 0.123],
  [' 12,3 ', 0.123],
  ['1', 0.01],
  ['300', 3],
  ['', null],
  ['  ', null],
  ['0', undefined],
  ['0.9', undefined],
  ['300.1', undefined],
  ['-12', undefined],
  ['12 cm', undefined],
])('%j is typed as a length of %j m', (text, lengthM) => {
  expect(stringLengthM(text)).toBe(lengthM);
});

test('the limits are those of a list of recordings', () => {
  const { least, greatest } = MANIFEST_NUMBERS.string_rest_length_mm;
  expect(stringLengthM(String(least / 10))).toBe(least / 1000);
  expect(stringLengthM(String(greatest / 10))).toBe(greatest / 1000);
});

test('a length stands in the field with the digits that were typed, and nothing where none was measured', () => {
  expect(stringText(0.123)).toBe('12.3');
  expect(stringText(undefined)).toBe('');
});

const setOf = (lengthM: number | undefined, change: Partial<SetChoice> = {}) => {
  const made = madeSet('left', null);
  const string = lengthM === undefined ? {} : { stringRestLengthM: lengthM };
  return { ...made, choice: { ...made.choice, origin: 'live', ...string, ...change } as const };
};
const visitOf = (...sets: ReturnType<typeof setOf>[]): Visit => madeVisit(...sets);
const on = (day: string, ...sets: ReturnType<typeof setOf>[]): Visit => ({
  ...visitOf(...sets),
  begunAt: `${day}T09:00:00Z`,
});

test('the length of the last set of the visit stands for the next, also where it was not measured', () => {
  expect(stringBefore(visitOf(setOf(0.1), setOf(0.12)), [], 'live')).toEqual({ lengthM: 0.12, at: null });
  expect(stringBefore(visitOf(setOf(0.1), setOf(undefined)), [visitOf(setOf(0.3))], 'live')).toBeUndefined();
  const practised = { ...setOf(0.2), raises: [], begunAt: '2026-03-01T09:40:00.000+01:00' };
  expect(stringBefore({ ...visitOf(setOf(0.1)), practice: [practised] }, [], 'live')).toEqual({
    lengthM: 0.2,
    at: null,
  });
});

test('the newest visit before that holds a length stands for the first set of a visit, with its day', () => {
  const earlier = [on('2026-01-05', setOf(0.1)), on('2026-02-05', setOf(0.14)), on('2026-02-20', setOf(undefined))];
  expect(stringBefore(visitOf(), earlier, 'live')).toEqual({ lengthM: 0.14, at: '2026-02-05T09:00:00Z' });
});

test('a string of another source, or a sensor elsewhere, says nothing', () => {
  const others = [setOf(0.1, { origin: 'simulated' }), setOf(0.1, { placement: 'foot' })];
  expect(stringBefore(visitOf(...others), [visitOf(...others)], 'live')).toBeUndefined();
  expect(stringBefore(visitOf(...others), [], 'simulated')).toEqual({ lengthM: 0.1, at: null });
});

test('what was typed stands in the field, also nothing; else what the string had before', () => {
  const visit = visitOf(setOf(0.1));
  const at = { placement: 'heel', origin: 'live' } as const;
  expect(stringAsked(undefined, visit, [], at)).toEqual({
    text: '10',
    before: { lengthM: 0.1, at: null },
    lengthM: 0.1,
    kept: { stringRestLengthM: 0.1 },
  });
  expect(stringAsked('', visit, [], at)).toEqual({ text: '', before: undefined, lengthM: null, kept: {} });
  expect(stringAsked('0', visit, [], at)).toEqual({ text: '0', before: undefined, lengthM: undefined, kept: {} });
  expect(stringAsked(undefined, visitOf(), [], at)).toMatchObject({ text: '', lengthM: null, kept: {} });
});

test('nothing is asked or kept of a string where none measures', () => {
  const foot = { placement: 'foot', origin: 'live' } as const;
  for (const typed of ['10', '0'])
    expect(stringAsked(typed, visitOf(), [], foot)).toMatchObject({ lengthM: null, kept: {} });
});
