import { expect, test } from 'vitest';
import { isWholeByPlatform } from '../../../packages/storage/src/keys/platform-hash.ts';
import { isWhole, seal } from '../../../packages/storage/src/seal.ts';

test('a short and a long document are whole as they were sealed, and not once anything of them is another', async () => {
  for (const length of [0, 10, 1000, 4000, 5000, 50_000]) {
    const document = {
      kind: 'k',
      schema: 1,
      about: null,
      author: 'a',
      at: '2026-01-01',
      body: { text: 'é'.repeat(length) },
    };
    const kept = { ...seal(document), sequence: 1 };
    const altered = { ...kept, body: { text: `${'é'.repeat(length)}x` } };
    expect([await isWholeByPlatform(kept), isWhole(kept)]).toEqual([true, true]);
    expect([await isWholeByPlatform(altered), isWhole(altered)]).toEqual([false, false]);
    expect(await isWholeByPlatform({ ...kept, author: 'b' })).toBe(false);
  }
});
