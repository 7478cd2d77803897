import { decimal } from '../words/decimal.ts';

/** A place of an axis with what is written there. */
export interface AxisValue {
  readonly value: number;
  readonly text: string;
}

/** Round places of an axis, no more than so many: steps of one, two or five. */
export function axisValues(low: number, high: number, most: number): AxisValue[] {
  const raw = (high - low) / most;
  if (!(raw > 0 && raw < Infinity)) return [];
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 5, 10].map((one) => one * power).find((one) => one >= raw * 0.999)!;
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, at) => {
    const value = Number(((first + at) * step).toPrecision(12));
    return { value, text: decimal(value, decimals) };
  });
}
