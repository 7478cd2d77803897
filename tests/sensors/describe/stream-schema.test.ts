import type { StreamLayout } from '@surae/sensors';
import { expect, test } from 'vitest';
import { hexBytes, streamLayout } from '../../../packages/sensors/src/describe/stream-schema.ts';

const lines: StreamLayout = {
  kind: 'lines',
  lines: {
    delimiter: 'blanks',
    decimal: '.',
    columns: [
      { kind: 'counter', modulus: 256 },
      { kind: 'time', unit: 'ms', scale: 2 },
      { kind: 'skip' },
      { kind: 'channel', quantity: 'force', axis: null, unit: 'N' },
    ],
  },
};
const frames: StreamLayout = {
  kind: 'frames',
  frame: {
    marker: 'A5 5A',
    length: { kind: 'told', form: 'u8', order: 'big', extra: -3, longest: 100 },
    check: { kind: 'crc32', order: 'little', covers: 'all' },
  },
  packet: { order: 'big', fields: [{ kind: 'skip', bits: 8 }] },
};

test('streams pass unchanged', () => {
  for (const layout of [lines, frames]) expect(streamLayout.parse(JSON.parse(JSON.stringify(layout)))).toEqual(layout);
});

test('what is no stream does not pass', () => {
  const wrong: unknown[] = [
    { ...lines, kind: 'words' },
    { kind: 'lines', lines: { ...lines.lines, delimiter: '|' } },
    { kind: 'lines', lines: { ...lines.lines, columns: [{ kind: 'counter', unit: 'ms' }] } },
    { ...frames, frame: { ...frames.frame, marker: 'A' } },
    { ...frames, frame: { ...frames.frame, check: undefined } },
    { ...frames, frame: { ...frames.frame, length: { kind: 'told', form: 'u24', order: 'big', longest: 3 } } },
  ];
  expect(wrong.map((one) => streamLayout.safeParse(one).success)).toEqual(wrong.map(() => false));
  expect(hexBytes.safeParse('A5 5A').success).toBe(true);
});
