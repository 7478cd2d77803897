import { CRITERION_IDS, REPETITION_COLUMNS } from '@surae/shared';
import { expect, test } from 'vitest';

const fields = new Map(REPETITION_COLUMNS.map((column) => [column.key, column.field]));

test('each criterion has its result and its evidence, read from its own place', () => {
  for (const id of CRITERION_IDS) {
    expect(fields.get(`criteria.${id}`)).toBe(`criteria.${id}.result`);
    for (const part of ['value', 'u', 'threshold', 'unit']) {
      expect(fields.get(`evidence.${id}.${part}`)).toBe(`criteria.${id}.evidence.${part}`);
    }
    for (const part of ['probability', 'borderline', 'seen', 'reason']) {
      expect(fields.get(`evidence.${id}.${part}`)).toBe(`criteria.${id}.${part}`);
    }
  }
});

test('an uncertainty is read from the field of its value with a U before the unit', () => {
  const uncertain = [...fields].filter(([key]) => /_u(_|$)/.test(key) && !key.startsWith('evidence.'));
  expect(uncertain.length).toBeGreaterThan(8);
  for (const [key, field] of uncertain) {
    const value = fields.get(key.replace(/_u(?=_|$)/, ''));
    expect(field, key).toBe(value?.replace(/(M|S|J)$/, 'U$1').replace(/Reference$/, 'ReferenceU'));
  }
});

test('the kind of a column follows from what it holds', () => {
  const kinds = new Map(REPETITION_COLUMNS.map((column) => [column.key, column.kind]));
  const of = (...keys: string[]) => keys.map((key) => kinds.get(key));
  expect(of('valid', 'headline', 'criteria.height', 'evidence.height.unit')).toEqual(Array(4).fill('text'));
  expect(of('passes', 'borderline', 'after_end', 'evidence.height.borderline')).toEqual(Array(4).fill('flag'));
  expect(of('height_mm', 'probability_valid', 'evidence.height.value')).toEqual(Array(3).fill('number'));
});
