/** A line to be drawn: times and values of the same length. */
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
 * the earlier one first. No peak is lost, and no more than two points a column are drawn. The window is half-open.
 */
export function minMaxLine({ timesS, values }: Line, { fromS, toS }: TimeWindow, columns: number): Line {
  const first = firstNotBefore(timesS, fromS);
  const end = firstNotBefore(timesS, toS);
  if (end - first <= 2 * columns) return { timesS: timesS.slice(first, end), values: values.slice(first, end) };
  const places: number[] = [];
  let next = first;
  for (let column = 0; column < columns && next < end; column++) {
    const endS = fromS + ((column + 1) * (toS - fromS)) / columns;
    let least = next;
    let most = next;
    const from = next;
    while (next < end && (column === columns - 1 || (timesS[next] ?? Infinity) < endS)) {
      if ((values[next] ?? 0) < (values[least] ?? 0)) least = next;
      if ((values[next] ?? 0) > (values[most] ?? 0)) most = next;
      next++;
    }
    if (next === from) continue;
    if (least === most) places.push(least);
    else places.push(Math.min(least, most), Math.max(least, most));
  }
  const pick = (column: Float64Array): Float64Array => Float64Array.from(places, (place) => column[place] ?? 0);
  return { timesS: pick(timesS), values: pick(values) };
}
