import type { BegunPlan } from '@surae/casebook';
import { expect, test } from 'vitest';
import { BegunKeeper, begunAfterMs, type Later } from '../../../apps/dashboard/src/plan/begun-keeper.ts';

const plan = (typed: string): BegunPlan => ({ items: [], typed });

function made({ fails = false } = {}) {
  const asked: { run: () => void; ms: number; isOff: boolean }[] = [];
  const later: Later = (run, ms) => {
    const one = { run, ms, isOff: false };
    asked.push(one);
    return () => (one.isOff = true);
  };
  const written: string[] = [];
  const open: (() => void)[] = [];
  let refusals = 0;
  const keeper = new BegunKeeper(
    async ({ typed }) => {
      await new Promise<void>((resolve) => open.push(resolve));
      if (fails) throw new Error('full');
      written.push(typed);
    },
    () => refusals++,
    later,
  );
  return { keeper, asked, written, open, refusals: () => refusals };
}

/** Lets everything go on that waits for nothing but its turn. */
const turn = async (): Promise<void> => {
  for (let at = 0; at < 20; at++) await Promise.resolve();
};

test('letters that follow one another are written once, half a second after the first', async () => {
  const { keeper, asked, written, open } = made();
  for (const typed of ['a', 'ab', 'abc']) keeper.typed(plan(typed));
  expect(asked.map(({ ms }) => ms)).toEqual([begunAfterMs]);
  asked[0].run();
  await turn();
  open[0]();
  await keeper.flush();
  expect(written).toEqual(['abc']);
});

test('what comes while something is written is written after it', async () => {
  const { keeper, written, open } = made();
  keeper.pressed(plan('first'));
  await turn();
  keeper.pressed(plan('second'));
  const done = keeper.flush();
  await turn();
  expect(open).toHaveLength(1);
  open[0]();
  await turn();
  open[1]();
  await done;
  expect(written).toEqual(['first', 'second']);
});

test('a flush calls the timer off and writes at once; without a change it writes nothing', async () => {
  const { keeper, asked, open } = made();
  await keeper.flush();
  expect(open).toHaveLength(0);
  keeper.typed(plan('a'));
  void keeper.flush();
  await turn();
  expect([asked[0].isOff, open.length]).toEqual([true, 1]);
});

test('a write that fails is told, and the next one is tried', async () => {
  const { keeper, open, refusals } = made({ fails: true });
  for (const typed of ['a', 'b']) {
    keeper.pressed(plan(typed));
    await turn();
    open.at(-1)?.();
    await keeper.flush();
  }
  expect(refusals()).toBe(2);
});
