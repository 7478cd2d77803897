import { expect, test } from 'vitest';
import { readRun } from '../../../apps/dashboard/src/runs/read-run.ts';
import { RunFileError } from '../../../apps/dashboard/src/runs/run-file-error.ts';
import type { RunFileAnswer } from '../../../apps/dashboard/src/runs/run-messages.ts';

/** A worker by hand: what it was given, and whether it was ended. */
class HandWorker {
  onmessage: ((event: { data: RunFileAnswer }) => void) | undefined;
  onerror: (() => void) | undefined;
  given: unknown;
  ended = 0;
  postMessage(given: unknown): void {
    this.given = given;
  }
  terminate(): void {
    this.ended += 1;
  }
  answer(data: RunFileAnswer): void {
    this.onmessage?.({ data });
  }
}

function begun() {
  const worker = new HandWorker();
  const file = new File(['<gpx/>'], 'run.gpx');
  const shares: number[] = [];
  const reading = readRun(
    file,
    () => worker as unknown as Worker,
    (share) => shares.push(share),
  );
  return { worker, file, shares, reading };
}

test('the file goes to the worker, how far it is comes back, and the worker ends with the run', async () => {
  const { worker, file, shares, reading } = begun();
  expect(worker.given).toBe(file);
  worker.answer({ kind: 'progress', done: 1, total: 4 });
  worker.answer({ kind: 'progress', done: 0, total: 0 });
  worker.answer({ kind: 'read', run: { day: '2026-03-01' } as never });
  expect(await reading.run).toEqual({ day: '2026-03-01' });
  expect([shares, worker.ended]).toEqual([[0.25, 0], 1]);
});

test('a refusal keeps its code, anything else is no refusal, and the worker ends', async () => {
  const refused = begun();
  refused.worker.answer({ kind: 'refused', code: 'no-times', got: '12' });
  await expect(refused.reading.run).rejects.toMatchObject({ name: 'RunFileError', code: 'no-times', got: '12' });
  for (const fail of [
    (worker: HandWorker) => worker.answer({ kind: 'broken' }),
    (worker: HandWorker) => worker.onerror?.(),
  ]) {
    const { worker, reading } = begun();
    fail(worker);
    await expect(reading.run).rejects.not.toBeInstanceOf(RunFileError);
    expect(worker.ended).toBe(1);
  }
});

test('stopped, it ends the worker', () => {
  const { worker, reading } = begun();
  reading.stop();
  expect(worker.ended).toBe(1);
});
