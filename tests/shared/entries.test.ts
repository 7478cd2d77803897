import * as shared from '@surae/shared';
import { expect, test } from 'vitest';

const MARKS = new Set(['read', 'second-hand', 'from-memory', 'common-practice', 'computed']);
/** UCUM codes that the data use. */
const UNITS = new Set([
  '1',
  '%',
  's',
  'ms',
  'm',
  'cm',
  'mm',
  'deg',
  'm/s',
  'N',
  'N.m',
  'N/s',
  'N.m/s',
  'N.s',
  'N.m.s',
  'N/kg',
  'N.m/kg',
  'Hz',
  'J',
  'W',
  '/min',
  'min',
  'h',
  'mo',
  'a',
  'd',
  'Hz',
  'kg',
  'N/m',
  'm/s2',
  'rad',
  'rad/s',
  'mm[Hg]',
]);

/** Every object anywhere in the shared data that has an id, with the place it was found at. */
function* entriesIn(value: unknown, path: string): Generator<[string, Partial<shared.Entry>]> {
  if (value === null || typeof value !== 'object') return;
  if ('id' in value) yield [path, value as Partial<shared.Entry>];
  for (const [key, inner] of Object.entries(value)) yield* entriesIn(inner, `${path}.${key}`);
}

const entries = Object.entries(shared).flatMap(([name, value]) => [...entriesIn(value, name)]);

test('every entry has an id, a version, a unit, a source and an evidence mark', () => {
  expect(entries.length).toBeGreaterThan(300);
  for (const [path, entry] of entries) {
    expect(typeof entry.id === 'string' && entry.id.length > 0, path).toBe(true);
    expect(typeof entry.version === 'string' && /^\d+$/.test(entry.version), path).toBe(true);
    expect(UNITS.has(entry.unit ?? ''), `${path}: unit ${entry.unit}`).toBe(true);
    expect(typeof entry.source === 'string' && entry.source.length > 0, path).toBe(true);
    expect(MARKS.has(entry.mark ?? ''), `${path}: mark ${entry.mark}`).toBe(true);
  }
});

test('an id names one entry: two entries with the same id hold the same', () => {
  const byId = new Map<string, string>();
  for (const [path, entry] of entries) {
    const text = JSON.stringify(entry);
    const known = byId.get(entry.id ?? '');
    expect(known === undefined || known === text, `${path}: ${entry.id}`).toBe(true);
    byId.set(entry.id ?? '', text);
  }
});

test('the mark and the words of the source agree', () => {
  for (const [path, { mark, source = '' }] of entries) {
    if (mark === 'from-memory') expect(source, path).toMatch(/memory/);
    if (mark === 'common-practice') expect(source, path).toMatch(/common practice|chosen by/);
    if (/^common practice, no source$/.test(source)) expect(mark, path).toBe('common-practice');
  }
});

test('shared holds data only: no function is exported but those that put its words into a language', () => {
  const functions = Object.entries(shared).filter(([, value]) => typeof value === 'function');
  expect(functions.map(([name]) => name).sort()).toEqual(['inWords', 'setWording']);
});
