import type { AssessedRepetition, CriterionFinding } from '@surae/analysis';
import type { CriterionId } from '@surae/shared';
import { expect, test } from 'vitest';
import { PLACEMENT_WORDS, verdictWords, within } from '../../apps/cli/src/report-words.ts';
import { handMadeOutcome } from '../support/hand-made-outcome.ts';

type Findings = Readonly<Partial<Record<CriterionId, Partial<CriterionFinding>>>>;

const [plainOne] = handMadeOutcome([100, 100]).report.repetitions;

function repetition(changes: Partial<AssessedRepetition>, findings: Findings = {}): AssessedRepetition {
  const criteria = Object.fromEntries(
    Object.entries(plainOne.criteria).map(([id, finding]) => [
      id,
      { ...finding, result: 'pass', borderline: false, ...findings[id as CriterionId] },
    ]),
  ) as AssessedRepetition['criteria'];
  return { ...plainOne, criteria, ...changes };
}

test('within a sentence a sentence loses its capital and its full stop', () => {
  expect([within('Not high enough.'), within('Off the beat'), within('')]).toEqual([
    'not high enough',
    'off the beat',
    '',
  ]);
});

test('a repetition that meets the rules says yes, and what was close', () => {
  expect(verdictWords(repetition({ valid: 'yes' }))).toBe('yes');
  const close = { height: { borderline: true }, tempo: { borderline: true } };
  expect(verdictWords(repetition({ valid: 'yes' }, close))).toBe('yes, height, tempo close to the limit');
  expect(verdictWords(repetition({ valid: 'yes', afterEnd: true }))).toBe('yes; after the end of the test');
});

test('faults stand in the fixed order of the criteria, whatever the order of the record', () => {
  const both = { tempo: { result: 'fail' }, height: { result: 'fail' } } as const;
  expect(verdictWords(repetition({ valid: 'no' }, both))).toBe('no: not high enough; off the beat');
  expect(verdictWords(repetition({ valid: 'no' }))).toBe('no: each rule just met, together not likely');
});

test('where nobody can tell a fault is a perhaps and a gap is itself', () => {
  const doubt = { height: { result: 'fail', borderline: true }, return: { borderline: true } } as const;
  expect(verdictWords(repetition({ valid: 'cannot_tell' }, doubt))).toBe(
    'cannot tell: perhaps not high enough; heel back down close to the limit',
  );
  expect(verdictWords(repetition({ valid: 'cannot_tell' }, { gap: { result: 'fail' } }))).toBe('cannot tell: data gap');
  expect(verdictWords(repetition({ valid: 'cannot_tell' }))).toBe('cannot tell: each rule just met, together in doubt');
});

test('each placement has words of its own', () => {
  expect(new Set(Object.values(PLACEMENT_WORDS)).size).toBe(5);
});
