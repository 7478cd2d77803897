import { expect, test } from 'vitest';
import { aboutText, batteryPercent } from '../../../apps/dashboard/src/devices/bluetooth-about.ts';

const view = (...bytes: number[]): DataView => new DataView(Uint8Array.from(bytes).buffer);
const text = (words: string): DataView => new DataView(new TextEncoder().encode(words).buffer);

test('the battery is one byte of percent, and nothing else is', () => {
  expect([0, 12, 100].map((byte) => batteryPercent(view(byte)))).toEqual([0, 12, 100]);
  expect(batteryPercent(view(50, 99))).toBe(50);
  expect([view(101), view(255), view(), null].map(batteryPercent)).toEqual([null, null, null, null]);
});

test('a name is text up to its first zero, without blanks around it', () => {
  expect(aboutText(text('Cell Ü 2'))).toBe('Cell Ü 2');
  expect(aboutText(text(' Invented Works \0\0rest'))).toBe('Invented Works');
  expect([text(''), text('\0'), text('  '), null].map(aboutText)).toEqual([null, null, null, null]);
});
