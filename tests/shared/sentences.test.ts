import type {
  AcceptCode,
  AnotherReason,
  AssessedRepetition,
  DoubtReason,
  Effort,
  GateReason,
  InputErrorCode,
  IsometricQuality,
  IssueCode,
  NoEffort,
  NoRateReason,
  NotObservedReason,
  PullGateReason,
  PullTrials,
  PullWithheldReason,
  TestEnd,
  Verdict,
  WithheldReason,
} from '@surae/analysis';
import type { RecordErrorCode } from '@surae/records';
import * as shared from '@surae/shared';
import { expect, test } from 'vitest';
import { JUDGING_WORDS } from '../support/judging-words.ts';

type Worded<Code extends string> = Readonly<Record<Code, shared.Sentence>>;

// a code without words, or words without a code, does not compile
const families = {
  issue: shared.ISSUE_SENTENCES satisfies Worded<IssueCode>,
  doubt: shared.DOUBT_SENTENCES satisfies Worded<DoubtReason>,
  criterion: shared.CRITERION_SENTENCES satisfies Worded<keyof AssessedRepetition['criteria']>,
  name: shared.CRITERION_NAMES satisfies Worded<shared.CriterionId>,
  notObserved: shared.NOT_OBSERVED_SENTENCES satisfies Worded<NotObservedReason>,
  verdict: shared.VERDICT_SENTENCES satisfies Worded<Verdict>,
  endRule: shared.END_RULE_SENTENCES satisfies Worded<TestEnd['rule']>,
  endClass: shared.END_CLASS_SENTENCES satisfies Worded<TestEnd['class']>,
  endReason: shared.END_REASON_SENTENCES satisfies Worded<shared.EndReason>,
  faultKind: shared.FAULT_KIND_SENTENCES satisfies Worded<shared.FaultKind>,
  effort: shared.EFFORT_SENTENCES satisfies Worded<Effort['reason']>,
  gate: shared.GATE_SENTENCES satisfies Worded<GateReason>,
  withheld: shared.WITHHELD_SENTENCES satisfies Worded<WithheldReason>,
  reference: shared.REFERENCE_SENTENCES satisfies Worded<shared.ReferenceRule>,
  input: shared.INPUT_SENTENCES satisfies Worded<InputErrorCode>,
  refusal: shared.REFUSAL_SENTENCES satisfies Worded<RecordErrorCode>,
  accept: shared.ACCEPT_SENTENCES satisfies Worded<AcceptCode>,
  acceptName: shared.ACCEPT_NAMES satisfies Worded<AcceptCode>,
  noEffort: shared.NO_EFFORT_SENTENCES satisfies Worded<NoEffort['reason']>,
  noRate: shared.NO_RATE_SENTENCES satisfies Worded<NoRateReason>,
  start: shared.START_NAMES satisfies Worded<Verdict>,
  another: shared.ANOTHER_SENTENCES satisfies Worded<AnotherReason>,
  consistency: shared.CONSISTENCY_SENTENCES satisfies Worded<NonNullable<PullTrials['consistency']>>,
  pullScore: shared.PULL_SCORE_SENTENCES satisfies Worded<shared.PullScoreRule>,
  pullEffort: shared.PULL_EFFORT_SENTENCES satisfies Worded<IsometricQuality['reasons'][number]>,
  pullQuality: shared.PULL_QUALITY_SENTENCES satisfies Worded<Verdict>,
  pullEndClass: shared.PULL_END_CLASS_SENTENCES satisfies Worded<TestEnd['class']>,
  pullGate: shared.PULL_GATE_SENTENCES satisfies Worded<PullGateReason>,
  pullWithheld: shared.PULL_WITHHELD_SENTENCES satisfies Worded<PullWithheldReason>,
  scope: shared.SCOPE_SENTENCES satisfies Worded<string>,
};

const texts = Object.entries(families).flatMap(([family, words]) =>
  Object.entries(words as Worded<string>).map(([code, sentence]) => [`${family}.${code}`, sentence.text] as const),
);

test.each(texts)('%s uses none of the words that judge a person', (_, text) => {
  for (const word of JUDGING_WORDS) expect(text).not.toMatch(word);
});

test('the words that judge are indeed found where they stand', () => {
  const worst = ['28 % deficit', 'weak', 'fails', 'the bad leg', 'injured', 'significant improvement', 'OK', 'safe'];
  for (const text of worst)
    expect(
      JUDGING_WORDS.some((word) => word.test(text)),
      text,
    ).toBe(true);
});

test('each code has its own text: no two of a family say the same', () => {
  for (const [family, words] of Object.entries(families)) {
    const said = Object.values(words as Worded<string>).map((sentence) => sentence.text);
    expect(new Set(said).size, family).toBe(said.length);
    expect(
      said.every((text) => text.trim().length > 0 && text === text.trim()),
      family,
    ).toBe(true);
  }
});

test('the reasons stand in the order in which they are shown', () => {
  expect(Object.keys(shared.CRITERION_SENTENCES)).toEqual([...shared.CRITERION_IDS]);
});

test('the scope line says what a report is not', () => {
  expect(shared.SCOPE_SENTENCES.scope.text).toMatch(/Not a diagnosis/);
});

test('protocols and safety list keep to the same words', () => {
  const said = [
    ...[...shared.PROTOCOLS, ...shared.PULL_PROTOCOLS].flatMap((protocol) => [protocol.title, ...protocol.remarks]),
    ...shared.SAFETY_LIST.map((entry) => entry.next),
    ...shared.REFERENCE_TABLES.map((entry) => entry.remark),
    ...shared.OBSERVABILITY.map((entry) => entry.note),
    ...[...shared.REPETITION_COLUMNS, ...shared.SET_COLUMNS].map((column) => column.description),
  ];
  for (const text of said) for (const word of JUDGING_WORDS) expect(text, text).not.toMatch(word);
});
