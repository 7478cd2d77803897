import { readRecoveryCode } from '@surae/storage';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  looksLikeRecoveryCode,
  printRecoveryCode,
  recoveryLength,
} from '../../../packages/storage/src/keys/recovery-code.ts';
import { runs } from '../../support/runs.ts';

const arbitraryBytes = fc.uint8Array({ minLength: recoveryLength, maxLength: recoveryLength });
const signs = '23479ACFHJKMRWXY';

test('a printed code carries 128 bits in eight groups of five signs that nobody mistakes for others', () => {
  expect(recoveryLength).toBe(16);
  fc.assert(
    fc.property(arbitraryBytes, (bytes) => {
      const code = printRecoveryCode(bytes);
      expect(code).toMatch(/^([23479ACFHJKMRWXY]{5}-){7}[23479ACFHJKMRWXY]{5}$/);
      expect(readRecoveryCode(code)).toEqual({ bytes });
      expect(looksLikeRecoveryCode(code)).toBe(true);
    }),
    runs(50, 500),
  );
});

test('the check of a group is what a hand makes of it', () => {
  // in the field of 16 elements with x^4 = x + 1: 1*x + 2*x^2 + 3*x^3 + 4*x^4 = 2 + 8 + (8 + 11) + (3 * 4 = 12) by addition without carry
  // 2 ^ 8 = 10; 3*x^3 = x^3 + x^4 = 8 ^ 3 = 11; 4*x^4 = x^6 = x^3 + x^2 = 12; 10 ^ 11 ^ 12 = 13, and the first group adds 0
  const code = printRecoveryCode(Uint8Array.of(0x12, 0x34, ...Array<number>(14).fill(0)));
  expect(code.slice(0, 5)).toBe([1, 2, 3, 4, 13].map((value) => signs[value]).join(''));
  // a group of zeros holds its own number
  expect(code.slice(6, 11)).toBe('22223');
  expect(code.slice(-5)).toBe('22227'.replace('7', signs[7]));
});

test('it may be typed in any case, with any blanks and strokes', () => {
  const bytes = Uint8Array.from({ length: 16 }, (_, i) => 17 * i);
  const code = printRecoveryCode(bytes);
  for (const typed of [
    code.toLowerCase(),
    code.replaceAll('-', ' '),
    code.replaceAll('-', ''),
    ` ${code}\n`,
    code.replaceAll('-', ' – '),
  ]) {
    expect(readRecoveryCode(typed)).toEqual({ bytes });
    expect(looksLikeRecoveryCode(typed)).toBe(true);
  }
  for (const other of ['seven lamps in the old mill', code.slice(1), `${code}A`]) {
    expect(looksLikeRecoveryCode(other)).toBe(false);
    expect(readRecoveryCode(other)).toEqual({ wrongGroups: [] });
  }
});

describe('a code that was typed wrong is noticed, with its group', () => {
  const groupsOf = (code: string): string[] => code.split('-');

  test('any other sign in any place', () => {
    fc.assert(
      fc.property(arbitraryBytes, (bytes) => {
        const code = printRecoveryCode(bytes);
        for (let at = 0; at < code.length; at += 1) {
          if (code[at] === '-') continue;
          for (const sign of `${signs}8B`) {
            if (sign === code[at]) continue;
            const typed = code.slice(0, at) + sign + code.slice(at + 1);
            expect(readRecoveryCode(typed)).toEqual({ wrongGroups: [Math.floor(at / 6) + 1] });
          }
        }
      }),
      runs(3, 40),
    );
  });

  test('any two signs of a group that changed places, and any two groups', () => {
    fc.assert(
      fc.property(arbitraryBytes, (bytes) => {
        const groups = groupsOf(printRecoveryCode(bytes));
        for (let g = 0; g < groups.length; g += 1) {
          for (let i = 0; i < 5; i += 1) {
            for (let j = i + 1; j < 5; j += 1) {
              const swapped = [...groups[g]];
              [swapped[i], swapped[j]] = [swapped[j], swapped[i]];
              if (swapped.join('') === groups[g]) continue;
              const typed = groups.with(g, swapped.join('')).join('-');
              expect(readRecoveryCode(typed)).toEqual({ wrongGroups: [g + 1] });
            }
          }
          for (let h = g + 1; h < groups.length; h += 1) {
            const typed = groups.with(g, groups[h]).with(h, groups[g]).join('-');
            expect(readRecoveryCode(typed)).toEqual({ wrongGroups: [g + 1, h + 1] });
          }
        }
      }),
      runs(10, 200),
    );
  });
});
