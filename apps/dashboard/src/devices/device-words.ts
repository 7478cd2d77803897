import { DEVICE_ERRORS, type Sentence } from '@surae/shared';
import { DeviceError, type DeviceErrorCode } from './device-error.ts';

/** A new code does not compile until it has words. */
const words: Readonly<Record<DeviceErrorCode, Sentence>> = DEVICE_ERRORS;

/** What to say when a device gives nothing, and what to do about it; an error around one of ours says what that one says. */
export function deviceWords(error: unknown): Sentence {
  if (error instanceof DeviceError) return words[error.code];
  return error instanceof Error && error.cause !== undefined ? deviceWords(error.cause) : words.failed;
}
