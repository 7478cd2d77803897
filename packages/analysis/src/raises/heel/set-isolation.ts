import { median } from '../../signal/order-statistics.ts';
import type { DoubtReason } from '../detection.ts';
import type { Candidate } from './candidate.ts';

/** What counts for and against a repetition; weights are natural logarithms of likelihood ratios. */
export interface IsolationRule {
  readonly leastHeightM: number;
  readonly leastCycleS: number;
  /** highest that the heel can get with the forefoot down [m] */
  readonly greatestHeightM: number;
  /** deeper below rest, the forefoot cannot be down [m] */
  readonly belowFloorM: number;
  /** greater unexplained acceleration, the forefoot cannot stay where it is [m/s2] */
  readonly travelAcceleration: number;
  /** rise over its own lows, in shares of the usual height, below which it is a bounce [-] */
  readonly leastOwnRise: number;
  /** time between neighbours beyond which they belong to different bouts [s] */
  readonly boutGapS: number;
}

export interface Judged {
  readonly candidate: Candidate;
  readonly accepted: boolean;
  /** probability that it is a repetition of the set [-] */
  readonly probability: number;
  /** what speaks against it most, when it was left out */
  readonly reason: DoubtReason;
}

interface Evidence {
  readonly weight: number;
  readonly reason: DoubtReason;
}

/** What a bump says for itself: with and without its tempo, which a set of many alike can outvote. */
interface OwnEvidence extends Evidence {
  readonly physical: number;
}

/** Smooth penalty: nothing up to the limit, then the share beyond it times a slope, held at a bound. */
function beyond(value: number, limit: number, slope: number): number {
  return value <= limit ? 0 : -Math.min(14, slope * (value / limit - 1));
}

/** What a bump says for itself, without the others. */
function ownEvidence(candidate: Candidate, rule: IsolationRule, atSpeed: number, dipsAreUsual: boolean): OwnEvidence {
  const { heightM, upS, downS, highS, belowM, unexplained } = candidate;
  // A quick raise shakes the sensor more, since its place on the lever is only roughly known.
  const briskness = heightM / (upS * downS);
  const terms: Evidence[] = [
    { weight: beyond(heightM, rule.greatestHeightM, 60), reason: 'stride' },
    { weight: dipsAreUsual ? 0 : beyond(belowM, rule.belowFloorM, 6), reason: 'stride' },
    {
      weight:
        unexplained === undefined ? 0 : beyond(unexplained, rule.travelAcceleration + 0.15 * Math.min(8, briskness), 6),
      reason: 'stride',
    },
    { weight: beyond(1 / highS, 2.2 / rule.leastCycleS, 12), reason: 'too-quick' },
    { weight: Math.min(0.5, -atSpeed), reason: 'starts-at-speed' },
  ];
  const worst = terms.reduce((a, b) => (b.weight < a.weight ? b : a));
  const physical = 0.5 + terms.reduce((sum, term) => sum + term.weight, 0);
  return { weight: physical + tempoEvidence(candidate), reason: worst.reason, physical };
}

/**
 * For a raise, over a step or a knock, by the time the two ways take: raises centre at 0.45 s from 10 to 90 % and
 * spread widely, a foot through the air takes about 0.18 s. Both are log-normal; ours.
 */
function tempoEvidence({ upS, downS }: Candidate): number {
  const way = 0.5 * Math.log(upS * downS);
  const raise = -0.5 * ((way - Math.log(0.45)) / 0.6) ** 2 - Math.log(0.6);
  const step = -0.5 * ((way - Math.log(0.18)) / 0.4) ** 2 - Math.log(0.4);
  return Math.max(-3, Math.min(3, raise - step));
}

/** Logarithms of height and of the time a way takes: the two in which the repetitions of a set resemble each other. */
function marks(candidate: Candidate): Marks {
  return [Math.log(candidate.heightM), 0.5 * Math.log(candidate.upS * candidate.downS)];
}

/** Usual spread of either mark within a set. */
const usualSpreads = [0.3, 0.25] as const;

type Marks = readonly [number, number];

function distance2(a: Marks, b: Marks, spreads: Marks): number {
  return ((a[0] - b[0]) / spreads[0]) ** 2 + ((a[1] - b[1]) / spreads[1]) ** 2;
}

function logistic(x: number): number {
  return 1 / (1 + Math.exp(-x));
}

/**
 * Which bumps are repetitions of the set. Each is weighed by what it says for itself (a body can neither lift its heel
 * higher than the foot is long, nor dip it below the floor, nor travel, nor leave rest at speed) and by how far it
 * resembles the repetitions near it. What lies between repetitions is let in more easily than what lies outside.
 *
 * @param candidates - bumps in time order, see {@link Candidate} [SI]
 * @param timesS - the instant of each top [s]
 * @param atSpeed - log-likelihood ratio for a bump that starts or ends at speed, 0 where not looked at [-]
 * @param rule - limits, see {@link IsolationRule} [SI]
 * @returns a verdict for each candidate, in the same order [-]
 *
 * Source: ours (naive Bayes with heavy-tailed resemblance)
 */
export function isolateSet(
  candidates: readonly Candidate[],
  timesS: readonly number[],
  atSpeed: readonly number[],
  rule: IsolationRule,
): Judged[] {
  const count = candidates.length;
  if (count === 0) return [];
  const deep = candidates.filter((candidate) => candidate.belowM > rule.belowFloorM).length;
  const own = candidates.map((candidate, i) =>
    ownEvidence(candidate, rule, atSpeed[i], deep > 0.8 * count && count > 4),
  );
  const places = candidates.map(marks);
  let members = seed(places, own, timesS, rule);
  let total: readonly Evidence[] = own;
  for (let round = 0; round < 4; round++) {
    total = candidates.map((candidate, i) => weighed(i, candidate, places, own, members, timesS, rule));
    const next = total.map((evidence) => evidence.weight > 0);
    if (next.every((value, i) => value === members[i])) break;
    members = next;
  }
  return candidates.map((candidate, i) => ({
    candidate,
    accepted: members[i],
    probability: logistic(total[i].weight),
    reason: total[i].reason,
  }));
}

/** The bumps that resemble the one with most likeness around it. */
function seed(
  places: readonly Marks[],
  own: readonly OwnEvidence[],
  timesS: readonly number[],
  rule: IsolationRule,
): boolean[] {
  const trust = own.map((evidence) => logistic(evidence.weight));
  // In a long recording a few hundred bumps are enough to find the centre.
  const stride = Math.max(1, Math.floor(places.length / 400));
  let best = -1;
  let most = 0;
  for (let i = 0; i < places.length; i += stride) {
    let support = 0;
    for (let j = 0; j < places.length; j += stride) {
      support += trust[j] * Math.exp(-distance2(places[i], places[j], usualSpreads) / 4);
    }
    support *= trust[i];
    if (support > most) {
      most = support;
      best = i;
    }
  }
  const near = places.map(
    (place, i) => best >= 0 && own[i].physical > -1 && distance2(place, places[best], usualSpreads) < 16,
  );
  return sameBout(near, timesS, rule);
}

/** Keeps the largest bout of members: neighbours further apart than the rule part them. */
function sameBout(members: readonly boolean[], timesS: readonly number[], rule: IsolationRule): boolean[] {
  const bout: number[] = [];
  const sizes: number[] = [];
  let last: number | undefined;
  members.forEach((member, i) => {
    if (!member) return;
    if (last === undefined || timesS[i] - timesS[last] > rule.boutGapS) sizes.push(0);
    sizes[sizes.length - 1]++;
    bout[i] = sizes.length - 1;
    last = i;
  });
  const largest = sizes.indexOf(Math.max(...sizes, 0));
  return members.map((member, i) => member && bout[i] === largest);
}

/** Own evidence and resemblance to the members near in time. */
function weighed(
  i: number,
  candidate: Candidate,
  places: readonly Marks[],
  own: readonly OwnEvidence[],
  members: readonly boolean[],
  timesS: readonly number[],
  rule: IsolationRule,
): Evidence {
  const near: number[] = [];
  let before = -1;
  let after = -1;
  for (let j = i - 1; j >= 0 && near.length < 4; j--) {
    if (!members[j]) continue;
    if (before < 0) before = j;
    near.push(j);
  }
  for (let j = i + 1, found = 0; j < members.length && found < 4; j++) {
    if (!members[j]) continue;
    if (after < 0) after = j;
    near.push(j);
    found++;
  }
  if (near.length === 0) {
    // Alone: the only repetition of the recording, if it is one.
    return members[i] ? own[i] : { weight: Math.min(own[i].weight, 0) - 3, reason: own[i].reason };
  }
  const apart = Math.min(
    before < 0 ? Number.POSITIVE_INFINITY : timesS[i] - timesS[before],
    after < 0 ? Number.POSITIVE_INFINITY : timesS[after] - timesS[i],
  );
  if (apart > rule.boutGapS) return { weight: Math.min(own[i].weight, 0) - 6, reason: 'outside-the-set' };
  const usual: Marks = [median(near.map((j) => places[j][0])), median(near.map((j) => places[j][1]))];
  const usualHeightM = Math.exp(usual[0]);
  const inside = before >= 0 && after >= 0;
  const d2 = distance2(places[i], usual, usualSpreads);
  // Repetition: Student t about its neighbours. Anything else: spread over an area of about six in both logarithms.
  const area = 6 / (2 * Math.PI * usualSpreads[0] * usualSpreads[1]);
  const likeness = Math.log(area) - (inside ? 3 * Math.log(1 + d2 / 4) : 5 * Math.log(1 + d2 / 8));
  const bounce = beyond(rule.leastOwnRise * usualHeightM, candidate.ownRiseM, 25);
  const parts: Evidence[] = [
    own[i],
    { weight: likeness, reason: 'unlike-the-set' },
    { weight: bounce, reason: 'too-small' },
    {
      weight: inside ? 3 : outsideEvidence(i, apart, spacingS(members, timesS), before >= 0 ? before : after, own),
      reason: 'outside-the-set',
    },
  ];
  const worst = own[i].physical < 0 ? own[i] : parts.reduce((a, b) => (b.weight < a.weight ? b : a));
  return { weight: parts.reduce((sum, part) => sum + part.weight, 0), reason: worst.reason };
}

/** Usual time from one member to the next; undefined for fewer than three. */
function spacingS(members: readonly boolean[], timesS: readonly number[]): number | undefined {
  const tops = timesS.filter((_, i) => members[i]);
  return tops.length < 3 ? undefined : median(tops.slice(1).map((timeS, i) => timeS - tops[i]));
}

/**
 * For a bump before or after all members: a set goes on in its rhythm and pauses once in twenty times, other movements
 * keep no rhythm; and where something that is no repetition lies between, the set had not begun or was over.
 */
function outsideEvidence(
  i: number,
  apartS: number,
  usualS: number | undefined,
  nearest: number,
  own: readonly OwnEvidence[],
): number {
  const between = own.slice(Math.min(i, nearest) + 1, Math.max(i, nearest));
  const disturbed = between.some((evidence) => evidence.physical < -2) ? -1.5 : 0;
  if (usualS === undefined) return (apartS < 4 ? 0 : -1) + disturbed;
  return (apartS < 2 * usualS + 0.5 ? 0 : -2.5) + disturbed;
}
