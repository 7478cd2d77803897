const DOTS = [
  [0x01, 0x08],
  [0x02, 0x10],
  [0x04, 0x20],
  [0x40, 0x80],
] as const;

/**
 * A trace as characters: for each place the range of the samples that fall on it, so that no peak is lost. A place without a
 * sample stays empty, as a gap is.
 *
 * @param values - samples in order, NaN where one is missing
 */
export function tracePicture(
  values: Float64Array,
  { width, height, drawsBlocks }: { readonly width: number; readonly height: number; readonly drawsBlocks: boolean },
): string[] {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    if (value < least) least = value;
    if (value > most) most = value;
  }
  if (!(least <= most)) return [];
  const labels = [most, least].map((value) => String(Number(value.toPrecision(4))));
  const margin = Math.max(...labels.map((label) => label.length)) + 1;
  const columns = Math.max(10, width - margin - 1);
  const [across, down] = drawsBlocks ? [2, 4] : [1, 1];
  const grid = Array.from({ length: height }, () => new Uint8Array(columns));
  const levels = height * down - 1;
  const levelOf = (value: number): number =>
    most === least ? 0 : Math.round(((most - value) / (most - least)) * levels);
  const places = columns * across;
  for (let place = 0; place < places; place += 1) {
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    const from = Math.floor((place * values.length) / places);
    const to = Math.max(from + 1, Math.floor(((place + 1) * values.length) / places));
    for (let i = from; i < to && i < values.length; i += 1) {
      const value = values[i]!;
      if (value < low) low = value;
      if (value > high) high = value;
    }
    if (low > high) continue;
    for (let level = levelOf(high); level <= levelOf(low); level += 1) {
      const row = grid[Math.floor(level / down)]!;
      row[Math.floor(place / across)]! |= drawsBlocks ? DOTS[level % 4]![place % 2]! : 1;
    }
  }
  return grid.map((row, i) => {
    const label = i === 0 ? labels[0]! : i === height - 1 ? labels[1]! : '';
    const signs = [...row].map((bits) => (bits === 0 ? ' ' : drawsBlocks ? String.fromCharCode(0x2800 + bits) : '*'));
    return `${label.padStart(margin - 1)} ${signs.join('')}`.trimEnd();
  });
}
