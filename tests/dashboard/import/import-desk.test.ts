import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { ImportDesk } from '../../../apps/dashboard/src/import/import-desk.ts';
import type { ImportAnswer } from '../../../apps/dashboard/src/import/messages.ts';
import { fixturePath } from '../../support/fixture.ts';

const fileOf = (name: string): File => new File([new Uint8Array(readFileSync(fixturePath(`messy/${name}`)))], name);

function desk(): { readonly desk: ImportDesk; readonly said: ImportAnswer[] } {
  const said: ImportAnswer[] = [];
  return { desk: new ImportDesk((answer) => said.push(answer)), said };
}

test('a file is looked at, asked about and read, and the recipe reads it again', async () => {
  const { desk: first, said } = desk();
  const file = fileOf('sample-numbers.csv');
  await first.take({ kind: 'look', file, answers: {} });
  const looked = said.at(-1)!;
  if (looked.kind !== 'looked') throw new Error(looked.kind);
  expect(looked.proposal.questions.map(({ id }) => id)).toEqual(['rate']);
  expect(looked.findings.map(({ code }) => code)).toContain('no-rate');
  expect(looked.pictures[0]![1].values.length).toBe(400);
  await first.take({ kind: 'answer', answers: { rate: '50' } });
  await first.take({ kind: 'read', file, name: 'ours', side: 'left' });
  const read = said.at(-1)!;
  if (read.kind !== 'read') throw new Error(read.kind);
  expect(read.recording.groups[0]!.channels[0]).toMatchObject({ quantity: 'heel-height', side: 'left' });
  expect(read.recipe.name).toBe('ours');
  const { desk: second, said: again } = desk();
  await second.take({ kind: 'read', file, name: 'ours', recipe: read.recipe });
  expect(again.at(-1)).toMatchObject({ kind: 'read', recording: { source: read.recording.source } });
});

test('an answer about the form of the text reads the file anew', async () => {
  const { desk: one, said } = desk();
  const file = fileOf('comma-either.csv');
  await one.take({ kind: 'look', file, answers: {} });
  await one.take({ kind: 'answer', answers: { decimal: '.' } });
  const looked = said.at(-1)!;
  if (looked.kind !== 'looked') throw new Error(looked.kind);
  expect(looked.proposal.firstRows[0]).toEqual([0, 1100]);
});

test('what is refused is told with its place, and a long file tells how far it has come', async () => {
  const { desk: one, said } = desk();
  await one.take({ kind: 'look', file: new File(['once upon a time'], 'tale.txt'), answers: {} });
  expect(said).toEqual([
    { kind: 'refused', refusal: { code: 'no-table', message: expect.stringContaining('tale.txt: ') as string } },
  ]);
  const rows = Array.from({ length: 120_000 }, (_, i) => `${(i / 100).toFixed(2)},${(i % 60).toFixed(4)}`).join('\n');
  await one.take({ kind: 'look', file: new File([`time [s],heel [mm]\n${rows}\n`], 'long.csv'), answers: {} });
  const told = said.filter((answer) => answer.kind === 'progress');
  expect(told.length).toBeGreaterThan(0);
  expect(said.at(-1)!.kind).toBe('looked');
});
