import { hkdf } from '@noble/hashes/hkdf.js';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js';
import { describe, expect, test } from 'vitest';
import { decrypt, encrypt, importKey, random } from '../../../packages/storage/src/keys/envelope.ts';
import { printRecoveryCode } from '../../../packages/storage/src/keys/recovery-code.ts';
import {
  headerFrom,
  keyFor,
  newRoot,
  openRoot,
  type VaultHeader,
  wrapByCode,
  wrapByPassphrase,
} from '../../../packages/storage/src/keys/root.ts';
import { cheapCost, passphrase } from '../../support/cheap-vault.ts';

const store = 'a'.repeat(32);
const root = newRoot();
const code = random(16);
const header: VaultHeader = {
  version: 1,
  store,
  passphrase: await wrapByPassphrase(root, store, passphrase, cheapCost),
  recovery: await wrapByCode(root, store, code),
};

test('a key of one purpose is HKDF of the root, as a second implementation derives it, and of no other purpose', async () => {
  // RFC 5869, appendix A.1: the second implementation is right
  const salt = hexToBytes('000102030405060708090a0b0c');
  const published = hkdf(sha256, new Uint8Array(22).fill(11), salt, hexToBytes('f0f1f2f3f4f5f6f7f8f9'), 42);
  expect(bytesToHex(published)).toBe(
    '3cb25f25faacd57a90434f64d0362f2a2d2d0a90cf1a5a4c5db02d56ecc4c5bf34007208d5b887185865',
  );
  const by = async (purpose: string): Promise<CryptoKey> =>
    importKey(Uint8Array.from(hkdf(sha256, root, code, new TextEncoder().encode(`surae ${purpose}`), 32)));
  const sealed = await encrypt(await keyFor('backups', root, code), Uint8Array.of(1), []);
  expect(await decrypt(await by('backups'), sealed, [])).toEqual(Uint8Array.of(1));
  expect(await decrypt(await by('keys of persons'), sealed, [])).toBeUndefined();
});

describe('the root', () => {
  test('is opened by the passphrase and by the code, in any writing of it', async () => {
    expect(await openRoot(header, passphrase)).toEqual(root);
    expect(await openRoot(header, printRecoveryCode(code))).toEqual(root);
    expect(await openRoot(header, printRecoveryCode(code).toLowerCase().replaceAll('-', ' '))).toEqual(root);
  });

  test('is opened by nothing else', async () => {
    for (const wrong of ['', `${passphrase} `, passphrase.toUpperCase(), printRecoveryCode(random(16))]) {
      await expect(openRoot(header, wrong)).rejects.toMatchObject({ name: 'StorageError', code: 'wrong-passphrase' });
    }
    const printed = printRecoveryCode(code);
    const typed = printed.slice(0, 7) + (printed[7] === '2' ? '3' : '2') + printed.slice(8);
    await expect(openRoot(header, typed)).rejects.toMatchObject({
      code: 'mistyped-code',
      message: 'Something is wrong in these groups: 2.',
    });
  });

  test('is wrapped for this store and this cost alone', async () => {
    const wrong = { code: 'wrong-passphrase' };
    await expect(openRoot({ ...header, store: 'b'.repeat(32) }, passphrase)).rejects.toMatchObject(wrong);
    const cost = { ...cheapCost, passes: 2 };
    const dearer = { ...header, passphrase: { ...header.passphrase, cost } };
    await expect(openRoot(dearer, passphrase)).rejects.toMatchObject(wrong);
  });
});

describe('what a store says about its keys', () => {
  const plain = JSON.parse(JSON.stringify(header)) as Parameters<typeof headerFrom>[0];

  test('is read as it was written', () => {
    expect(headerFrom(plain)).toEqual(header);
  });

  test('of a newer version is refused as such', () => {
    expect(() => headerFrom({ version: 2, keys: 'in another form' })).toThrowError(
      expect.objectContaining({ code: 'newer-version' }) as Error,
    );
  });

  test.each([
    ['nothing', null],
    ['bytes', new Uint8Array(3)],
    ['another id', { ...header, store: 'A' }],
    ['no salt', { ...header, recovery: { wrapped: header.recovery.wrapped } }],
    ['half a key', { ...header, recovery: { ...header.recovery, wrapped: header.recovery.wrapped.slice(2) } }],
    [
      'a cost that would hold up the machine',
      { ...header, passphrase: { ...header.passphrase, cost: { ...cheapCost, memoryKiB: 2e9 } } },
    ],
  ])('%s in its place was altered', (_what, value) => {
    expect(() => headerFrom(value as typeof plain)).toThrowError(expect.objectContaining({ code: 'altered' }) as Error);
  });
});
