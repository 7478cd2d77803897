/**
 * Displacement from rest to rest: acceleration integrated twice, with speed and way zero at both ends.
 *
 * A constant and a linear error of the acceleration are chosen so that both conditions hold exactly; the measured signal
 * alone cannot tell a bias of 1 N from a rise of centimetres.
 *
 * @param acceleration - upward acceleration on a regular grid from bottom to bottom, n >= 3 [m/s2]
 * @param sampleRateHz - of the grid, > 0 [Hz]
 * @returns way above the bottom, 0 at both ends [m]
 *
 * Source: zero net impulse between two instants of rest, e.g. Cavagna (1975), J Appl Physiol 39:174-179; linear part ours
 */
export function riseBetweenRests(acceleration: Float64Array, sampleRateHz: number): Float64Array {
  const n = acceleration.length;
  const dt = 1 / sampleRateHz;
  const way = integrateTwice((i) => acceleration[i], n, dt);
  const constant = integrateTwice(() => 1, n, dt);
  const linear = integrateTwice((i) => i / (n - 1), n, dt);
  const determinant = constant.speed * linear.last - linear.speed * constant.last;
  if (n < 3 || determinant === 0) return new Float64Array(n);
  const b = (way.speed * linear.last - linear.speed * way.last) / determinant;
  const c = (constant.speed * way.last - way.speed * constant.last) / determinant;
  return way.way.map((value, i) => value - b * constant.way[i] - c * linear.way[i]);
}

function integrateTwice(
  at: (i: number) => number,
  n: number,
  dt: number,
): { way: Float64Array; speed: number; last: number } {
  const way = new Float64Array(n);
  let speed = 0;
  for (let i = 1; i < n; i++) {
    const next = speed + ((at(i - 1) + at(i)) / 2) * dt;
    way[i] = way[i - 1] + ((speed + next) / 2) * dt;
    speed = next;
  }
  return { way, speed, last: way[n - 1] };
}
