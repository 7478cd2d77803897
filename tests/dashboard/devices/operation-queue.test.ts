import { expect, test } from 'vitest';
import { OperationQueue } from '../../../apps/dashboard/src/devices/operation-queue.ts';

test('one operation runs at a time, in the order in which they were asked for', async () => {
  const queue = new OperationQueue();
  const course: string[] = [];
  const operation = (name: string, turns: number) => async (): Promise<string> => {
    course.push(`${name} begins`);
    for (let turn = 0; turn < turns; turn += 1) await Promise.resolve();
    course.push(`${name} ends`);
    return name;
  };
  const results = await Promise.all([
    queue.run(operation('long', 20)),
    queue.run(operation('short', 0)),
    queue.run(operation('last', 3)),
  ]);
  expect(results).toEqual(['long', 'short', 'last']);
  expect(course).toEqual(['long begins', 'long ends', 'short begins', 'short ends', 'last begins', 'last ends']);
});

test('one that fails is told to who asked for it, and holds up nothing', async () => {
  const queue = new OperationQueue();
  const failed = expect(queue.run(() => Promise.reject(new Error('refused')))).rejects.toThrow('refused');
  expect(await queue.run(() => Promise.resolve('next'))).toBe('next');
  await failed;
});
