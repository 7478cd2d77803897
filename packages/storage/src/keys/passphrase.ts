import { StorageError } from '../errors.ts';
import { type Bytes, importKey } from './envelope.ts';

/** What guessing one passphrase costs. */
export interface PassphraseCost {
  readonly memoryKiB: number;
  readonly passes: number;
  readonly lanes: number;
}

/** RFC 9106, section 4, second recommended option: 64 MiB and three passes; one lane, because a page has one thread for it. */
export const passphraseCost: PassphraseCost = { memoryKiB: 65_536, passes: 3, lanes: 1 };

/** More than anything that was ever written: a store that asks for more was altered. */
const mostCost: PassphraseCost = { memoryKiB: 1_048_576, passes: 20, lanes: 4 };

/** Signs that a passphrase has at least; ours. */
export const leastPassphraseLength = 12;

/** One text for one passphrase, however the keyboard composed its letters (Unicode NFKC). */
function normal(passphrase: string): string {
  return passphrase.normalize('NFKC');
}

/** Refuses a passphrase that is too short to be chosen. */
export function checkPassphrase(passphrase: string): void {
  const { length } = [...normal(passphrase)];
  if (length < leastPassphraseLength) {
    throw new StorageError(
      'short-passphrase',
      `A passphrase has at least ${leastPassphraseLength} signs; this one has ${length}.`,
    );
  }
}

/** Whether a cost is one that may be asked for. */
export function isCost(cost: PassphraseCost): boolean {
  const { memoryKiB, passes, lanes } = cost;
  const within = (value: number, most: number): boolean => Number.isInteger(value) && value >= 1 && value <= most;
  return (
    within(lanes, mostCost.lanes) &&
    within(passes, mostCost.passes) &&
    within(memoryKiB, mostCost.memoryKiB) &&
    memoryKiB >= 8 * lanes
  );
}

/** The key of a passphrase, by Argon2id (RFC 9106). */
export async function passphraseKey(passphrase: string, salt: Bytes, cost: PassphraseCost): Promise<CryptoKey> {
  // it is loaded when a passphrase is typed, and not with the first page
  const { argon2id } = await import('hash-wasm');
  const raw = await argon2id({
    password: normal(passphrase),
    salt,
    parallelism: cost.lanes,
    iterations: cost.passes,
    memorySize: cost.memoryKiB,
    hashLength: 32,
    outputType: 'binary',
  });
  const key = await importKey(raw as Bytes);
  raw.fill(0);
  return key;
}
