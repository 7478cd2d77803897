/** Even numbers from a seed: mulberry32, by T. Ettinger (public domain). */
export function createRandom(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let word = Math.imul(state ^ (state >>> 15), 1 | state);
    word = (word + Math.imul(word ^ (word >>> 7), 61 | word)) ^ word;
    return ((word ^ (word >>> 14)) >>> 0) / 4294967296;
  };
}

/** A normal number (Box & Muller 1958). */
export function gaussian(random) {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

/** A rotation, rows of a matrix, drawn evenly (Shoemake 1992). */
export function drawRotation(random) {
  const q = [gaussian(random), gaussian(random), gaussian(random), gaussian(random)];
  const size = Math.hypot(...q);
  const [w, x, y, z] = q.map((value) => value / size);
  return [
    [1 - 2 * (y * y + z * z), 2 * (x * y - w * z), 2 * (x * z + w * y)],
    [2 * (x * y + w * z), 1 - 2 * (x * x + z * z), 2 * (y * z - w * x)],
    [2 * (x * z - w * y), 2 * (y * z + w * x), 1 - 2 * (x * x + y * y)],
  ];
}
