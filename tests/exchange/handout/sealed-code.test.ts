import { ExchangeError, openedCode, sealedCode } from '@surae/exchange';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const bytes = fc.uint8Array({ minLength: 1, maxLength: 80 });

test('bytes come back, and stand in an address as they are', () => {
  expect(sealedCode(Uint8Array.of(1, 2, 3))).toBe('AQIDra0');
  fc.assert(
    fc.property(bytes, (given) => {
      const code = sealedCode(given);
      expect(encodeURIComponent(code)).toBe(code);
      expect([...openedCode(code)]).toEqual([...given]);
      expect([...openedCode(` ${code.slice(0, 3)}\n${code.slice(3)} `)]).toEqual([...given]);
    }),
    { seed: 5, numRuns: 200 },
  );
});

test('a letter that is wrong, missing or added is found', () => {
  fc.assert(
    fc.property(bytes, fc.nat(), fc.constantFrom('A', 'b', '7', '_', ''), (given, place, letter) => {
      const code = sealedCode(given);
      const at = place % code.length;
      const other = code.slice(0, at) + letter + code.slice(at + 1);
      if (other !== code) expect(() => openedCode(other)).toThrow(ExchangeError);
    }),
    { seed: 6, numRuns: 400 },
  );
  for (const text of ['', 'A', 'AAA', 'not a code!', 'ä']) expect(() => openedCode(text), text).toThrow(ExchangeError);
});
