import { createHash } from 'node:crypto';
import { expect, test, vi } from 'vitest';
import { sha256Bytes, sha256Text } from '../../../apps/dashboard/src/study/sha256-text.ts';

const bytes = new TextEncoder().encode('ä raise');
const own = createHash('sha256').update(bytes).digest('hex');

test('text and bytes have the SHA-256 that Node finds, with the help of the browser and without', async () => {
  expect(sha256Text('ä raise')).toBe(own);
  expect(await sha256Bytes(bytes)).toBe(own);
  vi.stubGlobal('crypto', {});
  expect(await sha256Bytes(bytes)).toBe(own);
});
