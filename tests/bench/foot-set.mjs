/** Seeded even numbers, the same on every run. */
function numbers(seed) {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

/** Sum of twelve even numbers less six: close enough to normal for noise. */
function noise(next) {
  let sum = -6;
  for (let k = 0; k < 12; k += 1) sum += next();
  return sum;
}

const gravity = 9.80665;

/** Smooth step from 0 to 1 with rest at both ends, and its second derivative in units of the duration. */
const smooth = (x) => x * x * x * (10 - 15 * x + 6 * x * x);
const smoothRate = (x) => 30 * x * x * (1 - x) * (1 - x);
const smoothBend = (x) => 60 * x * (1 - 3 * x + 2 * x * x);

/** Pitch of the foot with its first two derivatives at a time; raises of 1 s up, 0.4 s held, 1 s down from 4 s on. */
function pitchAt(timeS, raises) {
  const k = Math.floor((timeS - 4) / 4);
  if (timeS < 4 || k >= raises.length) return [0, 0, 0];
  const size = raises[k];
  const at = timeS - 4 - 4 * k;
  if (at < 1) return [size * smooth(at), size * smoothRate(at), size * smoothBend(at)];
  if (at < 1.4) return [size, 0, 0];
  if (at < 2.4) return [size * smooth(2.4 - at), -size * smoothRate(2.4 - at), size * smoothBend(2.4 - at)];
  return [0, 0, 0];
}

/**
 * Two minutes of a six-axis sensor on a foot at 1000 Hz: 28 raises that fade, white noise, a bias of the gyroscope, a
 * mounting that is turned; with what is true.
 */
export function makeFootSet({ lengthS = 120, rateHz = 1000, leverM = 0.19 } = {}) {
  const next = numbers(11);
  const raises = Array.from({ length: 28 }, (_, k) => (0.62 - 0.006 * k) * (1 + 0.03 * noise(next)));
  const count = lengthS * rateHz;
  const timesS = Float64Array.from({ length: count }, (_, i) => i / rateHz);
  const columns = Array.from({ length: 6 }, () => new Float64Array(count));
  // turned about the vertical by 0.5, then about the new x by 0.3
  const [c1, s1, c2, s2] = [Math.cos(0.5), Math.sin(0.5), Math.cos(0.3), Math.sin(0.3)];
  const rows = [
    [c1, s1, 0],
    [-s1 * c2, c1 * c2, s2],
    [s1 * s2, -c1 * s2, c2],
  ];
  for (let i = 0; i < count; i += 1) {
    const [pitch, rate, bend] = pitchAt(timesS[i], raises);
    const [cos, sin] = [Math.cos(pitch), Math.sin(pitch)];
    // a point 0.12 m behind and 0.05 m above the pivot, on a circle about it
    const [behind, above] = [0.12, 0.05];
    const forward = behind * (sin * bend + cos * rate * rate) + above * (cos * bend - sin * rate * rate);
    const up = behind * (cos * bend - sin * rate * rate) - above * (sin * bend + cos * rate * rate) + gravity;
    const force = [forward * cos - up * sin, 0, forward * sin + up * cos];
    const turn = [0, rate, 0];
    rows.forEach((row, axis) => {
      columns[axis][i] = row[0] * force[0] + row[1] * force[1] + row[2] * force[2] + 0.05 * noise(next);
      columns[3 + axis][i] = row[0] * turn[0] + row[1] * turn[1] + row[2] * turn[2] + 0.005 * noise(next) + 0.01;
    });
  }
  const axes = ['x', 'y', 'z'];
  const channels = columns.map((samples, i) => ({
    quantity: i < 3 ? 'acceleration' : 'angular-velocity',
    axis: axes[i % 3],
    samples,
  }));
  return {
    trace: { groups: [{ timesS, channels }] },
    heelLeverM: leverM,
    truth: raises.map((size, k) => ({ topS: 4 + 4 * k + 1.2, heightM: leverM * Math.sin(size) })),
  };
}
