import { CRITERION_IDS, REPETITION_COLUMNS, SET_COLUMNS } from '@surae/shared';
import { expect, test } from 'vitest';

const lists = { repetition: REPETITION_COLUMNS, set: SET_COLUMNS };

test.each(Object.entries(lists))('no two columns of the %s list share a key or a field', (_, columns) => {
  expect(new Set(columns.map((column) => column.key)).size).toBe(columns.length);
  expect(new Set(columns.map((column) => column.field)).size).toBe(columns.length);
});

test.each(Object.entries(lists))('no key of the %s list is a level and a figure at once', (_, columns) => {
  const keys = new Set(columns.map((column) => column.key));
  for (const key of keys) {
    const names = key.split('.');
    for (let n = 1; n < names.length; n++) expect(keys.has(names.slice(0, n).join('.')), key).toBe(false);
  }
});

test('keys are plain words in lower case, figures end in their unit, standard uncertainties carry a u', () => {
  const endings: Readonly<Record<string, RegExp>> = {
    mm: /_mm$/,
    ms: /_ms$/,
    s: /_s$/,
    m: /_m$/,
    J: /_j$/,
    W: /_w$/,
    '/min': /_per_min$/,
    '%': /percent/,
  };
  for (const { key, unit, description } of [...REPETITION_COLUMNS, ...SET_COLUMNS]) {
    expect(key).toMatch(/^[a-z][a-z0-9_.-]*$/);
    const ending = endings[unit];
    if (ending !== undefined) expect(key, `${key} in ${unit}`).toMatch(ending);
    if (/^standard uncertainty/.test(description)) expect(key).toMatch(/(_u_|_u$|\.u$)/);
  }
});

test('the keys that others rely on are there', () => {
  const keys = new Set(REPETITION_COLUMNS.map((column) => column.key));
  const needed = ['start_s', 'top_s', 'end_s', 'height_mm', 'height_u_mm', 'rise_mm', 'rise_u_mm', 'valid'];
  for (const key of [...needed, ...CRITERION_IDS.map((id) => `criteria.${id}`)]) expect(keys.has(key), key).toBe(true);
  const ofSet = new Set(SET_COLUMNS.map((column) => column.key));
  for (const name of ['attempted', 'valid', 'scored', 'low', 'high'])
    expect(ofSet.has(`count.${name}`), name).toBe(true);
});

test('a column in thousandths has the factor of a thousand, words and flags have none', () => {
  for (const { key, unit, factor, kind } of [...REPETITION_COLUMNS, ...SET_COLUMNS]) {
    expect(factor, key).toBe(kind === 'number' && (unit === 'mm' || unit === 'ms') ? 1000 : 1);
  }
});
