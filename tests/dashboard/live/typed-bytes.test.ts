import { parseSensorDescription, type SensorDocument } from '@surae/sensors';
import { expect, test } from 'vitest';
import { decodedView } from '../../../apps/dashboard/src/live/decoded-view.ts';
import { typedBytes } from '../../../apps/dashboard/src/live/typed-bytes.ts';
import { serialCell } from '../../browser/support/serial/serial-cell.ts';

function described(json: unknown): SensorDocument {
  const answer = parseSensorDescription(json);
  if (answer.kind === 'refused') throw new Error(JSON.stringify(answer));
  return answer.sensor;
}

const cell = described(serialCell);
const text = (words: string): Uint8Array => new TextEncoder().encode(words);

test('whole lines stand as they came, without what was cut at both ends, and mean what they say', () => {
  const typed = typedBytes(cell, text('5;3.1\n17;85;12.5\n18;90;12.6\n19;9'));
  expect(typed).toBe('17;85;12.5\n18;90;12.6');
  const view = decodedView(cell, 0, typed!);
  expect(view?.rows).toEqual([['12.5'], ['12.6']]);
  expect(view?.lines[0]).toContain('Number 17.');
});

test('before a line is whole there is nothing to show', () => {
  expect(typedBytes(cell, text('5;3.1'))).toBeUndefined();
  expect(typedBytes(cell, text('5;3.1\n17;8'))).toBeUndefined();
});

test('noise among lines, and a stream of frames, stand in hexadecimal', () => {
  expect(typedBytes(cell, Uint8Array.of(0x31, 0xff, 0x0a))).toBe('0x 31 FF 0A');
  const { link } = cell;
  if (link.kind !== 'serial') throw new Error('not serial');
  const framed = { ...cell, link: { ...link, stream: { kind: 'frames' } } } as unknown as SensorDocument;
  expect(typedBytes(framed, text('AB'))).toBe('0x 41 42');
});

test('a packet of a Bluetooth sensor stands in hexadecimal', () => {
  const bluetooth = { ...cell, link: { kind: 'bluetooth' } } as unknown as SensorDocument;
  expect(typedBytes(bluetooth, Uint8Array.of(5, 0x7b))).toBe('05 7B');
});
