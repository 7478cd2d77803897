import { expect, test } from 'vitest';
import { firstChoice } from '../../../apps/dashboard/src/export/export-choice.ts';
import { ExportDesk } from '../../../apps/dashboard/src/export/export-desk.ts';
import type { ExportAnswer } from '../../../apps/dashboard/src/export/messages.ts';
import { recordedClinic } from '../../support/recorded-clinic.ts';

test('bytes are asked for one after the other, and each answer finds its question', async () => {
  const store = await recordedClinic(2);
  const told: ExportAnswer[] = [];
  const desk: ExportDesk = new ExportDesk((answer) => {
    told.push(answer);
    if (answer.kind !== 'read') return;
    void store.bytes(answer.bytesId).then((bytes) => desk.take({ kind: 'bytes', question: answer.question, bytes }));
  });
  const choice = { ...firstChoice, samples: true };
  const work = { documents: await store.documents({}), choice, software: 's 1', day: '2026-11-29', secret: 'a secret' };
  await desk.take({ kind: 'make', work });
  const kinds = told.map(({ kind }) => kind);
  expect(kinds).toEqual(['read', 'read', 'read', 'progress', 'read', 'progress', 'piece', 'made']);
  const questions = told.flatMap((one) => (one.kind === 'read' ? [one.question] : []));
  expect(questions).toEqual([1, 2, 3, 4]);
});

test('what cannot be made is told with its reason', async () => {
  const told: ExportAnswer[] = [];
  const desk = new ExportDesk((answer) => told.push(answer));
  const work = {
    documents: [],
    choice: { ...firstChoice, tables: [] },
    software: 's 1',
    day: '2026-11-29',
    secret: 'x',
  };
  await desk.take({ kind: 'make', work });
  expect(told).toEqual([{ kind: 'broken', reason: 'expected some of csv, json-lines, parquet, each once, got none' }]);
});
