import { expect, test } from 'vitest';
import { ReadsInOrder } from '../../../apps/dashboard/src/journey/reads-in-order.ts';

/** Reads that are ended by hand, in any order. */
function byHand() {
  const reads = new ReadsInOrder<string>();
  const taken: string[] = [];
  const begin = () => {
    let end!: (value: string) => void;
    let fail!: (error: Error) => void;
    const value = new Promise<string>((resolve, reject) => {
      end = resolve;
      fail = reject;
    });
    const done = reads.read(
      () => value,
      (read) => taken.push(read),
    );
    return { end, fail, done };
  };
  return { begin, taken };
}

test('what an earlier read saw does not take the place of what a later one saw', async () => {
  const { begin, taken } = byHand();
  const first = begin();
  const second = begin();
  second.end('after');
  await second.done;
  first.end('before');
  await first.done;
  expect(taken).toEqual(['after']);
});

test('reads that end in their order are all taken', async () => {
  const { begin, taken } = byHand();
  const first = begin();
  const second = begin();
  first.end('before');
  await first.done;
  second.end('after');
  await second.done;
  expect(taken).toEqual(['before', 'after']);
});

test('a later read that fails leaves the earlier one standing, and says that it failed', async () => {
  const { begin, taken } = byHand();
  const first = begin();
  const second = begin();
  second.fail(new Error('the store is closed'));
  await expect(second.done).rejects.toThrow('the store is closed');
  first.end('before');
  await first.done;
  expect(taken).toEqual(['before']);
});
