import { expect, test } from 'vitest';
import { factsOf, readFacts } from '../../apps/cli/src/fact-table.ts';
import { MemoryIo } from '../support/memory-io.ts';

function facts(text: string) {
  const memory = new MemoryIo();
  memory.files.set('people.csv', text);
  return readFacts('people.csv', memory.io);
}

test('a fact of one visit or leg comes before one that holds for all; an empty cell says nothing', async () => {
  const rows = await facts('person;visit;side;body_mass_kg;note\nP1;;;70;a\nP1;2;;72;\nP1;2;left;;b\nP2;;;80;c\n');
  expect(factsOf({ person: 'P1', visit: '1', side: 'left' }, rows)).toMatchObject({ body_mass_kg: '70', note: 'a' });
  expect(factsOf({ person: 'P1', visit: '2', side: 'right' }, rows)).toMatchObject({ body_mass_kg: '72', note: 'a' });
  expect(factsOf({ person: 'P1', visit: '2', side: 'left' }, rows)).toMatchObject({ body_mass_kg: '72', note: 'b' });
  expect(factsOf({ person: 'P3' }, rows)).toEqual({});
});

test('a person who stands twice, or a table without people, is refused with its place', async () => {
  await expect(facts('person,mass\nP1,70\nP1,71\n')).rejects.toThrow(
    'people.csv, row 3: expected every person once, got P1 twice',
  );
  await expect(facts('name,mass\nP1,70\n')).rejects.toThrow('people.csv, row 1: expected a column "person"');
  await expect(readFacts('nowhere.csv', new MemoryIo().io)).rejects.toThrow('nowhere.csv cannot be read');
});
