import { RecordError } from './errors.ts';
import { type Quantity, siUnits } from './quantities.ts';

/** No sensor gives a value of this size in SI, and the square of a larger one may not be held by a double; ours */
const GREATEST_MAGNITUDE = 1e12;

/**
 * A finite number can still be too large to calculate with.
 *
 * @throws {@link RecordError} `not-finite` at the first one
 */
export function refuseOverflow(
  samples: Float64Array,
  quantity: Quantity,
  rowOf: (index: number) => number,
  column: string,
  file: string | undefined,
): void {
  let index = -1;
  for (let i = 0; i < samples.length && index < 0; i += 1) if (!(Math.abs(samples[i]!) < GREATEST_MAGNITUDE)) index = i;
  if (index < 0) return;
  throw new RecordError('not-finite', {
    ...(file === undefined ? {} : { file }),
    row: rowOf(index),
    column,
    expected: `a number below ${GREATEST_MAGNITUDE.toExponential()} ${siUnits[quantity]}`,
    actual: `one too large for any sensor (${samples[index]!.toExponential(1)})`,
  });
}
