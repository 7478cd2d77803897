import type { Issue, IssueCode } from '@surae/analysis';
import { expect, test } from 'vitest';
import { type PullGateSubject, pullGate } from '../../../packages/analysis/src/assess/pull-gate.ts';

const fine: PullGateSubject = { found: 4, accepted: 3, leastTrials: 3, issues: [], sideKnown: true };
const gate = (change: Partial<PullGateSubject>) => pullGate({ ...fine, ...change });
const issue = (code: IssueCode, severity: Issue['severity'] = 'warning'): Issue => ({
  code,
  severity,
  fromS: 0,
  toS: 1,
});

test('enough efforts, a sound signal and a known side may be interpreted', () => {
  expect(gate({})).toEqual({ usable: 'yes', reasons: [] });
  expect(gate({ accepted: 1, leastTrials: null }).usable).toBe('yes');
});

test.each([
  ['no-effort', { found: 0, accepted: 0 }],
  ['no-accepted-effort', { accepted: 0 }],
  ['too-few-accepted', { accepted: 2 }],
  ['side-unknown', { sideKnown: false }],
  ['doubtful-signal', { issues: [issue('saturated')] }],
  ['doubtful-signal', { issues: [issue('polarity-unclear')] }],
  ['doubtful-signal', { issues: [issue('implausible-size')] }],
  ['doubtful-signal', { issues: [issue('low-rate')] }],
] as const)('%s', (reason, change) => {
  expect(gate(change)).toEqual({ usable: 'cannot_tell', reasons: [reason] });
});

test('a note holds nothing back', () => {
  expect(gate({ issues: [issue('coarse-rate', 'note'), issue('tare-left-on')] }).usable).toBe('yes');
});
