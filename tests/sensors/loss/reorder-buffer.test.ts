import { describe, expect, test } from 'vitest';
import { ReorderBuffer } from '../../../packages/sensors/src/loss/reorder-buffer.ts';

function buffer(slack = 0, mostWaiting = 3) {
  const one = new ReorderBuffer<string>({ waitMs: 100, mostWaiting, slack });
  const told = (turns: ReturnType<typeof one.take>): string[] =>
    turns.map(
      ({ item, missing, isLate }) => `${item}${missing > 0 ? ` after ${missing}` : ''}${isLate ? ' late' : ''}`,
    );
  const put = (from: number, to: number, nowMs: number): string[] =>
    told(one.put({ item: `${from}-${to}`, from, to, arrivedMs: nowMs }, nowMs));
  return { one, put, take: (nowMs: number) => told(one.take(nowMs)), flush: () => told(one.flush()) };
}

describe('what is put in order', () => {
  test('the first waits for one that it may have overtaken', () => {
    const { put, take } = buffer();
    expect(put(5, 6, 1000)).toEqual([]);
    expect(put(4, 5, 1050)).toEqual([]);
    expect(take(1099)).toEqual([]);
    expect(take(1100)).toEqual(['4-5', '5-6']);
    expect(put(6, 7, 1101)).toEqual(['6-7']);
  });

  test('one that is ahead waits until those before it have come, or for a while', () => {
    const { put, take } = buffer();
    put(0, 1, 0);
    take(100);
    expect(put(2, 3, 110)).toEqual([]);
    expect(put(1, 2, 150)).toEqual(['1-2', '2-3']);
    expect(put(5, 6, 200)).toEqual([]);
    expect(put(6, 7, 260)).toEqual([]);
    expect(take(299)).toEqual([]);
    expect(take(300)).toEqual(['5-6 after 2', '6-7']);
  });

  test('not more wait than are told to', () => {
    const { put, take } = buffer();
    put(0, 1, 0);
    take(100);
    expect([put(2, 3, 101), put(4, 5, 101), put(6, 7, 101)]).toEqual([[], [], []]);
    expect(put(8, 9, 101)).toEqual(['2-3 after 1']);
  });

  test('what comes too late fills its hole, once', () => {
    const { one, put, take } = buffer();
    put(0, 1, 0);
    put(4, 5, 0);
    take(100);
    expect(one.unseen(1, 4)).toEqual([{ from: 1, to: 4 }]);
    expect(put(2, 3, 200)).toEqual(['2-3 late']);
    expect(one.unseen(1, 4)).toEqual([
      { from: 1, to: 2 },
      { from: 3, to: 4 },
    ]);
    expect(one.unseen(2, 3)).toEqual([]);
    expect(one.unseen(0, 1)).toEqual([]);
    expect(one.unseen(3, 7)).toEqual([
      { from: 3, to: 4 },
      { from: 5, to: 7 },
    ]);
  });

  test('what waits is no longer new', () => {
    const { one, put } = buffer();
    put(10, 20, 0);
    expect(one.position).toBeUndefined();
    expect(one.unseen(5, 25)).toEqual([
      { from: 5, to: 10 },
      { from: 20, to: 25 },
    ]);
    expect(one.unseen(12, 15)).toEqual([]);
  });

  test('small differences are no holes where places are never exact', () => {
    const { one, put, take } = buffer(3);
    put(0, 100, 0);
    take(100);
    expect(put(102, 200, 110)).toEqual(['102-200']);
    expect(put(198, 300, 120)).toEqual(['198-300']);
    expect(one.unseen(201, 299)).toEqual([]);
    expect(one.position).toBe(300);
  });

  test('at the end nothing waits', () => {
    const { put, flush } = buffer();
    put(3, 4, 0);
    put(7, 8, 0);
    expect(flush()).toEqual(['3-4', '7-8 after 3']);
    expect(flush()).toEqual([]);
  });
});
