import { argon2id } from '@noble/hashes/argon2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { leastPassphraseLength, type PassphraseCost, passphraseCost } from '@surae/storage';
import { describe, expect, test } from 'vitest';
import { decrypt, encrypt, importKey } from '../../../packages/storage/src/keys/envelope.ts';
import { checkPassphrase, isCost, passphraseKey } from '../../../packages/storage/src/keys/passphrase.ts';

const fill = (length: number, value: number): Uint8Array<ArrayBuffer> => new Uint8Array(length).fill(value);
const text = new TextEncoder();

/** Whether two keys are the same, although none of them can be taken out. */
async function isSame(one: CryptoKey, other: CryptoKey): Promise<boolean> {
  return (await decrypt(other, await encrypt(one, fill(4, 7), ['same']), ['same'])) !== undefined;
}

describe('the key of a passphrase', () => {
  test('is what a second implementation makes of it, which gives the tag of RFC 9106, section 5.3', async () => {
    const published = argon2id(fill(32, 1), fill(16, 2), {
      t: 3,
      m: 32,
      p: 4,
      key: fill(8, 3),
      personalization: fill(12, 4),
    });
    expect(bytesToHex(published)).toBe('0d640df58d78766c08c037a34a8b53c9d01ef0452d75b65eb52520e96b01e659');
    const costs: PassphraseCost[] = [
      { memoryKiB: 32, passes: 3, lanes: 4 },
      { memoryKiB: 64, passes: 2, lanes: 1 },
    ];
    for (const cost of costs) {
      const raw = argon2id(text.encode('old mill'), fill(16, 9), { t: cost.passes, m: cost.memoryKiB, p: cost.lanes });
      const second = await importKey(Uint8Array.from(raw));
      expect(await isSame(await passphraseKey('old mill', fill(16, 9), cost), second)).toBe(true);
      expect(await isSame(await passphraseKey('old mill.', fill(16, 9), cost), second)).toBe(false);
      expect(await isSame(await passphraseKey('old mill', fill(16, 8), cost), second)).toBe(false);
    }
  });

  test('is the same however a keyboard composes the letters', async () => {
    const cost = { memoryKiB: 8, passes: 1, lanes: 1 };
    const composed = await passphraseKey('m\u00fchle am bach', fill(16, 1), cost);
    expect(await isSame(composed, await passphraseKey('mu\u0308hle am bach', fill(16, 1), cost))).toBe(true);
  });
});

test('guessing costs what RFC 9106 recommends, section 4, second option, but for the lanes', () => {
  expect(passphraseCost).toEqual({ memoryKiB: 64 * 1024, passes: 3, lanes: 1 });
});

test('a passphrase is as long as it must be, counted in signs and not in units of a text', () => {
  expect(() => checkPassphrase('a'.repeat(leastPassphraseLength))).not.toThrow();
  expect(() => checkPassphrase('\u{1F33E}'.repeat(leastPassphraseLength - 1))).toThrow(
    /at least 12 signs; this one has 11/,
  );
});

test('a cost that no store was ever written with is told', () => {
  expect(isCost(passphraseCost)).toBe(true);
  expect(isCost({ memoryKiB: 8, passes: 1, lanes: 1 })).toBe(true);
  for (const changed of [
    { memoryKiB: 1_048_577 },
    { memoryKiB: 7 },
    { passes: 0 },
    { passes: 21 },
    { lanes: 5 },
    { lanes: 1.5 },
    { passes: NaN },
  ]) {
    expect(isCost({ ...passphraseCost, ...changed })).toBe(false);
  }
});
