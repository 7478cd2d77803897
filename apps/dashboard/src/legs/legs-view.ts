import type { Side } from '@surae/analysis';
import {
  type ClinicContact,
  isUntested,
  legsTested,
  locksOf,
  noOwnErrors,
  type OwnErrorsInUse,
  type Person,
  type PlanItem,
  pullSetOf,
  type SetChoice,
  setOf,
  type TestKind,
  testsOf,
  type Visit,
} from '@surae/casebook';
import { LEGS_NEXT_WORDS, LEGS_PLACE, LEGS_WORDS } from '@surae/shared';
import { planLineText } from '../plan/plan-words.ts';
import type { AnyCompared } from '../result/compared.ts';
import { comparedPushes, comparedRaises } from '../result/comparisons.ts';
import { pullFigures } from '../result/pull-figures.ts';
import { type TwoLegFigures, twoLegFigures } from '../result/two-legs.ts';
import { capital, type ValueWords } from '../result/value-words.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { bothSoreLeg, paceSentence } from './both-sore.ts';
import { type ChanceLine, type LegChange, legChange } from './leg-change.ts';
import { type LegTold, pushesTold, raisesTold } from './leg-told.ts';

/** One leg over the weeks: what is told of its change, and its line. */
export interface LegOverWeeks extends Pick<LegChange, 'told' | 'line'> {
  readonly side: Side;
}

/** One test of somebody's two legs: sentences first, then both on one line, then each over time. */
export interface LegsTest {
  readonly title: string;
  readonly sentences: readonly string[];
  readonly figures: TwoLegFigures;
  readonly lines: readonly ChanceLine[];
  /** each leg that is held against earlier visits */
  readonly changes: readonly LegOverWeeks[];
  readonly test: TestKind;
  /** what values are counted in */
  readonly unit: 'count' | 'N' | 'N.m';
  readonly words: ValueWords;
}

/** What somebody is shown of their own visit. It knows no name and no day of birth. */
export interface LegsView {
  /** whom to ring, as the clinic said; null where it did not */
  readonly contact: ClinicContact | null;
  /** the time of the visit as it was written */
  readonly at: string;
  readonly day: string;
  readonly notes: readonly string[];
  readonly tests: readonly LegsTest[];
  /** one leg alone is tested: nothing is said of another one */
  readonly isOneLeg: boolean;
  /** what was agreed on, a line each; empty where nothing was */
  readonly plan: readonly string[];
}

const sides = ['left', 'right'] as const satisfies readonly Side[];

/** One leg beside the other by the verdict of the result page, or why they are not compared. */
function besideSentences({ found }: AnyCompared, legs: readonly LegTold[]): readonly string[] {
  const { comparison, zone, underOthers } = found;
  if (comparison.kind === 'ratio') {
    if (zone === null) return [];
    // the verdict about a share of the other leg may be yes where the difference alone is small
    const isAlike = zone === 'cannot-tell' && comparison.underLine.every(({ verdict }) => verdict !== 'yes');
    // the share may hang on a study where the difference, which is all that is told here, does not
    const hangs = underOthers.some((other) => other.zone !== zone);
    const said = [
      LEGS_WORDS[`zone-${zone}`],
      ...(isAlike ? [LEGS_WORDS.alike] : []),
      ...(hangs ? [LEGS_WORDS.hangs] : []),
    ];
    return [said.map(({ text }) => text).join(' ')];
  }
  const why = [
    ...(legs.some(({ told }) => told === 'pain') ? (['stopped-for-pain'] as const) : []),
    ...(isBothSore(found) ? (['both-sore'] as const) : []),
  ];
  if (why.length > 0) return why.map((code) => LEGS_WORDS[code].text);
  const isOne = sides.some((side) => found.findings[side] === null);
  return [LEGS_WORDS[isOne ? 'one-leg' : 'not-compared'].text];
}

function isBothSore({ comparison }: Pick<AnyCompared['found'], 'comparison'>): boolean {
  return comparison.kind === 'blocked' && comparison.blocks.some(({ code }) => code === 'both-sides-sore');
}

function leadOf(legs: readonly LegTold[]): string {
  const [first = '', second] = legs.map(({ text }) => text);
  if (second === undefined) return fill(LEGS_WORDS.alone, { what: capital(first) });
  return fill(LEGS_WORDS.joined, { first: capital(first), second });
}

function testView(
  test: TestKind,
  legs: readonly LegTold[],
  figures: TwoLegFigures,
  compared: AnyCompared | null,
  note: readonly string[],
  bothSore: readonly string[],
): LegsTest {
  const title = LEGS_WORDS[test].text;
  const finding = compared?.found.findings.left ?? compared?.found.findings.right;
  if (compared === null || finding == null) {
    const words = { unit: figures.unit, decimals: figures.decimals, isCount: test === 'heel-raise' };
    const unit = test === 'heel-raise' ? 'count' : 'N';
    return { title, sentences: [leadOf(legs)], figures, lines: [], changes: [], test, unit, words };
  }
  const words = compared.wordsOf(finding.value.unit);
  const changes = sides.flatMap((side) => {
    // where both are sore each leg has the start of this complaint, and what lies before it is another one
    const past = (compared.baselines ?? compared.pasts)[side];
    return past === undefined ? [] : [{ side, ...legChange(side, past, words, compared.baselines !== null) }];
  });
  const sentences = [
    leadOf(legs),
    ...(legs.length === 1 ? [] : besideSentences(compared, legs)),
    ...changes.flatMap((change) => change.sentences),
    ...bothSore,
    ...note,
  ];
  return {
    title,
    // what holds for both legs is said once
    sentences: [...new Set(sentences)],
    figures,
    lines: changes.flatMap(({ line }) => line ?? []),
    changes: changes.map(({ side, told, line }) => ({ side, told, line })),
    test,
    unit: test === 'heel-raise' ? 'count' : finding.value.unit === 'N.m' ? 'N.m' : 'N',
    words,
  };
}

/** What such numbers can and cannot say; of a leg that is not there nothing is said. */
export function canAndCannot({ isOneLeg }: Pick<LegsView, 'isOneLeg'>): readonly string[] {
  const codes = isOneLeg ? (['can-day', 'can-not'] as const) : (['can-day', 'can-other', 'can-not'] as const);
  return codes.map((code) => LEGS_WORDS[code].text);
}

/** What the page is called. */
export function legsTitle({ isOneLeg }: Pick<LegsView, 'isOneLeg'>): string {
  return (isOneLeg ? LEGS_WORDS['title-one'] : LEGS_PLACE.title).text;
}

/** A simulated or played set tests nobody. */
function testsSomebody({ origin }: { readonly origin: SetChoice['origin'] }): boolean {
  return origin === 'live' || origin === 'by-hand';
}

/** A test in which no leg was tested is no test. */
function isTested(legs: readonly LegTold[]): boolean {
  return legs.some(({ told }) => told !== 'untested');
}

/** What comes next for somebody who was not tested, by the lines of the safety list that kept from it. */
function nextSteps({ safety }: Visit): readonly string[] {
  const lines = safety === null ? [] : locksOf(safety);
  const known = lines.flatMap(({ id }) => (id in LEGS_NEXT_WORDS ? [id as keyof typeof LEGS_NEXT_WORDS] : []));
  return known.length === 0
    ? []
    : [...new Set((['not-tested', ...known] as const).map((code) => LEGS_NEXT_WORDS[code].text))];
}

/** What somebody is shown of a visit: the numbers and verdicts of its result page, in words for who was tested. */
export function legsView(
  visit: Visit,
  person: Person,
  earlier: readonly Visit[],
  own: OwnErrorsInUse = noOwnErrors,
  contact: ClinicContact | null = null,
  plan: readonly PlanItem[] = [],
): LegsView {
  const sets = sides.flatMap((side) => [setOf(visit, side) ?? [], pullSetOf(visit, side) ?? []].flat());
  const tests = testsOf(visit).flatMap((test): LegsTest[] => {
    const isRaise = test === 'heel-raise';
    const legs = legsTested(visit).map((side) => (isRaise ? raisesTold : pushesTold)(visit, side));
    const [figures] = (isRaise ? twoLegFigures : pullFigures)(visit);
    if (!isTested(legs) || figures === undefined) return [];
    const isAssessed = sides.some((side) => (isRaise ? setOf : pullSetOf)(visit, side)?.report != null);
    const compare: (visit: Visit, person: Person, earlier: readonly Visit[], own: OwnErrorsInUse) => AnyCompared =
      isRaise ? comparedRaises : comparedPushes;
    const compared = isAssessed ? compare(visit, person, earlier, own) : null;
    const name = isRaise ? LEGS_WORDS.count.text : fill(LEGS_WORDS.force, { unit: figures.unit });
    const note = figures.unit === 'N' ? [LEGS_WORDS.newton.text] : [];
    const isBoth = compared !== null && compared.baselines !== null;
    const bothSore = isBoth
      ? [...sides.flatMap((side) => bothSoreLeg(visit, side, test, compared)), paceSentence(compared)]
      : [];
    return [testView(test, legs, { ...figures, title: name }, compared, note, bothSore)];
  });
  return {
    contact,
    isOneLeg: visit.only !== undefined,
    at: visit.begunAt,
    day: fill(LEGS_WORDS[isUntested(visit) ? 'day-untested' : 'day'], { day: dayOf(visit.begunAt) }),
    notes: [
      ...(isUntested(visit) ? nextSteps(visit) : []),
      ...(sets.some(({ choice }) => !testsSomebody(choice)) ? [LEGS_WORDS['not-live'].text] : []),
      ...(sets.some(({ choice }) => choice.placement === 'hand') ? [LEGS_WORDS['by-hand'].text] : []),
    ],
    tests,
    plan: plan.map(planLineText),
  };
}
