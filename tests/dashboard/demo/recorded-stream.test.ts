import { recordingFromStream } from '@surae/records';
import { simulatePullTrial } from '@surae/simulation';
import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { recordedStream } from '../../../apps/dashboard/src/demo/recorded-stream.ts';

test('what is streamed in blocks is closed, and reads back sample for sample, its times from where it begins', async () => {
  const store = new MemoryStore();
  const [samples] = simulatePullTrial({ seed: 1, side: 'left', placement: 'platform', trial: 0 }).groups;
  const id = await recordedStream(await store.openBytes('trial'), samples, 70);
  const bytes = (await store.bytes(id))!;
  expect([bytes.pieces.length, bytes.sha256]).toEqual([Math.ceil(samples.timesS.length / 500), expect.any(String)]);
  const [{ timesS, channels }] = recordingFromStream(bytes.pieces, { side: 'left', placement: 'platform' }).groups;
  expect([...channels[0].samples]).toEqual([...samples.channels[0].samples]);
  expect([timesS[0], timesS.length]).toEqual([samples.timesS[0] + 70, samples.timesS.length]);
});
