import { ExchangeError } from './errors.ts';

/** The bytes of a text. */
export function utf8(text: string): Uint8Array<ArrayBuffer> {
  return new TextEncoder().encode(text);
}

/**
 * The text of bytes; a byte order mark stays in it.
 *
 * @throws {@link ExchangeError} `bad-file` when they are no UTF-8
 */
export function textOf(bytes: Uint8Array, file: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch (cause) {
    throw new ExchangeError('bad-file', { file, expected: 'text in UTF-8', actual: 'other bytes' }, { cause });
  }
}
