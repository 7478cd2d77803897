import { canonicalJson } from '@surae/analysis';
import { sha256Hex } from '@surae/records';

/** SHA-256 of a value as canonical JSON: keys in order, no spaces, UTF-8. */
export function canonicalHash(value: unknown): string {
  // the round trip leaves plain JSON, and says so to the compiler
  const plain = JSON.parse(JSON.stringify(value)) as Parameters<typeof canonicalJson>[0];
  return sha256Hex(new TextEncoder().encode(canonicalJson(plain)));
}
