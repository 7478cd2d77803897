import { expect, test } from 'vitest';
import { InTurn } from '../../packages/storage/src/in-turn.ts';

test('work is done one after the other in the order in which it was asked for, whatever fails', async () => {
  const turn = new InTurn();
  const done: string[] = [];
  const piece = (name: string, ticks: number) => async () => {
    for (let i = 0; i < ticks; i += 1) await Promise.resolve();
    done.push(name);
    if (name === 'fails') throw new Error(name);
    return name;
  };
  const all = [turn.take(piece('slow', 9)), turn.take(piece('fails', 3)), turn.take(piece('quick', 0))];
  expect((await Promise.allSettled(all)).map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
  expect(done).toEqual(['slow', 'fails', 'quick']);
});
