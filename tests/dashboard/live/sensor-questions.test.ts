import { cannotTell, type SensorAnswerEntry } from '@surae/casebook';
import { GUESS_EVIDENCE } from '@surae/shared';
import { expect, test } from 'vitest';
import type { Finding } from '../../../apps/dashboard/src/live/sensor-findings.ts';
import {
  answerWords,
  openQuestions,
  questionKey,
  sensorQuestions,
  stateOf,
} from '../../../apps/dashboard/src/live/sensor-questions.ts';

function finding(told: Partial<Finding>, guess: Partial<Finding['guess']> = {}): Finding {
  const seen = {
    answer: 'kgf',
    confidence: 0.724,
    asks: true,
    likely: [],
    evidence: { code: 'efforts', figures: { size: 61.23, usual: 950 } },
    ...guess,
  };
  return { subject: 'unit', about: 'force', told: 'N', guess: seen, isUnseen: false, answers: ['kgf', 'N'], ...told };
}

function answered(answer: string, about = 'force'): SensorAnswerEntry {
  const seen = { answer: null, confidence: 0, evidence: 'efforts', figures: {} };
  return { sensor: 'cell', subject: 'unit', about, answer, seen, at: '2026-03-01T09:00:00.000+01:00' };
}

test('under the line it asks; over it, it knows or contradicts; an answer ends both, and so does "cannot tell"', () => {
  const sure = { confidence: 0.97, asks: false };
  expect(stateOf(finding({}), [])).toBe('asked');
  expect(stateOf(finding({}, sure), [])).toBe('contradicted');
  expect(stateOf(finding({ told: 'kgf' }, sure), [])).toBe('found');
  expect(stateOf(finding({ told: null }, sure), [])).toBe('found');
  expect(stateOf(finding({}, { answer: null, confidence: 0 }), [])).toBe('asked');
  expect(stateOf(finding({ isUnseen: true }), [])).toBe('unseen');
  expect(stateOf(finding({}), [answered(cannotTell)])).toBe('answered');
  expect(stateOf(finding({}, sure), [answered('N')])).toBe('answered');
  expect(stateOf(finding({}), [answered('N', 'torque')])).toBe('asked');
});

test('a question says what was seen, how sure the guess is, and offers every answer and none', () => {
  const [asked] = sensorQuestions([finding({})], []);
  expect(asked).toMatchObject({
    question: 'In which unit does the sensor give its force?',
    said: [
      'Efforts reach about 61.2 above rest.',
      'Most likely: kgf (72 %). That is not sure enough to go on without asking.',
    ],
    choices: [
      { code: 'kgf', text: 'kgf' },
      { code: 'N', text: 'N' },
      { code: cannotTell, text: 'cannot tell' },
    ],
  });
});

test('a contradiction is told in one sentence, with what it rests on', () => {
  const [one] = sensorQuestions([finding({}, { confidence: 0.998, asks: false })], []);
  expect(one?.said).toEqual([
    'As the sensor is described the force comes in N; the numbers look like kgf (> 99 %).',
    'Efforts reach about 61.2 above rest.',
    'Which is right?',
  ]);
  const up = (told: string, answer: string) =>
    sensorQuestions(
      [
        finding(
          { subject: 'gravity-axis', about: 'foot left', told },
          { answer, confidence: 0.95, asks: false, evidence: { code: 'gravity-along', figures: { degrees: 4 } } },
        ),
      ],
      [],
    )[0]?.said[0];
  expect(up('z+', 'z-')).toMatch(/^The sensor is upside down: .*\+z pointed up, now it is −z \(95 %\)\.$/);
  expect(up('z+', 'x+')).toMatch(/^In the last set of this leg \+z pointed up/);
});

test('every state has its line', () => {
  const line = (one: Finding, answers: readonly SensorAnswerEntry[] = []) => sensorQuestions([one], answers)[0]?.line;
  expect(line(finding({ told: 'kgf' }, { confidence: 0.95, asks: false }))).toBe(
    'The force comes in kgf (95 %). Efforts reach about 61.2 above rest.',
  );
  expect(line(finding({}), [answered('[lbf_av]')])).toBe('The force comes in lbf: as was answered.');
  expect(line(finding({}), [answered(cannotTell)])).toBe(
    'In which unit the force comes nobody could tell: as was answered.',
  );
  expect(line(finding({ isUnseen: true }))).toBe(
    'In which unit does the sensor give its force? Not seen yet; N is taken.',
  );
  expect(line(finding({ isUnseen: true, told: null }))).toMatch(/Not seen yet\.$/);
});

test('contradictions are asked first, and what is known is not asked', () => {
  const questions = sensorQuestions(
    [
      finding({ about: 'torque' }),
      finding({ told: 'kgf' }, { asks: false }),
      finding({ subject: 'sign', told: 'up' }, { answer: 'down', asks: false }),
    ],
    [],
  );
  expect(openQuestions(questions).map(questionKey)).toEqual(['sign force', 'unit torque']);
});

test('every evidence, place and axis has words', () => {
  const figures = { size: 1, degrees: 2, percent: 3, moves: 4, usual: 5, range: 6 };
  for (const code of Object.keys(GUESS_EVIDENCE)) {
    const [one] = sensorQuestions([finding({}, { evidence: { code, figures } })], []);
    expect(one?.said.join(' ')).not.toMatch(/[{}]/);
  }
  expect(answerWords('placement', 'trunk')).toBe('at the lower back');
  expect(answerWords('gravity-axis', 'x-')).toBe('−x');
  expect(answerWords('unit', 'm/s2')).toBe('m/s²');
});
