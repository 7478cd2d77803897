import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { VisitBook } from '../../apps/dashboard/src/journey/visit-book.ts';
import { answersAbout, answerTo, cannotTell } from '../../packages/casebook/src/sensor-answers.ts';

const seen = { answer: 'kgf', confidence: 0.7, evidence: 'efforts', figures: { size: 60 } };

test('answers are kept with the visit, and of several about one thing the newest counts, for its sensor alone', async () => {
  let minute = 0;
  const clock = { isoNow: () => `2026-03-01T09:${String(minute++).padStart(2, '0')}:00.000+01:00` };
  const book = new VisitBook(new MemoryStore(), clock, 'desk');
  const person = await book.addPerson({
    name: 'Case',
    bodyMassKg: null,
    heelLeverM: null,
    demo: false,
  });
  const visitId = await book.beginVisit(person.id);
  const tell = (sensor: string, subject: 'unit' | 'sign', answer: string) =>
    book.record(visitId, { kind: 'sensor-answer', sensor, subject, about: 'force', answer, seen });
  await tell('cell', 'unit', cannotTell);
  await tell('cell', 'sign', 'down');
  await tell('other', 'unit', 'N');
  await tell('cell', 'unit', 'kgf');
  const visit = await book.visit(visitId);
  expect(visit?.sensorAnswers).toHaveLength(4);
  const answers = answersAbout(visit?.sensorAnswers, 'cell');
  expect(answers.map(({ subject, answer }) => `${subject} ${answer}`).sort()).toEqual(['sign down', 'unit kgf']);
  expect(answerTo(answers, 'unit', 'force')).toMatchObject({
    seen,
    at: expect.stringContaining('2026-03-01') as string,
  });
  expect(answerTo(answers, 'unit', 'torque')).toBeUndefined();
  expect(answersAbout(undefined, 'cell')).toEqual([]);
});
