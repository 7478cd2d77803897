import { expect, test } from 'vitest';
import { parseStudy } from '../../../packages/study/src/declared/parse-study.ts';
import { StudyError } from '../../../packages/study/src/errors.ts';
import { entryLine } from '../../../packages/study/src/hash-chain.ts';
import {
  type Decision,
  type DecisionEntry,
  decide,
  readDecisions,
  standingDecisions,
} from '../../../packages/study/src/quality/decisions.ts';
import { declaredStudy } from '../../support/declared-study.ts';

const declared = parseStudy(JSON.stringify(declaredStudy()));

const LATE: Decision = {
  trial: 'a.csv',
  sha256: 'hash of a.csv',
  decision: 'exclude',
  reason: 'late',
  by: 'ada',
  at: '2026-03-02',
  why: 'the metronome ran before the first raise',
};

function decided(...decisions: readonly Decision[]): DecisionEntry[] {
  const entries: DecisionEntry[] = [];
  for (const one of decisions) entries.push(decide(entries, declared, ['a.csv', 'b.csv'], one));
  return entries;
}

function refusal(act: () => unknown): string {
  try {
    act();
  } catch (error) {
    if (error instanceof StudyError) return `${error.code}: ${error.message}`;
    throw error;
  }
  return 'none';
}

test('decisions are read as they were written, and the last one about a trial holds', () => {
  const again: Decision = { ...LATE, decision: 'open', reason: null, why: 'to be seen by both' };
  const entries = decided(LATE, { ...LATE, trial: 'b.csv', at: null }, again);
  const read = readDecisions(entries.map(entryLine).join(''), declared, 'decisions.jsonl');
  expect(read).toEqual(entries);
  expect(standingDecisions(read).get('a.csv')).toEqual(again);
  expect(standingDecisions(read).get('b.csv')?.at).toBe(null);
});

test('a reason that was not declared is refused by name, and so is one that a rule decides', () => {
  expect(refusal(() => decided({ ...LATE, reason: 'tired' }))).toBe(
    'undeclared-reason: decision.reason: expected late, got "tired", which was not declared',
  );
  expect(refusal(() => decided({ ...LATE, reason: 'few' }))).toBe(
    'undeclared-reason: decision.reason: expected late, got "few", which a rule decides',
  );
});

test('a trial that is not there, a reason for taking one, and none for leaving one out are refused', () => {
  expect(refusal(() => decided({ ...LATE, trial: 'c.csv' }))).toBe(
    'unknown-trial: decision.trial: expected one of a.csv, b.csv, got "c.csv"',
  );
  expect(refusal(() => decided({ ...LATE, decision: 'include' }))).toMatch(/^bad-file: decision.reason: expected null/);
  expect(refusal(() => decided({ ...LATE, reason: null }))).toMatch(
    /^bad-file: decision.reason: expected the declared/,
  );
  expect(refusal(() => decided({ ...LATE, why: '' }))).toMatch(/^bad-file: decision.why: expected a text/);
  expect(refusal(() => decided({ ...LATE, decision: 'drop' as 'open' }))).toMatch(
    /^bad-file: decision.decision: expected one of include, exclude, open, got "drop"/,
  );
});

test('a decision of another study, or one that was changed, is found', () => {
  const text = decided(LATE).map(entryLine).join('');
  const other = parseStudy(JSON.stringify(declaredStudy({ title: 'Another' })));
  expect(refusal(() => readDecisions(text, other, 'd'))).toMatch(
    /^broken-chain: d, entry 1: expected an entry that follows/,
  );
  expect(refusal(() => readDecisions(text.replace('ada', 'eve'), declared, 'd'))).toMatch(/^broken-chain: d, entry 1/);
});
