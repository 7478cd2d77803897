import { typedNumber } from '../journey/person-form.ts';

/** Hours of a day as they were typed; undefined for what are none. Zero is told, and is not the same as nothing. */
export function hoursIn(text: string): number | undefined {
  const value = typedNumber(text) ?? undefined;
  return value !== undefined && value >= 0 && value <= 24 ? value : undefined;
}
