import { IMPORT_EVIDENCE, IMPORT_FINDINGS, IMPORT_QUESTIONS } from '@surae/shared';
import { expect, test } from 'vitest';
import { projectText, sourceFiles } from '../../support/project.ts';

test('every code of evidence in the guesses has a sentence', () => {
  const text = sourceFiles('packages/records')
    .filter((path) => path.includes('/guess/') && !path.endsWith('/findings.ts'))
    .map(projectText)
    .join('\n');
  const codes = [...text.matchAll(/(?:evidence\(|code: )'([a-z0-9-]+)'/g)].map(([, code]) => code);
  expect(codes.length).toBeGreaterThan(40);
  expect([...new Set(codes)].filter((code) => !(code in IMPORT_EVIDENCE))).toEqual([]);
});

test('every topic of a question has one, and what is about a column names it', () => {
  for (const topic of ['use', 'axis', 'unit', 'side', 'placement'] as const) {
    expect(IMPORT_QUESTIONS[topic].text).toContain('{column}');
  }
  for (const { text } of Object.values(IMPORT_QUESTIONS)) expect(text).toMatch(/\?$/);
});

test('what stops a recording from being made says so', () => {
  for (const code of ['stray', 'unreadable', 'wrong-steps'] as const) {
    expect(IMPORT_FINDINGS[code].text).toContain('No recording can be made');
  }
  expect(IMPORT_FINDINGS.missing.text).toContain('none becomes zero');
});
