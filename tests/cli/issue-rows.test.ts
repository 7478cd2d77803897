import { ISSUE_SENTENCES } from '@surae/shared';
import { type IssueRow, issueRows } from '@surae/study';
import { expect, test } from 'vitest';
import { issuePlace } from '../../apps/cli/src/issue-rows.ts';
import { handMadeOutcome } from '../support/hand-made-outcome.ts';

const outcome = handMadeOutcome([100]);

test('an issue of the trace keeps its place and figures and gets its sentence', () => {
  const [gap] = issueRows(outcome);
  expect(gap).toEqual({
    code: 'gap',
    severity: 'warning',
    from_s: 3.2,
    to_s: 3.45,
    details: { count: 1 },
    sentence: ISSUE_SENTENCES.gap.text,
  });
});

test('columns that were not used are notes without a place, each with its reason', () => {
  const unusedColumns = [
    { column: 'acc [g]', reason: 'no-axis' },
    { column: 'mood', reason: 'unknown-name' },
  ] as const;
  const [, axis, name] = issueRows({ ...outcome, recording: { unusedColumns, deviceNotes: [] } });
  expect(axis).toMatchObject({ code: 'unused-column', severity: 'note', from_s: null, to_s: null, details: {} });
  expect(axis.sentence).toBe('The column "acc [g]" was not used: its name lacks the axis.');
  expect(name.sentence).toBe('The column "mood" was not used: its name is none of ours.');
});

test('a recording that was in the list before names the first of the two', () => {
  const last = issueRows({ ...outcome, sameAs: 'left.csv' }).at(-1);
  expect(last).toMatchObject({ code: 'same-bytes', severity: 'note' });
  expect(last?.sentence).toBe('This recording was in the list before: left.csv is the same.');
});

test('a place is a span, an instant when it is shorter than 50 ms, and nothing where there is none', () => {
  const at = (from_s: number | null, to_s: number | null): string =>
    issuePlace({ code: 'x', severity: 'note', from_s, to_s, details: {}, sentence: '' } satisfies IssueRow);
  expect([at(1, 2.25), at(1, 1.04), at(-1, 1), at(null, null)]).toEqual([
    '1.0 to 2.3 s: ',
    'at 1.0 s: ',
    '−1.0 to 1.0 s: ',
    '',
  ]);
});
