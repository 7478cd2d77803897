import { hash } from 'node:crypto';

/** SHA-256 in lower-case hexadecimal. */
export function sha256(text: string | Uint8Array): string {
  return hash('sha256', text);
}
