import { readBundle, unzipped } from '@surae/exchange';
import { joinPieces } from '@surae/records';
import { MemoryStore } from '@surae/storage';
import { beforeAll, expect, test } from 'vitest';
import { type ExportChoice, firstChoice } from '../../../apps/dashboard/src/export/export-choice.ts';
import { chosenStudy, makeExport } from '../../../apps/dashboard/src/export/make-export.ts';
import type { ExportWork } from '../../../apps/dashboard/src/export/messages.ts';
import { tellVisits } from '../../support/told-visit.ts';

const store = new MemoryStore();
let visits: readonly string[] = [];

async function work(choice: ExportChoice): Promise<ExportWork> {
  const told = { software: 'surae 0.1.0', day: '2026-11-29', secret: 'a secret of this test' };
  return { documents: await store.documents({}), choice, ...told };
}

beforeAll(async () => {
  visits = await tellVisits(store, { name: 'Ottilie Marsh', bodyMassKg: 60, heelLeverM: 0.15 }, [
    { day: '2026-03-01', left: { count: 20 }, right: { count: 15 } },
    { day: '2026-03-15', left: { count: 21 }, right: { count: 18 } },
  ]);
});

test('the file holds what was chosen, without names as it was asked for, and can be read again', async () => {
  const pieces: Uint8Array[] = [];
  const made = await makeExport(await work({ ...firstChoice, letters: true }), (id) => store.bytes(id), {
    progress: () => undefined,
    piece: (bytes) => pieces.push(bytes),
  });
  expect(made.name).toBe('surae-study-20261129-without-names.zip');
  expect(made.out).toMatchObject({ names: 1 });
  const files = unzipped(joinPieces(pieces), made.name);
  expect(files).toHaveLength(made.parts);
  const read = readBundle(files);
  const visitsTable = read.find(({ name }) => name === 'tables/visits.csv');
  expect(visitsTable?.is === 'table' && visitsTable.table.rows).toHaveLength(2);
  expect(new TextDecoder().decode(Buffer.concat(files.map(({ bytes }) => bytes)))).not.toContain('Ottilie');
});

test('what is shown before is counted from the documents, without reading what was recorded', async () => {
  const one = { ...firstChoice, personId: 'p', visitId: visits[1] };
  const study = await chosenStudy(await store.documents({}), one, 'surae 0.1.0', null);
  expect([study.people.length, study.visits.length, study.trials.length]).toEqual([1, 1, 2]);
});
