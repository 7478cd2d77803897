import { filled, ofTen, withInterval, withUncertainty } from '@surae/exchange';
import { LETTER_SENTENCES } from '@surae/shared';
import { expect, test } from 'vitest';

const plain = (text: string): string => text.replaceAll('\u00A0', ' ');

test('a figure is one piece, and has no digit that its uncertainty does not allow', () => {
  expect(plain(withUncertainty(1234.56, 31, 'N'))).toBe('1235 ± 31 N (standard uncertainty)');
  expect(plain(withUncertainty(93.44, 0.27, 'mm'))).toBe('93.4 ± 0.3 mm (standard uncertainty)');
  expect(plain(withInterval(22, 20, 23, 0))).toBe('22 (95 % interval 20 to 23)');
  expect(plain(withInterval(-0.04, -1, 2, 1, 'm'))).toBe('0.0 (95 % interval −1.0 to 2.0 m)');
  expect(plain(ofTen(3))).toBe('3 of 10 (as told, no uncertainty known)');
  for (const figure of [withUncertainty(1, 1, 'N'), withInterval(1, 0, 2, 0), ofTen(1)])
    expect(figure).not.toContain(' ');
});

test('a blank without a value is a fault of the program', () => {
  expect(() => filled(LETTER_SENTENCES.visit)).toThrow('has no value for {day}');
});
