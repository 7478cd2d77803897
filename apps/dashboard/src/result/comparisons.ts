import {
  defaultSettings,
  type LegFinding,
  type LegsOfVisit,
  legsOfVisit,
  type OwnReliability,
  type PullFinding,
  pullLegsOfVisit,
  type Side,
  type TestedLeg,
  type TestedPull,
} from '@surae/analysis';
import {
  isBothSore,
  isOfEpisode,
  type LegOfVisit,
  type LegPast,
  legPast,
  noOwnErrors,
  type OwnErrorsInUse,
  type Person,
  pullPast,
  type TestKind,
  type Visit,
  visitLegs,
  visitPulls,
} from '@surae/casebook';
import { AXIS_WORDS, PULL_RESULT_WORDS } from '@surae/shared';
import { dayOf } from '../words/dates.ts';
import { type BilateralView, bilateralView } from './bilateral-view.ts';
import type { AnyCompared, Compared, Finding, PastCompared, Tested } from './compared.ts';
import { type GroupView, groupView, placeOf } from './group-view.ts';
import { type LegSentences, legView, pullLegView } from './leg-view.ts';
import { type PastView, type PastVisit, pastView } from './past-view.ts';
import { setUpSince } from './set-up-since.ts';
import { type SideView, sideView } from './side-view.ts';
import { type TargetView, targetView } from './target-view.ts';
import { disagreements, type LegAnswers } from './together.ts';
import type { ValueWords } from './value-words.ts';

/** What effort, pain and irritability say about one leg. */
export interface LegLines extends LegSentences {
  readonly side: Side;
}

/** A result held beside the other leg, beside earlier visits and beside groups, in words and marks. */
export interface Comparisons {
  /** where one leg alone is tested nothing of it is shown */
  readonly side: SideView;
  /** one leg alone is tested: there is no other one to hold it beside */
  readonly isOneLeg: boolean;
  /** one of each leg that has a result */
  readonly pasts: readonly PastView[];
  readonly groups: readonly GroupView[];
  /** a figure that one may choose to see beside the result; null where none is quoted for this way of testing */
  readonly target: TargetView | null;
  readonly legs: readonly LegLines[];
  /** where the three do not say the same */
  readonly together: readonly string[];
  /** each leg by itself, where both are sore; null where not */
  readonly bilateral: BilateralView | null;
}

const sides = ['left', 'right'] as const satisfies readonly Side[];

/** Repetitions as they are told. */
const repetitions: ValueWords = { unit: AXIS_WORDS['score-unit'].text, decimals: 0, isCount: true };

/** Forces and torques as they are told. */
function strengthWords(unit: string): ValueWords {
  const words = PULL_RESULT_WORDS;
  return unit === 'N'
    ? { unit: words['newton-unit'].text, decimals: 0, isCount: false }
    : { unit: unit === 'N.m' ? words['newton-metre-unit'].text : unit, decimals: 1, isCount: false };
}

function viewOfPast<Leg>(
  side: Side,
  { now, alike, unlike, course }: LegPast<Leg>,
  u: number | null,
  wordsOf: (unit: string) => ValueWords,
  own: OwnReliability | undefined,
): PastView {
  const told = ({ visit, result }: LegOfVisit<Leg>): PastVisit => ({
    result,
    when: dayOf(visit.begunAt),
    u,
    words: wordsOf(result.unit),
  });
  return pastView({ side, now: told(now), alike: alike.map(told), unlike: unlike.map(told), course, own });
}

/** The verdict about a leg, whichever of the two stands above the line; null where there is no ratio. */
function lessOf(side: Side, { comparison }: Pick<LegsOfVisit, 'comparison'>): LegAnswers['less'] {
  if (comparison.kind === 'blocked') return null;
  return comparison.underLine.find((one) => one.side === side)?.verdict ?? null;
}

function answersOf<Leg extends Tested, Found extends Finding>(
  side: Side,
  { found, pasts }: Compared<Leg, Found>,
): LegAnswers {
  const finding = found.findings[side];
  const outcome = pasts[side]?.course?.changes[0]?.outcome;
  return {
    less: lessOf(side, found),
    change: outcome?.kind === 'change' ? { value: outcome.change.value, zone: outcome.detectable.zone } : null,
    places:
      finding?.reference.kind === 'references'
        ? finding.reference.references.map((one) => placeOf(finding.value.value, finding.value.u, one))
        : [],
  };
}

/** The clinic's own error of the test of a leg, used or not. */
function ownError(side: Side, { pasts, own }: Pick<PastCompared, 'pasts' | 'own'>): OwnReliability | undefined {
  const id = pasts[side]?.now.leg.protocol.id;
  return id === undefined ? undefined : own.tests[id];
}

/** Each leg that has a result beside its own earlier visits. */
export function pastViews(compared: PastCompared, test: TestKind): readonly PastView[] {
  const { found, pasts, wordsOf } = compared;
  return sides.flatMap((side) => {
    const [past, finding] = [pasts[side], found.findings[side]];
    if (past === undefined || finding === null) return [];
    const view = viewOfPast(side, past, finding.value.u, wordsOf, ownError(side, compared));
    const last = past.alike.at(-1)?.visit;
    const otherwise = last && setUpSince(last, past.now.visit, side, test);
    return [otherwise === undefined ? view : { ...view, lines: [...view.lines, otherwise] }];
  });
}

/** Each leg that has a result beside the groups that were tested in the same way. */
export function groupViews({ found, wordsOf }: Pick<AnyCompared, 'found' | 'wordsOf'>): readonly GroupView[] {
  return sides.flatMap((side) => {
    const finding = found.findings[side];
    if (finding === null) return [];
    const { value, u, unit } = finding.value;
    return [groupView({ side, value, u, reference: finding.reference, words: wordsOf(unit) })];
  });
}

function viewOf<Leg extends Tested, Found extends Finding>(
  compared: Compared<Leg, Found>,
  visit: Visit,
  test: TestKind,
): Comparisons {
  const { found, wordsOf, legOf, target } = compared;
  const each = <View>(make: (side: Side, finding: Found) => View): readonly View[] =>
    sides.flatMap((side) => {
      const finding = found.findings[side];
      return finding === null ? [] : [make(side, finding)];
    });
  const ownOf = (side: Side): OwnReliability | undefined => ownError(side, compared);
  const value = (side: Side): number | null => found.findings[side]?.value.value ?? null;
  const unit = (found.findings.left ?? found.findings.right)?.value.unit ?? '1';
  const groups = groupViews(compared);
  return {
    bilateral: bilateralView(visit, test, compared, groups),
    isOneLeg: visit.only !== undefined,
    side: sideView({
      comparison: found.comparison,
      values: { left: value('left'), right: value('right') },
      zone: found.zone,
      error: found.reliability?.source ?? null,
      own: ownOf('left') ?? ownOf('right'),
      underOthers: found.underOthers,
      hangsOnReliability: found.hangsOnReliability,
      words: wordsOf(unit),
    }),
    pasts: pastViews(compared, test),
    groups,
    target,
    legs: each((side, finding) => ({ side, ...legOf(side, finding) })),
    together: disagreements({ left: answersOf('left', compared), right: answersOf('right', compared) }),
  };
}

/** Each leg beside the tests of its complaint alone, where both legs are sore. */
function baselinesOf<Leg>(
  visit: Visit,
  past: (side: Side, isHeldBeside: (one: Visit) => boolean) => LegPast<Leg> | undefined,
): Readonly<Record<Side, LegPast<Leg> | undefined>> | null {
  if (!isBothSore(visit)) return null;
  const isHeldBeside = (one: Visit): boolean => isOfEpisode(visit, one);
  return { left: past('left', isHeldBeside), right: past('right', isHeldBeside) };
}

/** The raises of a visit as they are compared, whoever is told of it; see {@link comparisonsOf}. */
export function comparedRaises(
  visit: Visit,
  person: Person,
  earlier: readonly Visit[],
  own: OwnErrorsInUse = noOwnErrors,
): Compared<TestedLeg, LegFinding> {
  const legs = visitLegs(visit, person, earlier);
  return {
    found: legsOfVisit(legs, own.tests, defaultSettings().judging, own.ratios),
    pasts: {
      left: legPast(visit, 'left', earlier, own.tests),
      right: legPast(visit, 'right', earlier, own.tests),
    },
    baselines: baselinesOf(visit, (side, isHeldBeside) => legPast(visit, side, earlier, own.tests, isHeldBeside)),
    own,
    wordsOf: () => repetitions,
    legOf: (side, finding) =>
      legView(finding, legs.legs[side]?.facts.sore ?? null, legs.legs[side]?.report.end.class === 'censored'),
    target: null,
  };
}

/**
 * The raises of a visit beside the other leg, the earlier visits of the person (the oldest first) and published groups, by the
 * clinic's own errors where they are to be used.
 */
export function comparisonsOf(...of: Parameters<typeof comparedRaises>): Comparisons {
  return viewOf(comparedRaises(...of), of[0], 'heel-raise');
}

/** The isometric pushes of a visit as they are compared, by their net forces. */
export function comparedPushes(
  visit: Visit,
  person: Person,
  earlier: readonly Visit[],
  own: OwnErrorsInUse = noOwnErrors,
): Compared<TestedPull, PullFinding> {
  const pulls = visitPulls(visit, person, earlier);
  const found = pullLegsOfVisit(pulls, own.tests, own.ratios);
  const u = (side: Side): number | null => found.findings[side]?.value.u ?? null;
  return {
    found,
    pasts: {
      left: pullPast(visit, 'left', earlier, own.tests),
      right: pullPast(visit, 'right', earlier, own.tests),
    },
    baselines: baselinesOf(visit, (side, isHeldBeside) => pullPast(visit, side, earlier, own.tests, isHeldBeside)),
    own,
    wordsOf: strengthWords,
    legOf: (side, finding) =>
      pullLegView(finding, pulls.legs[side]?.facts.sore ?? null, strengthWords(finding.value.unit)),
    target: targetView(pulls.legs, { left: u('left'), right: u('right') }),
  };
}

/** The same as {@link comparisonsOf} for pushes; no published group stands beside a force. */
export function pullComparisonsOf(...of: Parameters<typeof comparedPushes>): Comparisons {
  return viewOf(comparedPushes(...of), of[0], 'isometric');
}
