import { SensorError } from '@surae/sensors';
import { DEVICE_ERRORS, SOURCE_ERRORS } from '@surae/shared';
import { StorageError } from '@surae/storage';
import { DeviceError } from '../devices/device-error.ts';
import { deviceWords } from '../devices/device-words.ts';
import { storeWords } from './store-words.ts';

/**
 * Why a source gives no samples, or why nothing of it could be kept, and what to do about it. A refusal of ours without a cause says
 * what it says of itself, which is a sentence.
 */
export function sourceWords(error: Error): string {
  if (error instanceof DeviceError || error.cause instanceof DeviceError) return deviceWords(error).text;
  if (error instanceof StorageError) return storeWords(error);
  if (!(error instanceof SensorError)) return DEVICE_ERRORS.failed.text;
  if (error.code in SOURCE_ERRORS) return SOURCE_ERRORS[error.code as keyof typeof SOURCE_ERRORS].text;
  // no device said anything: the time to connect was over
  return error.code === 'not-connected' && error.cause !== undefined ? DEVICE_ERRORS['no-answer'].text : error.message;
}
