import { SensorError } from '@surae/sensors';
import { SOURCE_ERRORS } from '@surae/shared';
import { DeviceError } from '../devices/device-error.ts';
import { deviceWords } from '../devices/device-words.ts';

/** Why a source gives no samples, and what to do about it; an error without words says what it says of itself. */
export function sourceWords(error: Error): string {
  if (error instanceof DeviceError || error.cause instanceof DeviceError) return deviceWords(error).text;
  if (error instanceof SensorError && error.code in SOURCE_ERRORS) {
    return SOURCE_ERRORS[error.code as keyof typeof SOURCE_ERRORS].text;
  }
  return error.message;
}
