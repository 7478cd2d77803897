import { RecordError } from './errors.ts';
import { type Gap, listGaps, medianIntervalS } from './gaps.ts';
import type { Quantity } from './quantities.ts';

/** Slowest and fastest median rates that are accepted [Hz]; ours: below 10 Hz the quickest raise has no shape. */
const LEAST_RATE_HZ = 10;
const GREATEST_RATE_HZ = 2000;
/** A clock may be off by this much before its rate counts as outside; ours [-] */
const RATE_TOLERANCE = 0.01;
/** Fewest samples of a recording, a second at the slowest rate; ours */
const LEAST_SAMPLES = 10;

/** How a refusal names the place of a sample. */
export interface TimelinePlace {
  readonly file?: string;
  readonly column?: string;
  readonly path?: string;
  readonly rowOf?: (sampleIndex: number) => number;
}

/** Refuses times that do not rise. */
function checkOrder(timesS: Float64Array, place: TimelinePlace): void {
  for (let i = 1; i < timesS.length; i += 1) {
    const step = timesS[i]! - timesS[i - 1]!;
    if (step > 0) continue;
    throw new RecordError(step === 0 ? 'time-repeated' : 'time-backwards', {
      ...fileOf(place),
      ...(place.rowOf === undefined ? {} : { row: place.rowOf(i) }),
      ...columnOf(place),
      expected: `a time after ${timesS[i - 1]} s`,
      actual: step === 0 ? 'the same time again' : `${timesS[i]} s`,
    });
  }
}

function fileOf({ file }: TimelinePlace): { file?: string } {
  return file === undefined ? {} : { file };
}

function columnOf({ column, path }: TimelinePlace): { column?: string; path?: string } {
  return { ...(column === undefined ? {} : { column }), ...(path === undefined ? {} : { path }) };
}

/**
 * The median sampling interval of times that a recording may have [s].
 *
 * @throws {@link RecordError} `time-backwards`, `time-repeated`, `too-few-samples`, `rate-too-low`, `rate-too-high`
 */
export function checkTimeline(timesS: Float64Array, place: TimelinePlace = {}): number {
  checkOrder(timesS, place);
  if (timesS.length < LEAST_SAMPLES) {
    throw new RecordError('too-few-samples', {
      ...fileOf(place),
      expected: `at least ${LEAST_SAMPLES} samples`,
      actual: `${timesS.length}`,
    });
  }
  const medianS = medianIntervalS(timesS);
  const rateHz = 1 / medianS;
  const tooSlow = rateHz < LEAST_RATE_HZ * (1 - RATE_TOLERANCE);
  if (tooSlow || rateHz > GREATEST_RATE_HZ * (1 + RATE_TOLERANCE)) {
    const hint = tooSlow
      ? 'too slow to judge a repetition, or the times are in another unit'
      : 'check the unit of the times';
    throw new RecordError(tooSlow ? 'rate-too-low' : 'rate-too-high', {
      ...fileOf(place),
      ...columnOf(place),
      expected: `${LEAST_RATE_HZ} to ${GREATEST_RATE_HZ} samples per second (median)`,
      actual: `${Number(rateHz.toPrecision(4))} (${hint})`,
    });
  }
  return medianS;
}

/**
 * Gaps in the times of channels [s]. Somebody who counts by hand taps when there is something to count: such instants have to
 * rise, and have neither a rate nor gaps.
 *
 * @throws {@link RecordError} as {@link checkTimeline}
 */
export function gapsIn(
  timesS: Float64Array,
  channels: readonly { readonly quantity: Quantity }[],
  place: TimelinePlace = {},
): Gap[] {
  if (!channels.every(({ quantity }) => quantity === 'tap')) return listGaps(timesS, checkTimeline(timesS, place));
  checkOrder(timesS, place);
  return [];
}
