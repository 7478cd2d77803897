import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inOrder } from '../../apps/cli/src/in-order.ts';

async function all<Item>(given: AsyncIterable<Item>): Promise<Item[]> {
  const items: Item[] = [];
  for await (const item of given) items.push(item);
  return items;
}

/** Work that is done when somebody says so, and what is running now. */
class Held {
  readonly running = new Map<number, () => void>();
  most = 0;
  furthest = -1;

  readonly work = (item: number): Promise<string> =>
    new Promise((resolve) => {
      this.furthest = Math.max(this.furthest, item);
      this.running.set(item, () => {
        this.running.delete(item);
        resolve(`did ${item}`);
      });
      this.most = Math.max(this.most, this.running.size);
    });
}

/** Lets everything happen that can. */
const settle = () => new Promise((resolve) => setImmediate(resolve));

test('whatever the order in which it is done, it is given in the order of the items, never more at once than asked', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.nat(12),
      fc.integer({ min: 1, max: 5 }),
      fc.option(fc.integer({ min: 1, max: 6 }), { nil: undefined }),
      fc.infiniteStream(fc.nat()),
      async (count, atOnce, ahead, choices) => {
        const held = new Held();
        const items = Array.from({ length: count }, (_, at) => at);
        let given = 0;
        const found: string[] = [];
        const run = (async () => {
          for await (const one of inOrder(items, held.work, { atOnce, ...(ahead === undefined ? {} : { ahead }) })) {
            found.push(one);
            given += 1;
          }
        })();
        for (;;) {
          await settle();
          if (ahead !== undefined) expect(held.furthest - given).toBeLessThan(ahead);
          const waiting = [...held.running.values()];
          if (waiting.length === 0) break;
          waiting[choices.next().value! % waiting.length]();
        }
        await run;
        expect(found).toEqual(items.map((item) => `did ${item}`));
        expect(held.most).toBeLessThanOrEqual(atOnce);
        if (ahead === undefined) expect(held.most).toBe(Math.min(atOnce, count));
      },
    ),
    { numRuns: 60 },
  );
});

test('what is done is given while the next item is still awaited', async () => {
  let send!: (item: number | undefined) => void;
  async function* slow() {
    for (;;) {
      const item = await new Promise<number | undefined>((resolve) => {
        send = resolve;
      });
      if (item === undefined) return;
      yield item;
    }
  }
  const found: number[] = [];
  const run = (async () => {
    for await (const one of inOrder(slow(), (item) => Promise.resolve(10 * item), { atOnce: 3 })) found.push(one);
  })();
  await settle();
  send(1);
  await settle();
  expect(found).toEqual([10]);
  send(2);
  await settle();
  expect(found).toEqual([10, 20]);
  send(undefined);
  await run;
});

test('after a stop nothing begins; what runs is awaited', async () => {
  const held = new Held();
  const stop = new AbortController();
  const run = all(inOrder([0, 1, 2, 3], held.work, { atOnce: 2 }, stop.signal));
  await settle();
  stop.abort();
  await settle();
  held.running.get(1)!();
  await settle();
  held.running.get(0)!();
  expect(await run).toEqual(['did 0', 'did 1']);
  expect(held.furthest).toBe(1);
});

test('a fault of the items or of the work is that of the whole', async () => {
  async function* broken() {
    yield await Promise.resolve(1);
    throw new Error('no more lines');
  }
  const twice = (item: number) => Promise.resolve(2 * item);
  await expect(all(inOrder(broken(), twice, { atOnce: 1 }))).rejects.toThrow('no more lines');
  const bad = () => Promise.reject(new Error('bad'));
  await expect(all(inOrder([1], bad, { atOnce: 1 }))).rejects.toThrow('bad');
});
