import { readFileSync } from 'node:fs';
import { findingsOf, TableSurvey } from '@surae/records';
import { IMPORT_FINDINGS } from '@surae/shared';
import { expect, test } from 'vitest';
import { lineWords } from '../../../packages/records/src/guess/findings.ts';
import { fixturePath } from '../../support/fixture.ts';

test('line numbers are joined to runs, and more than can be listed is said', () => {
  expect(lineWords({ count: 4, lines: [3, 4, 5, 9] })).toBe('3-5, 9');
  expect(lineWords({ count: 2, lines: [7, 7] })).toBe('7');
  expect(lineWords({ count: 300, lines: [1, 3] })).toBe('1, 3, ...');
});

test.each([
  ['untidy.csv', ['blank', 'repeated', 'missing', 'footer', 'no-side']],
  ['clock-midnight.csv', ['clock-midnight', 'no-side']],
  ['sample-numbers.csv', ['no-rate', 'no-side']],
  ['two-people-column.csv', ['parts', 'part', 'part', 'no-side']],
  ['left-right.csv', ['left-and-right']],
])('%s: what is said has a sentence', (name, codes) => {
  const survey = new TableSurvey();
  survey.push(new Uint8Array(readFileSync(fixturePath(`messy/${name}`))));
  const found = findingsOf(survey.end().proposal);
  expect(found.map(({ code }) => code)).toEqual(codes);
  for (const { code, figures } of found) {
    const blanks = [...IMPORT_FINDINGS[code as keyof typeof IMPORT_FINDINGS].text.matchAll(/\{(\w+)\}/g)].map(
      ([, blank]) => blank,
    );
    expect(Object.keys(figures).sort()).toEqual(blanks.sort());
  }
});
