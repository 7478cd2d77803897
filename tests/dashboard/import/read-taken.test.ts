import type { Recipe, Recording } from '@surae/records';
import { expect, test } from 'vitest';
import type { ImportAnswer, ImportAsk } from '../../../apps/dashboard/src/import/messages.ts';
import { readTaken } from '../../../apps/dashboard/src/import/read-taken.ts';

const recipe = { name: 'plates' } as unknown as Recipe;
const recording = { groups: [] } as unknown as Recording;
const file = new File(['x'], 'x.csv');
const mapping = { name: 'x.csv', recipe, choice: { side: 'left' } } as const;

function answering(answers: readonly object[]): { worker: () => Worker; asked: ImportAsk[]; ended: () => number } {
  const asked: ImportAsk[] = [];
  let ended = 0;
  const worker = {
    onmessage: null as ((event: { data: ImportAnswer }) => void) | null,
    postMessage(ask: ImportAsk): void {
      asked.push(ask);
      for (const data of answers) this.onmessage?.({ data: data as ImportAnswer });
    },
    terminate: () => (ended += 1),
  };
  return { worker: () => worker as unknown as Worker, asked, ended: () => ended };
}

test('a file that was taken in is read as it was read then, and the worker ends', async () => {
  const { worker, asked, ended } = answering([{ kind: 'progress' }, { kind: 'read', recording }]);
  expect(await readTaken(file, mapping, worker)).toBe(recording);
  expect(asked).toEqual([{ kind: 'read', file, name: 'x.csv', recipe, choice: { side: 'left' } }]);
  expect(ended()).toBe(1);
});

test('what cannot be read says why', async () => {
  const why = async (answer: object): Promise<unknown> =>
    readTaken(file, mapping, answering([answer]).worker).catch((error: unknown) => (error as Error).message);
  expect(await why({ kind: 'refused', refusal: { code: 'no-table', message: 'no table' } })).toBe('no table');
  expect(await why({ kind: 'broken', message: 'fault' })).toBe('fault');
  expect(await why({ kind: 'choose' })).toMatch(/was not kept/);
});
