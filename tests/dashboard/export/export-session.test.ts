import type { RecordBytes } from '@surae/exchange';
import type { MemoryStore } from '@surae/storage';
import { beforeAll, expect, test } from 'vitest';
import { main } from '../../../apps/cli/src/main.ts';
import { softwareName } from '../../../apps/cli/src/software.ts';
import { firstChoice } from '../../../apps/dashboard/src/export/export-choice.ts';
import { ExportDesk } from '../../../apps/dashboard/src/export/export-desk.ts';
import { type ExportEnd, ExportSession } from '../../../apps/dashboard/src/export/export-session.ts';
import type { ExportAnswer, ExportAsk, ExportWork } from '../../../apps/dashboard/src/export/messages.ts';
import { MemoryIo } from '../../support/memory-io.ts';
import { recordedClinic } from '../../support/recorded-clinic.ts';

/** A worker on this thread: what goes over is copied, and nothing comes after its end. */
class NearWorker implements ExportEnd {
  onmessage: ExportEnd['onmessage'] = null;
  onerror: ExportEnd['onerror'] = null;
  ended = false;
  readonly told: ExportAnswer['kind'][] = [];
  private readonly desk = new ExportDesk((answer) => {
    this.told.push(answer.kind);
    if (!this.ended) this.onmessage?.({ data: structuredClone(answer) });
  });

  postMessage(message: ExportAsk): void {
    if (!this.ended) void this.desk.take(structuredClone(message));
  }

  terminate(): void {
    this.ended = true;
  }
}

let store: MemoryStore;
let work: ExportWork;

beforeAll(async () => {
  store = await recordedClinic(3);
  const choice = { ...firstChoice, withoutNames: false, samples: true, raw: true, healthRecords: true, letters: true };
  const told = { software: softwareName(), day: '2026-11-29', secret: 'unused' };
  work = { documents: await store.documents({}), choice, ...told };
});

function session(): { readonly one: ExportSession; readonly workers: NearWorker[] } {
  const workers: NearWorker[] = [];
  const one = new ExportSession(() => {
    const worker = new NearWorker();
    workers.push(worker);
    return worker;
  });
  return { one, workers };
}

test('what the worker makes is what the command line makes of a backup', async () => {
  const { one, workers } = session();
  const told: string[] = [];
  const made = await one.make(
    work,
    (id) => store.bytes(id),
    (done, of) => told.push(`${done}/${of}`),
  );
  expect(told).toEqual(['1/3', '2/3', '3/3']);
  expect(workers[0].ended).toBe(true);

  const pieces: Uint8Array[] = [];
  for await (const piece of store.backup()) pieces.push(piece);
  const memory = new MemoryIo();
  memory.files.set('b', new Uint8Array(Buffer.concat(pieces)));
  const options = ['--samples', '--raw', '--health-records', '--letters', '--written-on', work.day];
  expect(await main(['export', '--backup', 'b', '--out', 'o.zip', ...options], memory.io)).toBe(0);
  const bytes = Buffer.from(await made!.blob.arrayBuffer());
  expect(Buffer.compare(bytes, memory.files.get('o.zip') as Uint8Array)).toBe(0);
});

test('to stop ends the worker, gives no file, and the next one begins anew', async () => {
  const { one, workers } = session();
  const reading: ((bytes: RecordBytes | undefined) => void)[] = [];
  const making = one.make(
    work,
    () => new Promise((resolve) => reading.push(resolve)),
    () => undefined,
  );
  await expect.poll(() => reading.length).toBe(1);
  one.stop();
  expect(await making).toBeUndefined();
  expect(workers[0].ended).toBe(true);
  reading[0](undefined);
  expect(workers[0].told).toEqual(['read']);
  const again = await one.make(
    work,
    (id) => store.bytes(id),
    () => undefined,
  );
  expect([workers.length, again?.name]).toEqual([2, 'surae-study-20261129.zip']);
});

test('bytes that cannot be read are told with their reason, and no file is given', async () => {
  const { one, workers } = session();
  const making = one.make(
    work,
    () => Promise.reject(new Error('the store is locked')),
    () => undefined,
  );
  await expect(making).rejects.toThrow('the store is locked');
  expect(workers[0].ended).toBe(true);
});

test('a worker that breaks is told', async () => {
  const { one, workers } = session();
  const making = one.make(
    work,
    () => new Promise(() => undefined),
    () => undefined,
  );
  workers[0].onerror?.({ message: 'not loaded' });
  await expect(making).rejects.toThrow('not loaded');
});
