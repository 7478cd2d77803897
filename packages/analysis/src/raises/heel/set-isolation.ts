import { median } from '../../signal/order-statistics.ts';
import type { DoubtReason } from '../detection.ts';
import type { Candidate } from './candidate.ts';
import { beyond, type EvidenceRule, type OwnEvidence, ownEvidence, type SetHabits, tempoEvidence } from './evidence.ts';

/** How far likeness, company and distance in time speak for or against a bump: logarithms of odds where no unit stands. */
export interface CompanyRule {
  /** usual spread of the logarithms of height and of the time a way takes within a set [-] */
  readonly heightSpread: number;
  readonly waySpread: number;
  /** any other movement spreads over about this area in both logarithms [-] */
  readonly otherArea: number;
  /** for a bump between two repetitions over one beside them [-] */
  readonly inside: number;
  /** against joining after a pause: sets seldom pause, other movements keep no rhythm [-] */
  readonly pause: number;
  /** against a bump that is alone in the recording [-] */
  readonly alone: number;
  /** against joining where something impossible lies between: the set had not begun or was over [-] */
  readonly blocked: number;
  /** up to so many bumps alike may be a few steps and have to convince by themselves [-] */
  readonly fewest: number;
  /** for each bump that is like another one of so few [-] */
  readonly mutual: number;
  /** what so few have to outweigh where other movement was, and by how much they may fall short where none was [-] */
  readonly few: number;
}

export interface IsolationRule extends EvidenceRule {
  readonly company: CompanyRule;
  readonly leastHeightM: number;
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
  /** whether it was left out with a set that does not convince: all of that set were repetitions or none */
  readonly withItsSet?: boolean;
}

/** Logarithms of height and of the time a way takes: the two in which the repetitions of a set resemble each other. */
type Marks = readonly [height: number, way: number];

interface Weighed {
  readonly own: OwnEvidence;
  /** own evidence, likeness to the members near and rise over its own lows together */
  readonly weight: number;
  readonly reason: DoubtReason;
}

/** Bumps that follow each other without a pause and without anything impossible between. */
interface Run {
  readonly members: readonly number[];
  readonly weight: number;
}

function marksOf({ heightM, upS, downS }: Candidate): Marks {
  return [Math.log(heightM), 0.5 * Math.log(upS * downS)];
}

/** For a member of the set over anything else, by likeness: a Student-like tail against the wide area of the rest. */
function likeness(a: Marks, b: Marks, { heightSpread, waySpread, otherArea }: CompanyRule): number {
  const distance2 = ((a[0] - b[0]) / heightSpread) ** 2 + ((a[1] - b[1]) / waySpread) ** 2;
  return Math.log(otherArea / (2 * Math.PI * heightSpread * waySpread)) - 4 * Math.log(1 + distance2 / 8);
}

function logistic(x: number): number {
  return 1 / (1 + Math.exp(-x));
}

/**
 * Which bumps are repetitions of the set.
 *
 * Each is weighed by what it says for itself ({@link ownEvidence}) and by how far it resembles the repetitions near it.
 * Bumps are then taken run by run: the run with most evidence is the set, others join it when their evidence outweighs
 * the pause or the disturbance between. So a stray before the set cannot lean on another stray.
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
  const deep = candidates.filter((candidate) => candidate.belowM > rule.belowFloorM).length;
  const dipsAreUsual = deep > 0.8 * count && count > 4;
  const marks = candidates.map(marksOf);
  const ownOf = (habits: SetHabits): OwnEvidence[] =>
    candidates.map((candidate, i) => ownEvidence(candidate, rule, atSpeed[i], habits));
  let members = seed(candidates, marks, ownOf({ dipsAreUsual, unexplained: undefined, tempo: undefined }), rule);
  let verdicts: Judged[] = [];
  for (let round = 0; round < 4; round++) {
    const unexplained = usually(candidates, members, (candidate) => candidate.unexplained ?? 0);
    const own = ownOf({ dipsAreUsual, unexplained, tempo: usually(candidates, members, tempoEvidence) });
    const weighed = candidates.map((candidate, i) => weigh(i, candidate, marks, own[i], members, rule));
    verdicts = gather(candidates, weighed, timesS, members, rule);
    const settled = verdicts.every((one, i) => one.accepted === members[i]);
    members = verdicts.map((one) => one.accepted);
    if (settled) break;
  }
  return convincing(verdicts, ownOf({ dipsAreUsual, unexplained: undefined, tempo: undefined }), rule.company)
    ? verdicts
    : verdicts.map(asStray);
}

/** Few bumps alike may be a few steps: then they have to convince by themselves. */
function convincing(
  verdicts: readonly Judged[],
  own: readonly OwnEvidence[],
  { fewest, mutual, few }: CompanyRule,
): boolean {
  const members = own.filter((_, i) => verdicts[i].accepted);
  if (members.length === 0 || members.length > fewest) return true;
  const sum = members.reduce((total, evidence) => total + evidence.weight, 0);
  // Where nothing else happened there is nothing to mistake them for.
  const others = verdicts.length > members.length;
  return sum + mutual * (members.length - 1) > (others ? few : -few);
}

function asStray(one: Judged): Judged {
  if (!one.accepted) return one;
  const probability = Math.min(0.2, one.probability);
  return { ...one, accepted: false, probability, reason: 'unlike-the-set', withItsSet: true };
}

/** The bumps that resemble the one with most likeness around it. */
function seed(
  candidates: readonly Candidate[],
  marks: readonly Marks[],
  own: readonly OwnEvidence[],
  rule: IsolationRule,
): boolean[] {
  const able = candidates.map(
    ({ heightM, ownRiseM }, i) => Math.min(heightM, ownRiseM) >= rule.leastHeightM && own[i].physical > -1,
  );
  const evidence = (i: number, centre: number): number =>
    able[i] ? own[i].weight + likeness(marks[i], marks[centre], rule.company) : 0;
  // In a long recording a few hundred bumps are enough to find the centre.
  const stride = Math.max(1, Math.floor(marks.length / 400));
  let best = -1;
  let most = 0;
  for (let i = 0; i < marks.length; i += stride) {
    if (!able[i]) continue;
    let support = 0;
    for (let j = 0; j < marks.length; j += stride) support += Math.max(0, evidence(j, i));
    if (support <= most) continue;
    most = support;
    best = i;
  }
  return marks.map((_, i) => i === best || (best >= 0 && evidence(i, best) > 0));
}

/** What the members of the set have in common; undefined for fewer than five. */
function usually(
  candidates: readonly Candidate[],
  members: readonly boolean[],
  get: (candidate: Candidate) => number,
): number | undefined {
  const values = candidates.filter((_, i) => members[i]).map(get);
  return values.length >= 5 ? median(values) : undefined;
}

/** Own evidence, resemblance to the members near in time, and rise over its own lows. */
function weigh(
  i: number,
  candidate: Candidate,
  marks: readonly Marks[],
  own: OwnEvidence,
  members: readonly boolean[],
  rule: IsolationRule,
): Weighed {
  const near: number[] = [];
  for (let j = i - 1; j >= 0 && near.length < 4; j--) if (members[j]) near.push(j);
  const before = near.length;
  for (let j = i + 1; j < members.length && near.length < before + 4; j++) if (members[j]) near.push(j);
  // alone in the recording it has to convince by itself
  if (near.length === 0) return { own, weight: own.weight - rule.company.alone, reason: own.reason };
  const usual: Marks = [median(near.map((j) => marks[j][0])), median(near.map((j) => marks[j][1]))];
  const alike = likeness(marks[i], usual, rule.company);
  const bounce = beyond(rule.leastOwnRise * Math.exp(usual[0]), candidate.ownRiseM, 25);
  const reason = own.physical < -1 ? own.reason : bounce < Math.min(-1, alike) ? 'too-small' : 'unlike-the-set';
  return { own, weight: own.weight + alike + bounce, reason };
}

/** Usual time from one member to the next; undefined for fewer than three. */
function usualSpacingS(members: readonly boolean[], timesS: readonly number[]): number | undefined {
  const tops = timesS.filter((_, i) => members[i]);
  return tops.length < 3 ? undefined : median(tops.slice(1).map((timeS, i) => timeS - tops[i]));
}

/** Cuts the sequence at pauses and at impossible bumps. Within a run, what lies between two members comes in easily. */
function runsOf(weighed: readonly Weighed[], timesS: readonly number[], pauseS: number, inside: number): Run[] {
  const runs: Run[] = [];
  let run: number[] = [];
  const close = (): void => {
    const sure = run.filter((i) => weighed[i].weight > 0);
    if (sure.length > 0) {
      const [first, last] = [sure[0], sure[sure.length - 1]];
      const members = run.filter((i) => i >= first && i <= last && weighed[i].weight + inside > 0);
      // however convincing, one bump alone must not outweigh what parts it from the set
      runs.push({ members, weight: members.reduce((sum, i) => sum + Math.min(5, weighed[i].weight), 0) });
    }
    run = [];
  };
  weighed.forEach((one, i) => {
    if (run.length > 0 && timesS[i] - timesS[run[run.length - 1]] > pauseS) close();
    if (one.own.physical < -2 && one.weight + inside <= 0) close();
    else run.push(i);
  });
  close();
  return runs;
}

function gather(
  candidates: readonly Candidate[],
  weighed: readonly Weighed[],
  timesS: readonly number[],
  members: readonly boolean[],
  rule: IsolationRule,
): Judged[] {
  const spacingS = usualSpacingS(members, timesS);
  const pauseS = spacingS === undefined ? 4 : 2 * spacingS + 0.5;
  const penalty = spacingS === undefined ? 1 : rule.company.pause;
  const runs = runsOf(weighed, timesS, pauseS, rule.company.inside);
  const accepted = candidates.map(() => false);
  const odds = weighed.map((one) => Math.min(one.weight, 0) - 1);
  const outside = candidates.map(() => false);
  let main = 0;
  runs.forEach((run, k) => {
    if (run.weight > runs[main].weight) main = k;
  });
  const join = (k: number, part: number): void => {
    const run = runs[k];
    run.members.forEach((i, place) => {
      const inside = place > 0 && place < run.members.length - 1;
      accepted[i] = true;
      odds[i] = Math.min(part, weighed[i].weight + (inside ? rule.company.inside : 0));
    });
  };
  const stray = (k: number, part: number): void => {
    for (const i of runs[k].members) {
      odds[i] = Math.min(0, part, weighed[i].weight);
      outside[i] = true;
    }
  };
  /** Takes in the runs on one side of the set, nearest first, until one is too far away. */
  const extend = (step: 1 | -1): void => {
    let edge = main;
    for (let k = main + step; k >= 0 && k < runs.length; k += step) {
      const [near, far] = step > 0 ? [runs[edge], runs[k]] : [runs[k], runs[edge]];
      const [from, to] = [near.members[near.members.length - 1], far.members[0]];
      const blocked = weighed.slice(from + 1, to).some((one) => one.own.physical < -2);
      const apartS = timesS[to] - timesS[from];
      const part =
        runs[k].weight -
        (apartS > pauseS ? penalty : 0) -
        (blocked ? rule.company.blocked : 0) -
        (apartS > rule.boutGapS ? 20 : 0);
      if (part > 0) {
        join(k, part);
        edge = k;
      } else stray(k, part);
    }
  };
  if (runs.length > 0) {
    join(main, Number.POSITIVE_INFINITY);
    extend(-1);
    extend(1);
  }
  return candidates.map((candidate, i) => ({
    candidate,
    accepted: accepted[i],
    probability: logistic(odds[i]),
    reason: outside[i] ? 'outside-the-set' : weighed[i].reason,
  }));
}
