import type { AssessedRepetition, CriterionFinding } from '@surae/analysis';
import { CRITERION_IDS, type CriterionId } from '@surae/shared';
import { expect, test } from 'vitest';
import { unseenHere, unseenWords, verdictWords } from '../../../apps/dashboard/src/result/verdict-words.ts';
import { handMadeOutcome } from '../../support/hand-made-outcome.ts';

const model = handMadeOutcome([90, 90, 90]).report.repetitions[1];

const met: CriterionFinding = {
  result: 'pass',
  seen: 'measured',
  borderline: false,
  probability: 1,
  evidence: null,
  reason: null,
};
const fault: CriterionFinding = { ...met, result: 'fail', probability: 0 };
const near: CriterionFinding = { ...met, borderline: true };
const unseen: CriterionFinding = { ...met, result: 'not_observed', seen: 'not-observed', reason: 'placement' };

function repetition(
  valid: AssessedRepetition['valid'],
  findings: Partial<Record<CriterionId, CriterionFinding>>,
  afterEnd = false,
): AssessedRepetition {
  const all = Object.fromEntries(CRITERION_IDS.map((id) => [id, met])) as AssessedRepetition['criteria'];
  return { ...model, valid, afterEnd, criteria: { ...all, ...findings } };
}

test('a repetition that met every rule needs one word', () => {
  expect(verdictWords(repetition('yes', {}))).toBe('met');
  expect(verdictWords(repetition('yes', { knee: unseen }))).toBe('met');
});

test('faults are named in the fixed order of the criteria, whatever order they were found in', () => {
  expect(verdictWords(repetition('no', { bounce: fault, height: fault, lean: fault }))).toBe(
    'not met: not high enough; leaned; bounced',
  );
});

test('what lies close to a limit is named beside the verdict', () => {
  expect(verdictWords(repetition('yes', { height: near, tempo: near }))).toBe('met: height, tempo close to the limit');
});

test('a fault that lies close to the limit is told once, and one sign of several asks for a second look', () => {
  expect(verdictWords(repetition('no', { height: { ...fault, borderline: true } }))).toBe('not met: not high enough');
  const sign: CriterionFinding = { ...unseen, borderline: true, reason: 'one-sign-of-several' };
  expect(verdictWords(repetition('yes', { knee: sign }))).toBe(
    'met: the force alone shows one sign of several: look at the knee',
  );
});

test('where nobody can tell, a fault is only perhaps one, and a gap is just the reason', () => {
  expect(verdictWords(repetition('cannot_tell', { height: fault }))).toBe('cannot tell: perhaps not high enough');
  expect(verdictWords(repetition('cannot_tell', { gap: fault }))).toBe('cannot tell: missing samples');
  expect(verdictWords(repetition('cannot_tell', {}))).toBe('cannot tell: each rule just met, together in doubt');
});

test('what comes after the end says so, met or not', () => {
  expect(verdictWords(repetition('yes', {}, true))).toBe('met: after the end of the test');
  expect(verdictWords(repetition('no', { rest: fault }, true))).toBe(
    'not met: rested at the bottom; after the end of the test',
  );
});

test('what no repetition shows is named once for the set, the rest where it is missing', () => {
  const first = repetition('yes', { knee: unseen, tempo: unseen });
  const second = repetition('yes', { knee: unseen });
  expect(unseenWords([first, second])).toBe(
    'Not observed on any repetition: knee. What was not observed is not counted as met.',
  );
  expect(unseenHere(first, [first, second])).toBe('not observed: tempo');
  expect(unseenHere(second, [first, second])).toBeUndefined();
});

test('a stored report is read by the criteria it was judged on, not by those that came later', () => {
  const now = repetition('no', { height: fault, knee: unseen }).criteria;
  const earlier = Object.fromEntries(Object.entries(now).filter(([id]) => id !== 'lean'));
  const old = { ...repetition('no', {}), criteria: earlier as AssessedRepetition['criteria'] };
  expect(verdictWords(old)).toBe('not met: not high enough');
  expect(unseenWords([old])).toBe('Not observed on any repetition: knee. What was not observed is not counted as met.');
  expect(unseenHere(old, [old])).toBeUndefined();
});

test('nothing is said of an empty set, or of one in which everything was observed', () => {
  expect(unseenWords([])).toBeUndefined();
  expect(unseenWords([repetition('yes', {})])).toBeUndefined();
});

test('what the protocol does not ask for is no lack of the sensor', () => {
  const notAsked: CriterionFinding = { ...unseen, reason: 'not-asked' };
  const set = [
    repetition('yes', { tempo: notAsked, knee: unseen }),
    repetition('yes', { tempo: notAsked, knee: unseen }),
  ];
  expect(unseenWords(set)).toContain('knee');
  expect(unseenWords(set)).not.toContain('tempo');
  expect(unseenHere(repetition('yes', { tempo: notAsked }), [...set, repetition('yes', {})])).toBeUndefined();
});

test('of a count by hand nothing was observed, and it is said once', () => {
  const nothing = Object.fromEntries(CRITERION_IDS.map((id) => [id, unseen]));
  const one = repetition('cannot_tell', nothing);
  const marked = repetition('no', { ...nothing, knee: { ...fault, seen: 'tester' } });
  expect(verdictWords(one)).toBe('cannot tell: no rule was observed');
  expect(unseenHere(one, [one, marked])).toBeUndefined();
  expect(verdictWords(marked)).toBe('not met: knee helped');
});
