import { CONSISTENCY_SENTENCES, PULL_END_CLASS_SENTENCES, PULL_RESULT_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { pullCautions, pullSentence } from '../../../apps/dashboard/src/result/pull-sentences.ts';
import { donePullSet, madePullSet, madePullVisit } from '../../support/made-pull-visit.ts';
import { madeSet } from '../../support/made-visit.ts';

const left = donePullSet('left');
const right = donePullSet('right');
const texts = (...legs: Parameters<typeof madePullVisit>) =>
  pullCautions(madePullVisit(...legs), 120).map(({ text }) => text);

test('both legs are told in one sentence; a leg that stopped for pain shows what was tolerated', () => {
  const force = (set: typeof left) => `${set.report!.score.net!.value.toFixed(0)} N`;
  expect(pullSentence(madePullVisit(left, right))).toBe(`Left reached ${force(left)}; right reached ${force(right)}.`);
  const pained = { ...right, report: { ...right.report!, end: { reasonGiven: 'pain', class: 'tolerance' } as const } };
  expect(pullSentence(madePullVisit(left, pained))).toBe(
    `Left reached ${force(left)}; right stopped for pain; ${force(right)} were tolerated.`,
  );
  expect(pullSentence(madePullVisit(madePullSet('left', [])))).toBe(
    'Left has no push that counts; right was not tested.',
  );
});

test('the end, how far the best two agree, and a rest that was cut short are said', () => {
  const pained = { ...left, report: { ...left.report!, end: { reasonGiven: 'pain', class: 'tolerance' } as const } };
  expect(texts(pained)).toContain(PULL_END_CLASS_SENTENCES.tolerance.text);
  expect(texts(left)).not.toContain(PULL_END_CLASS_SENTENCES.capacity.text);
  expect(texts(left)).toContain(CONSISTENCY_SENTENCES[left.report!.trials!.consistency!].text);
  const hurried = { ...left, trials: left.trials.map((trial, i) => (i === 0 ? trial : { ...trial, restS: 20 + i })) };
  expect(texts(hurried)).toContain('Less than 1:00 of rest before trial 2, 3; the shortest was 0:21.');
  expect(texts(left).some((text) => text.startsWith('Less than'))).toBe(false);
});

test('legs that were not rested or not tested alike are told', () => {
  const hurried = { ...madePullVisit(left, right), pullRestS: 30 };
  expect(pullCautions(hurried, 120)[0]).toEqual({
    side: null,
    text: 'Only 0:30 lay between the two legs; at least 2:00 are usual.',
  });
  const otherRig = { ...right, choice: { ...right.choice, placement: 'inline' as const } };
  expect(texts(left, otherRig)).toContain(PULL_RESULT_WORDS.unlike.text);
  expect(texts(left, right)).not.toContain(PULL_RESULT_WORDS.unlike.text);
});

test('pushes after raises of the same leg are those of a tired calf, and too little rest between is told', () => {
  const later = { ...left, begunAt: '2026-03-01T09:33:40.000+01:00' };
  const visit = { ...madePullVisit(later), sets: [madeSet('left', null)] };
  const said = pullCautions(visit, 120).map(({ text }) => text);
  expect(said).toContain(PULL_RESULT_WORDS['after-raises'].text);
  expect(said).toContain('Only 2:00 lay between the two tests of this leg; at least 5:00 are usual.');
  // raises that came after the pushes cost the pushes nothing
  const first = { ...visit, sets: [madeSet('left', null, { stoppedAt: '2026-03-01T10:30:00.000+01:00' })] };
  expect(pullCautions(first, 120).map(({ text }) => text)).not.toContain(PULL_RESULT_WORDS['after-raises'].text);
});
