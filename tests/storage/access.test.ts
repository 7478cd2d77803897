import { expect, test } from 'vitest';
import { Access, writing } from '../../packages/storage/src/access.ts';

test('who listens is told when a store begins to write, until they no longer want to be', () => {
  const access = new Access({ writes: false, why: 'written-elsewhere' });
  const heard: boolean[] = [];
  const end = access.listen(({ writes }) => heard.push(writes));
  expect(() => access.check()).toThrowError(expect.objectContaining({ code: 'written-elsewhere' }) as Error);
  access.become(writing);
  expect(() => access.check()).not.toThrow();
  end();
  access.become({ writes: false, why: 'asked' });
  expect(heard).toEqual([true]);
  expect(access.now).toEqual({ writes: false, why: 'asked' });
  expect(() => access.check()).toThrowError(expect.objectContaining({ code: 'read-only' }) as Error);
});
