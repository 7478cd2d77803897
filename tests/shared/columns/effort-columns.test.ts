import { EFFORT_COLUMNS } from '@surae/shared';
import { expect, test } from 'vitest';

const keys = EFFORT_COLUMNS.map(({ key }) => key);

test('the names that a reader looks for are there', () => {
  for (const key of [
    'onset_s',
    'end_s',
    'peak_n',
    'mean_500ms_n',
    'rfd_0_100_n_per_s',
    'rfd_0_200_n_per_s',
    'impulse_0_200_n_s',
    'time_to_30_percent_s',
    'time_to_50_percent_s',
    'early_rise_reason',
    'accepted',
    'reasons',
    'peak_nm',
    'mean_500ms_nm',
    'rfd_0_100_nm_per_s',
  ]) {
    expect(keys).toContain(key);
  }
  expect(new Set(keys).size).toBe(keys.length);
});

test('every measured figure has its standard uncertainty beside it, in its own unit', () => {
  const without = EFFORT_COLUMNS.filter(
    ({ key, kind }) => kind === 'number' && !/(_|^)u(_|$)/.test(key) && key !== 'index' && key !== 'peak_at_s',
  ).filter(({ key, unit }, i, all) => {
    void i;
    void all;
    const beside =
      key === 'unsteadiness' ? 'unsteadiness_u' : key.replace(/^(.*?)(_(?:s|nm?(?:_s|_per_s)?))$/, '$1_u$2');
    return EFFORT_COLUMNS.find((one) => one.key === beside)?.unit !== unit;
  });
  expect(without.map(({ key }) => key)).toEqual([]);
});

test('newton and newton metres have the same columns', () => {
  const newton = keys.filter((key) => /_n(_|$)/.test(key)).map((key) => key.replace(/_n(?=_|$)/, '_nm'));
  expect(newton.length).toBeGreaterThan(15);
  expect(keys.filter((key) => /_nm(_|$)/.test(key))).toEqual(newton);
});
