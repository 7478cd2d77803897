/** A line to be drawn: times and values of the same length. A value that is no number is a hole: the line ends before it. */
export interface Line {
  readonly timesS: Float64Array;
  readonly values: Float64Array;
}

export interface TimeWindow {
  readonly fromS: number;
  readonly toS: number;
}

/** First place in rising times that is not before a time. */
function firstNotBefore(timesS: Float64Array, timeS: number): number {
  let low = 0;
  let high = timesS.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((timesS[middle] ?? Infinity) < timeS) low = middle + 1;
    else high = middle;
  }
  return low;
}

/**
 * A line for a picture that is so many columns wide: of each column the least and the greatest sample, at their own times,
 * the earlier one first. No peak is lost, and no more than two points a column are drawn, but for those at holes, which are
 * kept as they are. The window is half-open.
 */
export function minMaxLine({ timesS, values }: Line, { fromS, toS }: TimeWindow, columns: number): Line {
  const first = firstNotBefore(timesS, fromS);
  const end = firstNotBefore(timesS, toS);
  if (end - first <= 2 * columns) return { timesS: timesS.slice(first, end), values: values.slice(first, end) };
  const places: number[] = [];
  let next = first;
  for (let column = 0; column < columns && next < end; column++) {
    const endS = fromS + ((column + 1) * (toS - fromS)) / columns;
    const from = next;
    while (next < end && (column === columns - 1 || (timesS[next] ?? Infinity) < endS)) next++;
    pushExtremes(places, values, from, next);
  }
  const pick = (column: Float64Array): Float64Array => Float64Array.from(places, (place) => column[place] ?? 0);
  return { timesS: pick(timesS), values: pick(values) };
}

/** Adds the places of the least and the greatest value of a stretch, in the order of their times; of each part where holes part it. */
function pushExtremes(places: number[], values: Float64Array, from: number, to: number): void {
  let least = -1;
  let most = -1;
  const close = (): void => {
    if (least >= 0) places.push(...(least === most ? [least] : [Math.min(least, most), Math.max(least, most)]));
    least = -1;
    most = -1;
  };
  for (let place = from; place < to; place++) {
    const value = values[place] ?? 0;
    if (Number.isNaN(value)) {
      close();
      places.push(place);
      continue;
    }
    if (least < 0 || value < (values[least] ?? 0)) least = place;
    if (most < 0 || value > (values[most] ?? 0)) most = place;
  }
  close();
}
