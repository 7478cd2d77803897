import { type ColumnValue, columnValue, nestedValues } from '@surae/analysis';
import { type Column, CRITERION_IDS, type CriterionId, REPETITION_COLUMNS, SET_COLUMNS } from '@surae/shared';
import { expect, test } from 'vitest';
import { judged } from '../../support/detected-set.ts';

const column = (key: string, field: string, factor = 1): Column => ({
  id: key,
  version: '1',
  unit: '1',
  source: 'definition',
  mark: 'computed',
  key,
  field,
  factor,
  kind: 'number',
  description: 'a figure',
});

test('a figure is taken from its field and scaled; what is not there is null, zero stays zero', () => {
  const source = { a: { b: 0.1, zero: 0 }, word: 'x', flag: false, list: [1] };
  expect(columnValue(column('b_mm', 'a.b', 1000), source)).toBe(100);
  expect(columnValue(column('zero', 'a.zero'), source)).toBe(0);
  expect(columnValue(column('word', 'word'), source)).toBe('x');
  const list: Column = { ...column('words', 'words'), kind: 'list' };
  expect(columnValue(list, { words: ['a', 'b'] })).toEqual(['a', 'b']);
  expect([columnValue(list, { words: [] }), columnValue(list, {})]).toEqual([[], null]);
  expect(columnValue(column('flag', 'flag'), source)).toBe(false);
  for (const field of ['a.c', 'none.at.all', 'a', 'list', 'word.length.x']) {
    expect(columnValue(column('x', field), source)).toBeNull();
  }
});

test('the dots of a key are levels of nesting', () => {
  const columns = [column('one', 'a'), column('two.x', 'b'), column('two.y.z', 'c')];
  expect(nestedValues(columns, { a: 1, b: 2, c: 3 })).toEqual({ one: 1, two: { x: 2, y: { z: 3 } } });
});

const report = judged(
  { heightsM: [0.1, 0.1, 0.06, 0.1, 0.1, 0.1], rests: { 1: 1 } },
  { subject: { bodyMassKg: 70, heelLeverM: 0.18, ankleLeverM: 0.15, ankleAngleRad: 0.45 } },
);

test('every column of a repetition finds its field in a real report', () => {
  const found = (columns: readonly Column[], sources: readonly object[]) =>
    columns.filter((one) => sources.every((source) => columnValue(one, source) === null)).map((one) => one.key);
  const trunk = judged(
    { heightsM: [0.05, 0.05], kind: 'body-rise' },
    { placement: 'trunk', subject: { bodyMassKg: 70 } },
  );
  const repetitions = [...report.repetitions, ...trunk.repetitions];
  // what no heel or trunk of this test can have: a platform, a seat, evidence for what they do not see, a reason for what they always see
  const observed = (id: CriterionId) =>
    repetitions.filter(({ criteria }) => criteria[id].result !== 'not_observed').length;
  const absent = CRITERION_IDS.flatMap((id) => {
    if (observed(id) === 0) return [`evidence.${id}.`];
    return observed(id) === repetitions.length ? [`evidence.${id}.reason`] : [];
  });
  const missing = found(REPETITION_COLUMNS, repetitions);
  expect(
    missing.filter((key) => !['work_platform', 'work_seated', ...absent].some((start) => key.startsWith(start))),
  ).toEqual([]);
});

test('every column of a set has its field in a report, even where it is null', () => {
  for (const one of SET_COLUMNS) {
    const names = one.field.split('.');
    let at: unknown = report;
    for (const name of names) {
      // an estimate that could not be made is null as a whole
      if (at === null) break;
      expect(Object.keys(at as object), one.field).toContain(name);
      at = (at as Record<string, ColumnValue>)[name];
    }
  }
});

test('heights are in millimetres and gaps in milliseconds', () => {
  const values = nestedValues(REPETITION_COLUMNS, report.repetitions[0]);
  expect(values).toMatchObject({ index: 1, height_mm: 100, height_u_mm: 2, gap_ms: 0, valid: 'yes', rise_mm: null });
  expect(values.criteria).toMatchObject({ height: 'pass', knee: 'not_observed' });
});
