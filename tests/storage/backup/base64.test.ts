import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fromBase64, toBase64 } from '../../../packages/storage/src/backup/base64.ts';
import { runs } from '../../support/runs.ts';

test('bytes become what Node makes of them, and come back', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
      expect(toBase64(bytes)).toBe(Buffer.from(bytes).toString('base64'));
      expect(fromBase64(toBase64(bytes))).toEqual(bytes);
    }),
    runs(100, 1000),
  );
  const long = new Uint8Array(100_001).fill(250);
  expect(toBase64(long)).toBe(Buffer.from(long).toString('base64'));
});

test('what is no base64 is told', () => {
  for (const wrong of ['A', 'AA=', 'A===', 'AA A', 'Aé==', 'AA==AA==', 3, null, undefined]) {
    expect(fromBase64(wrong)).toBeUndefined();
  }
});
