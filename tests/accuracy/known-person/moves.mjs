// What a repetition adds to the whitened acceleration, and how much likelier the signal is with it than without.
// The foot turns about the forefoot, so the rise is no multiple of the move: R (sin(pitch + ankle) - sin(rest + ankle)).
// Along one move it is taken as a cubic of the way gone, about the middle of the way.
import { bottoms } from './habits.mjs';
import { filtered } from './signal.mjs';

/** Distance of a trunk sensor behind the axis about which the pelvis tilts [m], as the simulation has it. */
const behindAxisM = 0.05;

/** Body acceleration above which nobody moves [m/s2], and the peak of a minimum-jerk move of unit way and time. */
const greatestAcceleration = 6;
const minimumJerkPeak = 10 / Math.sqrt(3);

/** No repetition is lower than this at the heel [m]. */
const lowestM = 0.03;

/** Step of numerical slopes [s]. */
const slopeS = 1e-4;

const powers = [1, 2, 3];

/** Rise per unit of the powers of (way gone - 1/2), from one pitch above rest to another [m]. */
export function riseByPowers({ ankleLeverM, ankleAngleRad, restPitchRad }, from, to) {
  const angle = restPitchRad + ankleAngleRad + (from + to) / 2;
  const way = to - from;
  return [
    ankleLeverM * Math.cos(angle) * way,
    (-ankleLeverM * Math.sin(angle) * way ** 2) / 2,
    (-ankleLeverM * Math.cos(angle) * way ** 3) / 6,
  ];
}

function bodyRise({ ankleLeverM, ankleAngleRad, restPitchRad }, pitch) {
  const rest = restPitchRad + ankleAngleRad;
  return ankleLeverM * (Math.sin(rest + pitch) - Math.sin(rest));
}

/** Whitened acceleration of the powers of both moves of a repetition, one after the other, and their products. */
export function wavesOf({ upS, holdS, downS }, person, { filter, stepS }, wayGone) {
  const count = Math.ceil((upS + holdS + downS) / stepS) + 1 + filter.length;
  const moves = [
    (timeS) => wayGone(person.upShape, timeS / upS),
    (timeS) => wayGone(person.downShape, (timeS - upS - holdS) / downS),
  ];
  const waves = moves.flatMap((way) =>
    powers.map((power) => {
      const at = (timeS) => (way(timeS) - 0.5) ** power;
      const speed = (timeS) => (at(timeS + slopeS) - at(timeS - slopeS)) / (2 * slopeS);
      const acceleration = Float64Array.from(
        { length: count },
        (_, i) => (speed((i + 0.5) * stepS) - speed((i - 0.5) * stepS)) / stepS,
      );
      return filtered(acceleration, filter);
    }),
  );
  const products = waves.map((one) => waves.map((other) => one.reduce((sum, value, i) => sum + value * other[i], 0)));
  return { waves, products };
}

/** Pitch of the top above rest, of a height drawn and a bottom left. */
function topPitch({ foot }, usual, share, before, quickestS) {
  const wanted = usual * share;
  const possible = (greatestAcceleration * quickestS ** 2) / (minimumJerkPeak * bodyRise(foot, wanted));
  return Math.max(wanted * Math.min(1, possible), before + usual / 2, lowestM / foot.heelLeverM);
}

/** Numbers by which a way is told: what each power of both moves adds, and logarithm of its chance less half its energy. */
export const numbersOfWay = 2 * powers.length + 1;

/**
 * Every way a repetition of one pace can go at one usual height, by the bottom before and the bottom after: the numbers of all
 * heights, one after the other.
 */
export function waysAt(habits, { upS, downS }, products, usual, scale) {
  const { person, heights } = habits;
  const { foot } = person;
  const moves = 2 * powers.length;
  return bottoms.map((beforeShare) =>
    bottoms.map((afterShare) => {
      const numbers = new Float64Array(heights.length * numbersOfWay);
      heights.forEach(({ share, log }, way) => {
        const before = beforeShare * usual;
        const top = topPitch(person, usual, share, before, Math.min(upS, downS));
        const rises = numbers.subarray(way * numbersOfWay, (way + 1) * numbersOfWay);
        rises.set(riseByPowers(foot, before, top));
        rises.set(riseByPowers(foot, top, afterShare * top), powers.length);
        for (let m = 0; m < moves; m++) rises[m] *= scale;
        let energy = 0;
        for (let m = 0; m < moves; m++) {
          for (let n = 0; n < moves; n++) energy += rises[m] * rises[n] * products[m][n];
        }
        rises[moves] = log - energy / 2;
      });
      return numbers;
    }),
  );
}

/** How much of the rise of the body a sensor tells: a pelvis that tilts in phase takes some of it from the trunk [-]. */
export function toldShare(placement, { foot, topPitchRad }, { pelvicTiltRad }) {
  return placement === 'trunk' ? 1 - (behindAxisM * pelvicTiltRad) / bodyRise(foot, topPitchRad) : 1;
}
