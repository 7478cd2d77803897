import { afterEach, expect, test } from 'vitest';
import { decimal, fixed } from '../../../apps/dashboard/src/words/decimal.ts';
import { fill } from '../../../apps/dashboard/src/words/fill.ts';
import { inDigits } from '../../../apps/dashboard/src/words/in-digits.ts';
import { setLocale } from '../../../apps/dashboard/src/words/locale.ts';

afterEach(() => setLocale('en-GB'));

const written = ['0', '-3.2', '1234.57', '12.50', '0.000001', '123456789012345678901234567890.5'];

test('English writes every number as it was given, digit by digit', () => {
  expect(written.map(inDigits)).toEqual(written);
});

test('another language has its own mark, and the same digits', () => {
  setLocale('de-DE');
  expect(written.map(inDigits)).toEqual(written.map((text) => text.replace('.', ',')));
  expect(fill({ text: '{a} to {b}' }, { a: 1.5, b: '2.50' })).toBe('1,5 to 2,50');
  expect(decimal(-0.04, 1)).toBe('0,0');
  // what is reckoned with stays as a machine reads it
  expect(fixed(12.5, 2)).toBe('12.50');
  setLocale('ar-EG');
  expect(inDigits('12.5')).toBe('١٢٫٥');
});

test('what is no plain number stays as it is', () => {
  setLocale('de-DE');
  const others = ['007', '00.5', '1.2.3', '0.1.0', '1e-7', 'Ines 2.5', '', '+1.5', '.5', '12.'];
  expect(others.map(inDigits)).toEqual(others);
});
