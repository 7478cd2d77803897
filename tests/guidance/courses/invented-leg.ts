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

/** What a level asks of the tendon, from holds on two legs on. */
const asks = [1, 1.5, 2.2, 2.6, 3.2, 4.2, 4.6];
const within = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));
const painOf = (value: number): number => within(Math.round(value), 0, 10);

/** The load of a session at a level, so many shares over or under its plain dose. */
export function askedLoad(level: number, times: number): number {
  return (asks[level] ?? 0) * times;
}

/** One session of a leg: it tells its pain at once, and the rest by the next morning. */
export function loadLeg(leg: InventedLeg, load: number, share: number, chance: Chance): number {
  const times = load / leg.tolerance;
  if (leg.place !== 'no') leg.coming += Math.max(0, times * (0.6 + 0.4 * share) - 1) * leg.answer;
  leg.tolerance *= times > 1.25 ? 0.985 : 1 + leg.gain * within(times, 0, 1) * share;
  leg.strength += 0.11 * share * within(load / 2, 0.3, 1.2);
  leg.ache = Math.max(0.4, leg.ache - 0.012 * share);
  if (leg.place === 'no') return 0;
  return painOf(leg.ache * 0.6 + leg.sore * 0.7 + 1.6 * times + 0.5 * chance.wobble());
}

/** Over night what a session did comes, and half of what was there goes. */
export function sleepLeg(leg: InventedLeg): void {
  leg.sore = leg.sore * 0.55 + leg.coming;
  leg.coming = 0;
  leg.tolerance = Math.max(0.7, leg.tolerance);
}

/** What is told of the first steps, stiffness in steps of five minutes. */
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

/** Looks at a leg as a clinician would: pain stops raises before strength does where the tendon is sore. */
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
