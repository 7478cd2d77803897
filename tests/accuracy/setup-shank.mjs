import { createRandom, drawRotation, gaussian } from './setup-random.mjs';

/**
 * Specific force of a sensor on the shank while somebody rises on the toes: the shank tilts by 5 to 20 degrees in each
 * raise (common practice, no source), in any mounting, with noise and offset. Sizes are ours.
 */
export function shankTrace(seed) {
  const random = createRandom(seed);
  const between = (low, high) => low + (high - low) * random();
  const rateHz = between(50, 200);
  const tilt = (between(5, 20) * Math.PI) / 180;
  const cycleS = between(1.5, 3);
  const raises = 3 + Math.floor(between(0, 8));
  const quietS = between(1, 4);
  const count = Math.round((2 * quietS + raises * cycleS) * rateHz);
  const mounting = drawRotation(random);
  const offsets = [0, 1, 2].map(() => 0.1 * gaussian(random));
  const noise = between(0.05, 0.4);
  const axes = [0, 1, 2].map(() => new Float64Array(count));
  const timesS = Float64Array.from({ length: count }, (_, i) => i / rateHz);
  for (let i = 0; i < count; i++) {
    const at = (timesS[i] - quietS) / cycleS;
    const moves = at > 0 && at < raises;
    const share = moves ? (1 - Math.cos(2 * Math.PI * at)) / 2 : 0;
    const rise = moves ? 0.04 * ((2 * Math.PI) / cycleS) ** 2 * Math.cos(2 * Math.PI * at) : 0;
    const angle = tilt * share;
    const up = 9.80665 + rise;
    const own = [-up * Math.sin(angle), 0, up * Math.cos(angle)];
    for (let axis = 0; axis < 3; axis++) {
      const turned = own.reduce((sum, value, k) => sum + mounting[axis][k] * value, 0);
      axes[axis][i] = turned + offsets[axis] + noise * gaussian(random);
    }
  }
  const channels = ['x', 'y', 'z'].map((axis, k) => ({ quantity: 'acceleration', axis, samples: axes[k] }));
  return { groups: [{ timesS, channels }] };
}
