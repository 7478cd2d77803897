import { inDigits } from '../words/in-digits.ts';

/** A number of bytes in the largest unit that leaves a number of 1 or more, powers of 1000 (IEC 80000-13: kB, MB, GB). */
export function sizeWords(bytes: number): string {
  const units = ['bytes', 'kB', 'MB', 'GB'];
  let [value, at] = [bytes, 0];
  while (value >= 999.5 && at < units.length - 1) {
    value /= 1000;
    at += 1;
  }
  return `${inDigits(at === 0 || value >= 100 ? value.toFixed(0) : value.toPrecision(2))} ${units[at]}`;
}
