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
  expect(looked.pictures[0][1].values.length).toBe(400);
  await first.take({ kind: 'answer', answers: { rate: '50' } });
  await first.take({ kind: 'read', file, name: 'ours', choice: { side: 'left' } });
  const read = said.at(-1)!;
  if (read.kind !== 'read') throw new Error(read.kind);
  expect(read.recording.groups[0].channels[0]).toMatchObject({ quantity: 'heel-height', side: 'left' });
  expect(read.recipe.name).toBe('ours');
  const { desk: second, said: again } = desk();
  await second.take({ kind: 'read', file, name: 'ours', recipe: read.recipe, choice: {} });
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

test('a recipe out of a file is checked in every part, and reads a table that it fits', async () => {
  const { desk: first, said } = desk();
  const table = fileOf('two-plates.csv');
  await first.take({ kind: 'look', file: table, answers: {} });
  await first.take({ kind: 'answer', answers: { 'side:Fz [N] #2': 'left', 'side:Fz [N] #3': 'right' } });
  await first.take({ kind: 'read', file: table, name: 'plates', choice: {} });
  const made = said.at(-1)!;
  if (made.kind !== 'read') throw new Error(JSON.stringify(made));
  const text = JSON.stringify(made.recipe);
  const load = async (content: BlobPart, name = 'r.json'): Promise<ImportAnswer> => {
    const { desk: one, said: told } = desk();
    await one.take({ kind: 'recipe', file: new File([content], name) });
    return told.at(-1)!;
  };
  const refusal = async (content: BlobPart): Promise<string> => {
    const told = await load(content);
    return told.kind === 'refused' ? `${told.refusal.code}: ${told.refusal.message}` : told.kind;
  };
  expect(await load(`\u{feff}${text}\n`)).toEqual({ kind: 'recipe', recipe: made.recipe });
  expect(await refusal('once upon a time')).toMatch(/^invalid-document: r\.json: expected a recipe as JSON/);
  expect(await refusal(text.slice(0, -9))).toMatch(/^invalid-document: r\.json: expected a recipe as JSON/);
  expect(await refusal('{"kind":"surae-recording"}')).toBe(
    'invalid-document: r.json, kind: expected "surae-recipe", got "surae-recording"',
  );
  expect(await refusal(text.replace('"version":1', '"version":2'))).toBe(
    'newer-version: r.json, version: expected version 1, got 2',
  );
  expect(await refusal(text.replace('"delimiter":","', '"delimiter":";"'))).toMatch(/^hash-mismatch: r\.json, fits/);
  expect(await refusal(new Uint8Array([0x7b, 0xff, 0x7d]))).toMatch(/^not-utf-8: r\.json/);
  expect(await refusal(new Uint8Array((16 << 20) + 1))).toMatch(/at most 16777216 bytes, got 16777217 bytes/);
  // another table is refused with the line and the column in which it differs
  await first.take({
    kind: 'read',
    file: new File([(await table.text()).replace('Fz [N]', 'Fx [N]')], 'other.csv'),
    name: 'plates',
    recipe: made.recipe,
    choice: {},
  });
  expect(said.at(-1)).toMatchObject({
    kind: 'refused',
    refusal: { code: 'unlike-recipe', message: expect.stringMatching(/column name in line \d+, column 2/) as string },
  });
});

test('what no recipe can tell is asked before a table is read by it', async () => {
  const { desk: one, said } = desk();
  const file = fileOf('sample-numbers.csv');
  await one.take({ kind: 'look', file, answers: {} });
  await one.take({ kind: 'answer', answers: { rate: '50' } });
  await one.take({ kind: 'read', file, name: 'counted', choice: { side: 'left' } });
  const made = said.at(-1)!;
  if (made.kind !== 'read') throw new Error(made.kind);
  const recipe = { ...made.recipe, time: { ...made.recipe.time, rateHz: null } };
  await one.take({ kind: 'read', file, name: 'counted', recipe, choice: {} });
  expect(said.at(-1)).toMatchObject({ kind: 'choose', choices: { rate: true, parts: [] } });
  await one.take({ kind: 'read', file, name: 'counted', recipe, choice: { rateHz: 50 } });
  expect(said.at(-1)).toMatchObject({ kind: 'read', choice: { rateHz: 50 } });
});
