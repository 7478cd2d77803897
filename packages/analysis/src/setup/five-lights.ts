import { steadyShare } from '../movement/gravity-direction.ts';
import { dot, unit, type Vector } from '../movement/orientation.ts';
import { mean } from '../signal/moments.ts';
import { median, quantile } from '../signal/order-statistics.ts';
import type { ChannelGroup, Quantity, Side, Trace } from '../trace.ts';
import type { LightRule } from './setup-settings.ts';
import { stillLevel } from './still-level.ts';

/** Where a sensor sits, and whether it is a cell in line with the pull. */
export type SetupPlacement = 'heel' | 'foot' | 'trunk' | 'platform' | 'inline';

/** The lights in the order in which they are shown. */
export const LIGHT_NAMES = ['connected', 'right-way-up', 'zero', 'side', 'mass'] as const;

export type LightName = (typeof LIGHT_NAMES)[number];

/** Why a light is not lit, or what lets it be lit. Each has one sentence, and each that fails has one fix. */
export type LightReason =
  | 'samples-arrive'
  | 'nothing-arrives'
  | 'silent'
  | 'flat'
  | 'wrong-channels'
  | 'too-early'
  | 'stands-right'
  | 'any-way'
  | 'upside-down'
  | 'tilted'
  | 'gravity-size'
  | 'no-steady-gravity'
  | 'pulls-negative'
  | 'stands-negative'
  | 'polarity-unknown'
  | 'heel-unknown'
  | 'heel-negative'
  | 'zero-holds'
  | 'rests-still'
  | 'no-zero'
  | 'zero-old'
  | 'not-still'
  | 'side-agrees'
  | 'side-missing'
  | 'side-differs'
  | 'mass-agrees'
  | 'mass-told'
  | 'mass-not-needed'
  | 'mass-missing'
  | 'mass-range'
  | 'mass-old'
  | 'mass-differs'
  | 'nobody-stands';

/** What one light says. */
export interface Light {
  readonly name: LightName;
  /** yes: lit; no: failing; cannot tell: neither */
  readonly state: 'lit' | 'failing' | 'cannot-tell';
  readonly reason: LightReason;
  /** figures that the sentence names [SI, or days] */
  readonly figures: Readonly<Record<string, number>>;
}

/** What was told of sensor, leg and person; null is what nobody told. */
export interface LightFacts {
  readonly placement: SetupPlacement;
  /** age of the newest sample; null when none ever came [s] */
  readonly silentS: number | null;
  /** the axis of the sensor that points up when it is worn right, unit length [-] */
  readonly upAxis: Vector | null;
  /** which way the reading goes under load, where it is known */
  readonly sign: 1 | -1 | null;
  /** the last zero of this sensor and its age; null for sensors without and where none was taken [N or m, s] */
  readonly zero: { readonly level: number; readonly u: number; readonly ageS: number } | null;
  readonly side: { readonly wanted: Side; readonly told: Side | null; readonly ofSensor: Side | null };
  readonly mass: { readonly kg: number | null; readonly ageDays: number | null; readonly needed: boolean };
  readonly gravityMps2: number;
}

type Answer = Omit<Light, 'name'>;

const lit = (reason: LightReason, figures: Light['figures'] = {}): Answer => ({ state: 'lit', reason, figures });
const failing = (reason: LightReason, figures: Light['figures'] = {}): Answer => ({
  state: 'failing',
  reason,
  figures,
});
const open = (reason: LightReason, figures: Light['figures'] = {}): Answer => ({
  state: 'cannot-tell',
  reason,
  figures,
});

const MAIN: Readonly<Record<SetupPlacement, readonly Quantity[]>> = {
  heel: ['heel-height'],
  foot: ['acceleration'],
  trunk: ['acceleration'],
  platform: ['force'],
  inline: ['force', 'torque'],
};

interface Seen {
  readonly group: ChannelGroup;
  readonly axes: readonly Float64Array[];
}

function seen(trace: Trace, quantities: readonly Quantity[]): Seen | undefined {
  for (const group of trace.groups) {
    for (const quantity of quantities) {
      const axes = group.channels.filter((channel) => channel.quantity === quantity).map(({ samples }) => samples);
      const isWhole = quantity === 'acceleration' ? axes.length === 3 : axes.length > 0;
      if (isWhole && group.timesS.length >= 2) return { group, axes };
    }
  }
  return undefined;
}

function connected(found: Seen | undefined, facts: LightFacts, rule: LightRule): Answer {
  const { silentS } = facts;
  if (silentS === null) return failing('nothing-arrives');
  if (silentS > rule.silentS) return failing('silent', { seconds: silentS });
  if (found === undefined) return failing('wrong-channels');
  const { timesS } = found.group;
  const spanS = timesS[timesS.length - 1] - timesS[0];
  if (spanS < rule.level.leastS) return open('too-early', { seconds: spanS });
  const isFlat = found.axes.every((axis) => axis.every((value) => value === axis[0]));
  // a string or an empty cell of few bits may well stand on one step; an accelerometer never does
  if (isFlat && found.axes.length === 3) return failing('flat');
  return lit('samples-arrive', { rate: (timesS.length - 1) / spanS });
}

/** Samples of the newest stretch that is asked for, as one mean vector. */
function meanVector(axes: readonly Float64Array[]): Vector {
  return [mean(axes[0]), mean(axes[1]), mean(axes[2])];
}

function gravityWay({ group, axes }: Seen, facts: LightFacts, rule: LightRule): Answer {
  const size = median(Float64Array.from(axes[0], (x, i) => Math.hypot(x, axes[1][i], axes[2][i])));
  const share = size / facts.gravityMps2;
  if (share < rule.gravityLeast || share > rule.gravityMost) return failing('gravity-size', { size });
  const { timesS } = group;
  const spanS = timesS[timesS.length - 1] - timesS[0];
  const inWindow = Math.max(2, Math.round((timesS.length - 1) / Math.max(1, spanS)));
  if (steadyShare([axes[0], axes[1], axes[2]], inWindow, rule.tiltMostRad) < rule.steadyLeast)
    return open('no-steady-gravity');
  const up = unit(meanVector(axes));
  if (up === undefined || facts.upAxis === null) return lit('any-way');
  const angle = Math.acos(Math.min(1, Math.max(-1, dot(up, facts.upAxis))));
  const figures = { degrees: (angle * 180) / Math.PI };
  if (angle <= rule.tiltMostRad) return lit('stands-right', figures);
  return angle >= Math.PI - rule.tiltMostRad ? failing('upside-down', figures) : failing('tilted', figures);
}

function forceWay({ axes }: Seen, facts: LightFacts, rule: LightRule): Answer {
  const newest = median(axes[0]) - (facts.zero?.level ?? 0);
  if (facts.placement === 'platform') {
    const weight = facts.mass.kg === null ? null : facts.mass.kg * facts.gravityMps2;
    const least = rule.standsShare * (weight ?? rule.massLeastKg * facts.gravityMps2);
    if (newest <= -least) return failing('stands-negative', { force: newest });
    if (newest >= least) return lit('stands-right');
  }
  if (facts.sign === null) return open('polarity-unknown');
  return facts.sign > 0 ? lit('stands-right') : failing('pulls-negative');
}

function rightWayUp(found: Seen | undefined, facts: LightFacts, rule: LightRule): Answer {
  if (found === undefined) return open('too-early', { seconds: 0 });
  switch (facts.placement) {
    case 'foot':
    case 'trunk':
      return gravityWay(found, facts, rule);
    case 'heel':
      // a string has no up of its own: which way it goes shows in the first raise
      if (facts.sign === null) return open('heel-unknown');
      return facts.sign > 0 ? lit('stands-right') : failing('heel-negative');
    case 'platform':
    case 'inline':
      return forceWay(found, facts, rule);
  }
}

function restsStill(trace: Trace, { group, axes }: Seen, facts: LightFacts, rule: LightRule): Answer {
  const levels = axes.map((samples) => stillLevel({ timesS: group.timesS, samples }, rule.level));
  if (levels.some((level) => level === null)) return open('too-early', { seconds: 0 });
  const range = Math.hypot(...levels.map((level) => level!.range));
  if (facts.placement === 'heel') {
    return range <= rule.stringMostM ? lit('rests-still') : failing('not-still', { range });
  }
  const wander = range / facts.gravityMps2;
  const turning = seen(trace, ['angular-velocity']);
  const turn = turning === undefined ? 0 : Math.hypot(...turning.axes.map((axis) => mean(axis)));
  return wander <= rule.wanderMostRad && turn <= rule.turnMostRadps
    ? lit('rests-still')
    : failing('not-still', { range: wander });
}

function zero(trace: Trace, found: Seen | undefined, facts: LightFacts, rule: LightRule): Answer {
  if (found === undefined) return open('too-early', { seconds: 0 });
  if (facts.placement !== 'platform' && facts.placement !== 'inline') return restsStill(trace, found, facts, rule);
  if (facts.zero === null) return failing('no-zero');
  if (facts.zero.ageS > rule.zeroOldS) return failing('zero-old', { minutes: facts.zero.ageS / 60 });
  return lit('zero-holds', { level: facts.zero.level, u: facts.zero.u });
}

function sideOf({ side }: LightFacts): Answer {
  const { wanted, told, ofSensor } = side;
  if (ofSensor !== null) return ofSensor === wanted ? lit('side-agrees') : failing('side-differs');
  if (told === null) return failing('side-missing');
  return told === wanted ? lit('side-agrees') : failing('side-differs');
}

function massOf(found: Seen | undefined, facts: LightFacts, rule: LightRule): Answer {
  const { kg, ageDays, needed } = facts.mass;
  if (kg === null) return needed ? failing('mass-missing') : lit('mass-not-needed');
  if (kg < rule.massLeastKg || kg > rule.massMostKg) return failing('mass-range', { told: kg });
  if (ageDays !== null && ageDays > rule.massOldDays) return failing('mass-old', { days: ageDays, told: kg });
  if (facts.placement !== 'platform' || found === undefined) return lit('mass-told', { told: kg });
  const newest = Math.abs(median(found.axes[0]) - (facts.zero?.level ?? 0));
  const shown = newest / facts.gravityMps2;
  if (shown < rule.standsShare * kg) return open('nobody-stands', { told: kg });
  // somebody who moves is not weighed
  const sway = quantile(found.axes[0], 0.9) - quantile(found.axes[0], 0.1);
  if (sway > rule.swayMost * newest) return open('not-still', { range: sway });
  const level = stillLevel({ timesS: found.group.timesS, samples: found.axes[0] }, rule.level);
  if (level === null) return open('too-early', { seconds: 0 });
  const share = Math.abs(shown / kg - 1);
  const figures = { told: kg, shown, u: Math.hypot(level.u, facts.zero?.u ?? 0) / facts.gravityMps2 };
  return share > rule.massDifference ? failing('mass-differs', figures) : lit('mass-agrees', figures);
}

/**
 * The five lights before a test: connected, right way up, zero, side, mass.
 *
 * Each is lit, failing or cannot be told, from a short stretch of newest samples and from what was told. A light that fails
 * stops nobody: it says what is wrong, and what is done about it is decided by the person at the screen.
 *
 * @param trace - newest samples, a few seconds; no groups when nothing came [SI]
 * @param facts - what was told of sensor, leg and person [SI]
 * @param rule - limits, see {@link LightRule} [-]
 * @returns the five lights in their order [-]
 * @throws {@link InputError} `not-finite` or `not-increasing` for samples that are none
 *
 * Source: ours; limits of mass common practice, no source
 */
export function fiveLights(trace: Trace, facts: LightFacts, rule: LightRule): readonly Light[] {
  const found = seen(trace, MAIN[facts.placement]);
  const isThere = connected(found, facts, rule);
  // what does not arrive says nothing of how the sensor is worn
  const usable = isThere.state === 'failing' ? undefined : found;
  const answers: Readonly<Record<LightName, Answer>> = {
    connected: isThere,
    'right-way-up': rightWayUp(usable, facts, rule),
    zero: zero(trace, usable, facts, rule),
    side: sideOf(facts),
    mass: massOf(usable, facts, rule),
  };
  return LIGHT_NAMES.map((name) => ({ name, ...answers[name] }));
}
