import { expect, test } from 'vitest';
import { readFile } from '../../../apps/dashboard/src/live/recording-file.ts';
import { SampleLog } from '../../../apps/dashboard/src/live/sample-log.ts';
import { savedFile } from '../../../apps/dashboard/src/live/saved-file.ts';
import { heelSet } from '../../support/heel-set.ts';

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

/** A table of heights of the heel, a hundred rows a second. */
function table(change: (lines: string[]) => void = () => {}): Uint8Array {
  const { timesS, channels } = heelSet(1);
  const lines = [
    'time [s],heel-height [m]',
    ...Array.from(timesS, (timeS, i) => `${timeS.toFixed(2)},${channels[0].samples[i].toFixed(5)}`),
  ];
  change(lines);
  return bytesOf(`${lines.join('\n')}\n`);
}

test('a table becomes a recording that can be played', () => {
  const read = readFile(table(), 'set.csv');
  if ('refusal' in read) throw read.refusal;
  expect(read.name).toBe('set.csv');
  expect(read.placement).toBeNull();
  expect(read.trace.groups[0].timesS).toHaveLength(501);
});

test('a refusal names file, row and column in its own words', () => {
  const read = readFile(
    table((lines) => {
      lines[7] = '0.06,high';
    }),
    'set.csv',
  );
  if (!('refusal' in read)) throw new Error('It was read.');
  expect(read.refusal.code).toBe('not-a-number');
  expect(read.refusal.message).toContain('set.csv, row 8, column "heel-height [m]"');
  expect(read.refusal.message).toContain('"high"');
});

test('a document that is no recording is refused as such', () => {
  const read = readFile(bytesOf('  {"kind": "something"}'), 'other.json');
  expect('refusal' in read && read.refusal.code).toBe('invalid-document');
});

test('a set that was saved as a file is read again with its place', () => {
  const set = heelSet(2);
  const log = new SampleLog();
  const channels = set.channels.map((channel) => ({ ...channel, unit: 'm' }));
  log.add({ firstIndex: 0, deviceTimesS: set.timesS, hostTimeMs: 0, channels });
  const read = readFile(bytesOf(savedFile(log, 'right', 'heel')!), 'set-right.json');
  if ('refusal' in read) throw read.refusal;
  expect(read.placement).toBe('heel');
  expect(read.side).toBe('right');
  expect(read.trace.groups[0].timesS).toEqual(set.timesS);
  expect(read.trace.groups[0].channels[0].samples).toEqual(set.channels[0].samples);
});
