import { simulateSet } from '@surae/simulation';
import { expect, test } from 'vitest';
import { type SimulatedKind, writeSimulated } from '../../apps/cli/src/simulated-folder.ts';
import { softwareName } from '../../apps/cli/src/software.ts';
import { UsageError } from '../../apps/cli/src/usage-error.ts';
import { MemoryIo } from '../support/memory-io.ts';

const place = { folder: 'out', replace: false, seed: 4, count: 2 };
const kind: SimulatedKind = {
  nameOf: (seed) => `made-${seed}`,
  recordingOf: (seed) => ({
    trace: simulateSet({ placement: 'heel', level: 'clean', seed: 1 }).trace,
    made: 'by hand',
    known: { truth: seed },
    manifestRow: [`P${seed}`],
    truthRows: [['1'], ['2']],
  }),
  manifestColumns: ['person'],
  truthColumns: ['index'],
  trueThings: 'things',
};

test('each recording with its truth, one table of all truth and the manifest', () => {
  const io = new MemoryIo();
  writeSimulated(place, kind, io.io);
  expect(io.text('out/manifest.csv').trim().split(/\r?\n/)).toEqual(['file,person', 'made-4.csv,P4', 'made-5.csv,P5']);
  expect(io.text('out/truth.csv').trim().split(/\r?\n/)).toEqual([
    'file,index',
    ...['made-4.csv', 'made-5.csv'].flatMap((file) => [`${file},1`, `${file},2`]),
  ]);
  expect(JSON.parse(io.text('out/made-5.truth.json'))).toEqual({ software: softwareName(), truth: 5 });
  expect(io.text('out/made-4.csv')).toContain(`# simulated by ${softwareName()}: by hand, seed 4`);
  expect(io.out).toContain('2 simulated recordings in out, 4 true things');
});

test('a file that is there stops it before anything is written', () => {
  const io = new MemoryIo();
  io.files.set('out/made-5.truth.json', 'kept');
  expect(() => writeSimulated(place, kind, io.io)).toThrow(UsageError);
  expect(io.files.has('out/made-4.csv')).toBe(false);
  writeSimulated({ ...place, replace: true, count: 1 }, kind, io.io);
  expect(io.out).toContain('1 simulated recording in out');
});
