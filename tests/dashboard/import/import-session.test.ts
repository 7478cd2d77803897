import type { ReactiveControllerHost } from 'lit';
import { expect, test } from 'vitest';
import { ImportSession } from '../../../apps/dashboard/src/import/import-session.ts';
import type { ImportAnswer, ImportAsk } from '../../../apps/dashboard/src/import/messages.ts';

class HandWorker {
  onmessage: ((event: { data: ImportAnswer }) => void) | null = null;
  onerror: (() => void) | null = null;
  ended = false;
  readonly asked: ImportAsk[] = [];
  postMessage(message: ImportAsk): void {
    this.asked.push(message);
  }
  terminate(): void {
    this.ended = true;
  }
  say(answer: ImportAnswer): void {
    this.onmessage?.({ data: answer });
  }
}

function session(): { readonly one: ImportSession; readonly workers: HandWorker[] } {
  const workers: HandWorker[] = [];
  const host = { addController: () => undefined, requestUpdate: () => undefined } as unknown as ReactiveControllerHost;
  const one = new ImportSession(host, () => {
    const worker = new HandWorker();
    workers.push(worker);
    return worker as unknown as Worker;
  });
  return { one, workers };
}

const file = new File(['x'], 'x.csv');

test('to stop ends the worker, and the next file begins with a new one', () => {
  const { one, workers } = session();
  one.look(file);
  workers[0]!.say({ kind: 'progress', doneBytes: 5, totalBytes: 9 });
  expect(one.state).toMatchObject({ at: 'working', what: 'look', doneBytes: 5 });
  one.stop();
  expect([workers[0]!.ended, one.state]).toEqual([true, { at: 'stopped' }]);
  one.look(file);
  expect(workers).toHaveLength(2);
  one.hostDisconnected();
  expect(workers[1]!.ended).toBe(true);
});

test('answers add up, a refusal is told, and a recipe gives its name', () => {
  const { one, workers } = session();
  one.look(file);
  one.answer('rate', '50');
  one.answer('side:F', 'left');
  expect(workers[0]!.asked.at(-1)).toEqual({ kind: 'answer', answers: { rate: '50', 'side:F': 'left' } });
  one.read({ part: '2' });
  expect(workers[0]!.asked.at(-1)).toEqual({ kind: 'read', file, name: 'x.csv', part: '2' });
  workers[0]!.say({ kind: 'refused', refusal: { code: 'no-table', message: 'why' } });
  expect(one.state).toEqual({ at: 'refused', reason: 'why' });
  workers[0]!.say({ kind: 'broken', message: 'fault' });
  expect(one.state).toEqual({ at: 'refused', reason: 'fault' });
});
