import type { PictureLine } from './messages.ts';

/** Spans of a picture: about two points a pixel of the widest page. */
const SPANS = 1200;

/** The least and the greatest value of each span of rows, in their order, so that no peak is lost and a gap stays one. */
export function thinned(times: Float64Array, values: Float64Array): PictureLine {
  if (values.length <= 2 * SPANS) return { times: times.slice(), values: values.slice() };
  const out: [number, number][] = [];
  for (let span = 0; span < SPANS; span += 1) {
    const from = Math.floor((span * values.length) / SPANS);
    const to = Math.floor(((span + 1) * values.length) / SPANS);
    let [least, most] = [-1, -1];
    for (let i = from; i < to; i += 1) {
      if (Number.isNaN(values[i]!)) continue;
      if (least < 0 || values[i]! < values[least]!) least = i;
      if (most < 0 || values[i]! > values[most]!) most = i;
    }
    if (least < 0) out.push([times[from]!, Number.NaN]);
    else
      for (const i of [...new Set([Math.min(least, most), Math.max(least, most)])]) out.push([times[i]!, values[i]!]);
  }
  return { times: Float64Array.from(out, ([time]) => time), values: Float64Array.from(out, ([, value]) => value) };
}
