import { expect, test } from 'vitest';
import { agreementItems, countWords, lanesOf } from '../../../apps/dashboard/src/study/agreement-items.ts';
import { countAll, deskInMemory, raisesOf } from '../../support/recount-raters.ts';

async function agreed() {
  const { desk } = deskInMemory();
  await countAll(desk, 'ada', 2);
  await countAll(desk, 'ben', 0);
  for (const rater of ['ada', 'ben']) await desk.begin(rater).lock(rater, null);
  await desk.open(['ada', 'ben'], 'cyd', null, 'done');
  return desk.agreement()!;
}

test('every recording stands with the counts of all, and the most apart first', async () => {
  const agreement = await agreed();
  const { columns, rows } = agreementItems(agreement);
  expect(columns).toEqual(['ada', 'ada, second time', 'ben', 'ben, second time', 'the machine']);
  expect(rows).toHaveLength(6);
  for (const { trial, counts, apart } of rows) {
    const count = raisesOf(trial);
    const [ada, second, ben, , machine] = counts;
    expect([ada, ben, machine, apart]).toEqual([count - 2, count, count - 1, 2]);
    expect([count, 'shown-once']).toContain(second);
  }
  // those that ada saw twice are disputed within the rater too
  const disputed = rows.map((row) => row.disputed);
  expect(disputed).toEqual([...disputed].sort((a, b) => b - a));
  expect(new Set(disputed).size).toBeGreaterThan(1);
});

test('the marks of all stand on lines of their own, those of the machine last', async () => {
  const lanes = lanesOf(await agreed(), 't0.csv');
  const told = lanes.map(({ name, marks }) => [name, marks.length, marks.at(-1)?.atS, marks.at(-1)?.verdict]);
  expect(told[0]).toEqual(['ada', 2, 3, 'yes']);
  expect(told.at(-1)).toEqual(['the machine', 4, 7, 'no']);
});

test('a recording that was shown once is not one that was not counted', () => {
  expect([countWords(12), countWords(null), countWords('shown-once')]).toEqual(['12', 'not counted', 'shown once']);
});
