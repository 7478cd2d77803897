import { ACCEPT_SENTENCES, NO_EFFORT_SENTENCES, PULL_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { effortVerdict, forceWords, trialVerdicts } from '../../../apps/dashboard/src/result/trial-verdicts.ts';
import { donePullSet } from '../../support/made-pull-visit.ts';

const set = donePullSet('left');
const report = set.report!;
const [effort] = report.efforts;

test('newtons are whole, newton metres have a tenth', () => {
  expect([forceWords(812.6, 'N'), forceWords(111.26, 'N.m')]).toEqual(['813 N', '111.3 N.m']);
});

test('a trial is told by the effort that lies in it', () => {
  set.trials.forEach((trial, i) => {
    const said = trialVerdicts(report, trial);
    expect(said.map(({ index }) => index)).toEqual([i + 1]);
    expect(said[0].force).toBe(forceWords(report.efforts[i].bestMean!.net.value, 'N'));
  });
});

test('an effort that does not count has every reason in words', () => {
  const said = effortVerdict({ ...effort, accepted: 'no', reasons: ['countermovement', 'short-plateau'] }, 'N');
  expect(said.headline).toBe(PULL_WORDS['accepted-no'].text);
  expect(said.reasons).toEqual([ACCEPT_SENTENCES.countermovement.text, ACCEPT_SENTENCES['short-plateau'].text]);
});

test('what nobody can tell is said as that, with what is not clear', () => {
  const said = effortVerdict({ ...effort, accepted: 'cannot_tell', reasons: [], undecided: ['short-plateau'] }, 'N');
  expect(said.headline).toBe(PULL_WORDS['accepted-cannot_tell'].text);
  expect(said.reasons).toEqual(['Not clear: held long enough.']);
});

test('a trial without a push says so, with what looked like one', () => {
  const others = [{ fromS: 3, toS: 4, reason: 'cut-off' as const }];
  const none = { ...report, efforts: [], others };
  expect(trialVerdicts(none, set.trials[0])).toEqual([
    {
      index: null,
      accepted: 'no',
      force: null,
      headline: PULL_WORDS['no-effort'].text,
      reasons: [NO_EFFORT_SENTENCES['cut-off'].text],
    },
  ]);
  expect(trialVerdicts(none, set.trials[1])[0].reasons).toEqual([]);
});
