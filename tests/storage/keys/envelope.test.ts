import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js';
import { describe, expect, test, vi } from 'vitest';
import {
  type Bytes,
  decrypt,
  decryptBytes,
  encrypt,
  importKey,
  random,
} from '../../../packages/storage/src/keys/envelope.ts';

const hex = (text: string): Bytes => Uint8Array.from(hexToBytes(text.replaceAll(' ', '')));

describe('AES-256-GCM', () => {
  // D. McGrew, J. Viega: The Galois/Counter Mode of Operation (GCM), submission to NIST, appendix B, test cases 14 and 16
  const cases = [
    {
      key: '00'.repeat(32),
      nonce: '00'.repeat(12),
      more: '',
      plain: '00'.repeat(16),
      sealed: 'cea7403d4d606b6e074ec5d3baf39d18',
      tag: 'd0d1c8a799996bf0265b98b5d48ab919',
    },
    {
      key: 'feffe9928665731c6d6a8f9467308308feffe9928665731c6d6a8f9467308308',
      nonce: 'cafebabefacedbaddecaf888',
      more: 'feedfacedeadbeeffeedfacedeadbeefabaddad2',
      plain:
        'd9313225f88406e5a55909c5aff5269a86a7a9531534f7da2e4c303d8a318a721c3c0c95956809532fcf0e2449a6b525b16aedf5aa0de657ba637b39',
      sealed:
        '522dc1f099567d07f47f37a32a84427d643a8cdcbfe5c0c97598a2bd2555d1aa8cb08e48590dbb3da7b08b1056828838c5f61e6393ba7a0abcc9f662',
      tag: '76fc6ece0f4e1768cddf8853bb2d551b',
    },
  ];

  test.each(cases)(
    'opens what the published case with the key $key gives',
    async ({ key, nonce, more, plain, sealed, tag }) => {
      const opened = await decryptBytes(await importKey(hex(key)), hex(nonce + sealed + tag), hex(more));
      expect(opened && bytesToHex(opened)).toBe(plain);
    },
  );
});

describe('an envelope', () => {
  const plain = hex('00112233445566');
  const belongsTo = ['document', 1, 'a', null];

  test('has a random nonce of 96 bits and a tag of 128, and opens under its key for what it belongs to', async () => {
    const key = await importKey(random(32));
    const [one, two] = [await encrypt(key, plain, belongsTo), await encrypt(key, plain, belongsTo)];
    expect(one).toHaveLength(12 + plain.length + 16);
    expect(bytesToHex(one.slice(0, 12))).not.toBe(bytesToHex(two.slice(0, 12)));
    expect(await decrypt(key, one, belongsTo)).toEqual(plain);
  });

  test('opens for nothing else, under no other key, and not with any bit turned', async () => {
    const [key, other] = [await importKey(random(32)), await importKey(random(32))];
    const sealed = await encrypt(key, plain, belongsTo);
    for (const wrong of [
      ['document', 1, 'a', 'null'],
      ['document', 1, 'a'],
      ['document,1', 'a', null],
      ['document', 2, 'a', null],
    ]) {
      expect(await decrypt(key, sealed, wrong)).toBeUndefined();
    }
    expect(await decrypt(other, sealed, belongsTo)).toBeUndefined();
    for (let bit = 0; bit < 8 * sealed.length; bit += 1) {
      const turned = sealed.slice();
      turned[bit >> 3] ^= 1 << (bit & 7);
      expect(await decrypt(key, turned, belongsTo)).toBeUndefined();
    }
    for (let length = 0; length < sealed.length; length += 1) {
      expect(await decrypt(key, sealed.slice(0, length), belongsTo)).toBeUndefined();
    }
  });

  test('cannot be made where there is no encryption, and says so', async () => {
    const key = await importKey(random(32));
    vi.stubGlobal('crypto', { getRandomValues: (bytes: Uint8Array) => bytes });
    await expect(encrypt(key, plain, belongsTo)).rejects.toMatchObject({ name: 'StorageError', code: 'unavailable' });
  });

  test('keeps its key in: it cannot be taken out again', async () => {
    const key = await importKey(random(32));
    await expect(crypto.subtle.exportKey('raw', key)).rejects.toThrow();
  });
});
