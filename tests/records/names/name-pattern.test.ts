import { describe, expect, test } from 'vitest';
import {
  alikeNames,
  type NamePattern,
  parseNamePattern,
  readName,
} from '../../../packages/records/src/names/name-pattern.ts';

function pattern(text: string): NamePattern {
  const made = parseNamePattern(text);
  if ('expected' in made) throw new Error(`${made.expected}, ${made.actual}`);
  return made;
}

const read = (path: string, ...texts: string[]) => readName(path, texts.map(pattern));

describe('what a name tells', () => {
  test.each([
    ['P07_1_L.csv', '{person}_{visit}_{side}', { person: 'P07', visit: '1', side: 'left' }],
    ['a/b/right-2-P05.txt', '{side}-{visit}-{person}', { side: 'right', visit: '2', person: 'P05' }],
    ['P03 v1 LEFT.csv', '{person} v{visit} {side}', { person: 'P03', visit: '1', side: 'left' }],
    ['P03 V1 r.csv', '{person} v{visit} {side}', { person: 'P03', visit: '1', side: 'right' }],
    ['day-2026-03-01_Ümit.csv', 'day-{date}_{person}', { date: '2026-03-01', person: 'Ümit' }],
    ['study/P9/second/whatever it is.dat', '{person}/*/*', { person: 'P9' }],
    ['P9.final.csv', '{person}.*', { person: 'P9' }],
    ['P9', '{person}', { person: 'P9' }],
  ])('%s by %s', (path, text, cells) => {
    expect(read(path, text)).toEqual({ kind: 'read', cells });
  });

  test.each([
    ['P07_1_middle.csv', '{person}_{visit}_{side}'],
    ['P07_1.csv', '{person}_{visit}_{side}'],
    ['P07_1_L_2.csv', '{person}_{visit}_{side}'],
    // a dot stands for itself
    ['P07x1.csv', '{person}.{visit}'],
    ['day-2026-3-1_P1.csv', 'day-{date}_{person}'],
    // the folder is looked at only where the pattern names one
    ['P9/a.csv', '{person}_{visit}'],
  ])('%s tells nothing by %s', (path, text) => {
    expect(read(path, text)).toEqual({ kind: 'no-pattern' });
  });

  test('two patterns that tell the same are one; two that tell different things are both named', () => {
    expect(read('P1_2_L.csv', '{person}_{visit}_{side}', '{person}_{visit}_{side}')).toMatchObject({ kind: 'read' });
    expect(read('1_2_L.csv', '{person}_{visit}_{side}', '{visit}_{person}_{side}')).toEqual({
      kind: 'several',
      patterns: ['{person}_{visit}_{side}', '{visit}_{person}_{side}'],
    });
    expect(read('P1.csv')).toEqual({ kind: 'no-pattern' });
  });
});

test.each([
  ['visit', 'a column in braces'],
  ['{person', 'braces in pairs'],
  ['{Person}_1', 'the name of a column in braces'],
  ['{person}_{person}', 'every column once'],
  ['{person}{side}', 'something between two columns'],
  ['{file}_1', 'another column'],
])('%s is no pattern', (text, words) => {
  const made = parseNamePattern(text);
  expect('expected' in made && made.expected).toContain(words);
});

test('names that differ only in large letters and leading noughts are perhaps one', () => {
  expect(alikeNames(['P3', 'p03', 'P30', 'Q3', 'P003'])).toEqual([['P003', 'P3', 'p03']]);
  expect(alikeNames(['a1b2', 'a01b02', 'a1b20'])).toEqual([['a01b02', 'a1b2']]);
});
