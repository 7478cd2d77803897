import {
  type JudgingSettings,
  type LegCourse,
  type LegFinding,
  type LegsOfVisit,
  type LegVisit,
  legOverVisits,
  legsOfVisit,
  type PullFinding,
  type PullVisit,
  pullLegsOfVisit,
  pullOverVisits,
  type Report,
  robustness,
  type Side,
  type TestedLeg,
  type TestedPull,
  type Verdict,
} from '@surae/analysis';
import { type ComparedPulls, type ComparedRaises, type ComparedSet, legFacts, personFacts } from './compared-set.ts';
import { type LegGroup, legGroups, type SetKey, type VisitGroup, visitGroups } from './comparison-groups.ts';
import type { GivenReliability } from './own-reliability.ts';

/** What each leg says by itself, by either test, and both against each other. */
export type FoundLegs = LegsOfVisit<LegFinding | PullFinding>;

/** Both legs of a person on one visit. */
export interface LegsComparison {
  readonly kind: 'legs';
  readonly group: VisitGroup;
  readonly found: FoundLegs;
  /** the same under other values of one parameter; null where that was not asked for or a leg has no set */
  readonly varied: VariedLegs | null;
  /** what is said about the clinic's own error; empty where none was given */
  readonly ownNote: string;
}

/** Both legs under one value of a parameter. */
export interface VariedCase {
  readonly value: string;
  readonly counts: Readonly<Record<Side, Report['count']>>;
  /** whether the leg above the line is lower; null where there is no ratio */
  readonly lower: Verdict | null;
  readonly comparison: LegsOfVisit['comparison'];
}

/** Both legs under several values of a parameter, and whether one conclusion stands throughout. */
export interface VariedLegs {
  readonly cases: readonly VariedCase[];
  readonly robust: Verdict;
}

/** One leg of a person over visits. */
export interface VisitsComparison {
  readonly kind: 'visits';
  readonly group: LegGroup;
  /** the sets in the order of the visits of the course */
  readonly ordered: readonly ComparedSet[];
  readonly found: LegCourse;
  readonly ownNote: string;
}

export type Comparison = LegsComparison | VisitsComparison;

function testedLeg(set: ComparedRaises, side: Side, features = set.features): TestedLeg {
  const { report, protocol } = set;
  return { side, report, protocol, features, facts: legFacts(set) };
}

function testedPull(set: ComparedPulls, side: Side, features = set.features): TestedPull {
  const { report, protocol } = set;
  return { side, report, protocol, features, facts: legFacts(set) };
}

/** The leg that came first, by what either row says; null where they do not agree. */
function firstLeg(left: ComparedSet, right: ComparedSet): Side | null {
  const place = ({ told }: ComparedSet): 'first' | 'second' | null =>
    told.order === null ? null : told.order === 'first' || told.order === '1' ? 'first' : 'second';
  const [ofLeft, ofRight] = [place(left), place(right)];
  if (ofLeft !== null && ofLeft === ofRight) return null;
  if (ofLeft === 'first' || ofRight === 'second') return 'left';
  return ofLeft === 'second' || ofRight === 'first' ? 'right' : null;
}

/** The rest before the second leg; where the order is not known, what only one row tells. */
function restS(left: ComparedSet, right: ComparedSet, first: Side | null): number | null {
  if (first === 'left') return right.told.rest_s;
  if (first === 'right') return left.told.rest_s;
  return null;
}

function alike<Value>(left: Value | null, right: Value | null): boolean | null {
  return left === null || right === null ? null : left === right;
}

function foundLegs(group: VisitGroup, { own, ratios }: GivenReliability, judging: JudgingSettings): FoundLegs {
  const { left, right } = group.legs;
  const both = left !== null && right !== null;
  const first = both ? firstLeg(left, right) : null;
  const known = {
    person: personFacts(group.sets),
    first,
    restS: both ? restS(left, right, first) : null,
    sameDay: both ? alike(left.told.date, right.told.date) : null,
    sameSource: both ? alike(left.told.source, right.told.source) : null,
    blocks: group.blocks,
  };
  // a group holds one test
  if (left?.test === 'isometric' || right?.test === 'isometric') {
    const pull = (set: ComparedSet | null, side: Side): TestedPull | null =>
      set?.test === 'isometric' ? testedPull(set, side) : null;
    return pullLegsOfVisit({ ...known, legs: { left: pull(left, 'left'), right: pull(right, 'right') } }, own, ratios);
  }
  return legsOfVisit(
    {
      ...known,
      legs: { left: left && testedLeg(left, 'left'), right: right && testedLeg(right, 'right') },
    },
    own,
    judging,
    ratios,
  );
}

/** Both legs judged again by each of the other values: one that stands against a ratio leaves the conclusion open. */
function variedLegs(group: VisitGroup, given: GivenReliability, judging: JudgingSettings): VariedLegs | null {
  const { left, right } = group.legs;
  if (left?.test !== 'heel-raise' || right?.test !== 'heel-raise' || left.varied.length === 0) return null;
  const cases = left.varied.map(({ value }, at): VariedCase => {
    const legs = { left: { ...left, ...left.varied[at]! }, right: { ...right, ...right.varied[at]! } };
    const { comparison } = foundLegs({ ...group, legs }, given, judging);
    const lower = comparison.kind === 'ratio' ? comparison.underLine[0].verdict : null;
    return {
      value,
      counts: { left: legs.left.report.count, right: legs.right.report.count },
      lower,
      comparison,
    };
  });
  return { cases, robust: robustness(cases.map(({ lower }) => lower ?? 'cannot_tell')) };
}

/** Both legs of one visit compared. */
export function compareLegs(group: VisitGroup, given: GivenReliability, judging: JudgingSettings): LegsComparison {
  return {
    kind: 'legs',
    group,
    found: foundLegs(group, given, judging),
    varied: variedLegs(group, given, judging),
    ownNote: given.note,
  };
}

/** One leg over its visits compared. */
export function compareVisits(group: LegGroup, given: GivenReliability): VisitsComparison {
  const days = group.sets.map(({ told }) => told.date);
  const ordered = days.includes(null)
    ? group.sets
    : [...group.sets].sort((one, other) => (one.told.date ?? 0) - (other.told.date ?? 0));
  const features = (set: ComparedSet): ComparedSet['features'] => ({ ...set.features, source: set.told.source });
  const raises = ordered.flatMap((set): LegVisit[] =>
    set.test === 'heel-raise' ? [{ day: set.told.date, leg: testedLeg(set, group.side, features(set)) }] : [],
  );
  const pulls = ordered.flatMap((set): PullVisit[] =>
    set.test === 'isometric' ? [{ day: set.told.date, pull: testedPull(set, group.side, features(set)) }] : [],
  );
  // a group holds one test
  const found = pulls.length > 0 ? pullOverVisits(pulls, given.own) : legOverVisits(raises, given.own);
  return { kind: 'visits', group, ordered, found, ownNote: given.note };
}

/**
 * Every comparison that the sets allow to be asked for: first the legs of each visit, then each leg over its visits. The sets of
 * one comparison at a time are fetched, so that the others can lie elsewhere.
 */
export function* eachComparison<Key extends SetKey>(
  keys: readonly Key[],
  fetch: (key: Key) => ComparedSet,
  given: GivenReliability,
  judging: JudgingSettings,
): Generator<Comparison> {
  for (const group of visitGroups(keys)) {
    const fetched = new Map(group.sets.map((key) => [key, fetch(key)]));
    const leg = (key: Key | null): ComparedSet | null => (key === null ? null : fetched.get(key)!);
    const legs = { left: leg(group.legs.left), right: leg(group.legs.right) };
    yield compareLegs({ ...group, legs, sets: [...fetched.values()] }, given, judging);
  }
  for (const group of legGroups(keys)) yield compareVisits({ ...group, sets: group.sets.map(fetch) }, given);
}

/** The same of sets that are there. */
export function comparisonsOf(
  sets: readonly ComparedSet[],
  given: GivenReliability,
  judging: JudgingSettings,
): Comparison[] {
  return [...eachComparison(sets, (set) => set, given, judging)];
}
