import type { Chance } from './chance.ts';

/** What nobody sees of a tendon: an invented person, with no number of a rule in it. */
export interface InventedLeg {
  readonly place: 'no' | 'mid-portion' | 'insertion';
  /** load that leaves the next morning as it was; two-leg holds are 1 */
  tolerance: number;
  /** share by which a day of loading within it adds to it */
  readonly gain: number;
  /** points of pain for each share of load over it */
  readonly answer: number;
  /** points that are there on any morning */
  ache: number;
  /** points that came from loading and go again, and those that the next morning brings */
  sore: number;
  coming: number;
  /** raises on one leg that this leg can do today without pain to stop it */
  strength: number;
}

/** What a level asks of the tendon, from holds on two legs on; invented [1]. */
const asks = [1, 1.5, 2.2, 2.6, 3.2, 4.2, 4.6];
const within = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));
const painOf = (value: number): number => within(Math.round(value), 0, 10);

/**
 * The load of a session at a level.
 *
 * @param level - of the programme, from 0 on [-]
 * @param times - share of its plain dose [1]
 * @returns in sessions of holds on two legs [1]
 *
 * Source: ours, invented: a course that looks like one, and no claim about tendons
 */
export function askedLoad(level: number, times: number): number {
  return (asks[level] ?? 0) * times;
}

/**
 * Pain in a session of a leg, which is changed by it: it tells its pain at once, and the rest by the next morning.
 *
 * @param leg - see {@link InventedLeg}; changed [-]
 * @param load - of the session, see {@link askedLoad} [1]
 * @param share - of it that is done [1]
 * @param chance - see {@link Chance} [-]
 * @returns worst pain, whole, of 10 [1]
 *
 * Source: ours, invented: a course that looks like one, and no claim about tendons
 */
export function loadLeg(leg: InventedLeg, load: number, share: number, chance: Chance): number {
  const times = load / leg.tolerance;
  if (leg.place !== 'no') leg.coming += Math.max(0, times * (0.6 + 0.4 * share) - 1) * leg.answer;
  leg.tolerance *= times > 1.25 ? 0.985 : 1 + leg.gain * within(times, 0, 1) * share;
  leg.strength += 0.11 * share * within(load / 2, 0.3, 1.2);
  leg.ache = Math.max(0.4, leg.ache - 0.012 * share);
  if (leg.place === 'no') return 0;
  return painOf(leg.ache * 0.6 + leg.sore * 0.7 + 1.6 * times + 0.5 * chance.wobble());
}

/**
 * Pain of a leg in the hours after a session: most of what was felt in it, and the more the next morning will bring of it.
 *
 * @param leg - as the session left it, see {@link loadLeg} [-]
 * @param during - worst pain in the session, of 10 [1]
 * @returns worst pain, whole, of 10 [1]
 *
 * Source: ours, invented: a course that looks like one, and no claim about tendons
 */
export function afterLoad(leg: InventedLeg, during: number): number {
  return leg.place === 'no' ? 0 : painOf(0.6 * during + 0.5 * leg.coming);
}

/**
 * Nothing is given back: over night what a session did comes, and half of what was there goes.
 *
 * @param leg - see {@link InventedLeg}; changed [-]
 *
 * Source: ours, invented: a course that looks like one, and no claim about tendons
 */
export function sleepLeg(leg: InventedLeg): void {
  leg.sore = leg.sore * 0.55 + leg.coming;
  leg.coming = 0;
  leg.tolerance = Math.max(0.7, leg.tolerance);
}

/**
 * What is told of the first steps, stiffness in steps of five minutes.
 *
 * @param leg - see {@link InventedLeg} [-]
 * @param chance - see {@link Chance} [-]
 * @returns pain of 10 and minutes [1, min]
 *
 * Source: ours, invented: a course that looks like one, and no claim about tendons
 */
export function morningOf(leg: InventedLeg, chance: Chance): { pain: number; stiffnessMin: number } {
  if (leg.place === 'no') return { pain: 0, stiffnessMin: 0 };
  const pain = leg.ache + leg.sore;
  return {
    pain: painOf(pain + 0.4 * chance.wobble()),
    stiffnessMin: 5 * Math.max(1, Math.round((3 + 4.5 * pain + 2 * chance.wobble()) / 5)),
  };
}

/** What a visit finds of a leg. */
export interface Found {
  readonly raises: number;
  readonly painDouble: number;
  readonly painSingle: number;
  readonly painHops: number;
  readonly painWalk: number;
  readonly settles: boolean;
  readonly grade: 'low' | 'moderate' | 'high';
}

/**
 * What a clinician finds who looks at a leg: pain stops raises before strength does where the tendon is sore.
 *
 * @param leg - see {@link InventedLeg} [-]
 * @param chance - see {@link Chance} [-]
 * @returns see {@link Found} [-]
 *
 * Source: ours, invented: a course that looks like one, and no claim about tendons
 */
export function lookAt(leg: InventedLeg, chance: Chance): Found {
  if (leg.place === 'no') {
    const raises = Math.floor(leg.strength);
    return { raises, painDouble: 0, painSingle: 0, painHops: 0, painWalk: 0, settles: true, grade: 'low' };
  }
  const sore = leg.ache * 0.8 + leg.sore;
  const hurts = (load: number): number => painOf(sore * 0.7 + (1.4 * load) / leg.tolerance + 0.3 * chance.wobble());
  const [painDouble, painSingle, painHops, painWalk] = [hurts(0.8), hurts(2), hurts(3.2), hurts(0.9)];
  const raises = Math.max(0, Math.floor(leg.strength * within(1.5 - painSingle / 9, 0.2, 1)));
  const grade = sore > 3.4 || leg.sore > 2.4 ? 'high' : sore > 1.7 || leg.sore > 1 ? 'moderate' : 'low';
  return { raises, painDouble, painSingle, painHops, painWalk, settles: leg.sore < 1.5, grade };
}
