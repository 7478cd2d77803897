import {
  type IdentityDifference,
  identityDifferences,
  type LegCourse,
  type OwnReliability,
  type Side,
  type SinceVisit,
  type VisitResult,
} from '@surae/analysis';
import {
  CHANGE_ZONE_SENTENCES,
  COMPARE_CAUTION_SENTENCES,
  FEATURE_VALUE_WORDS,
  FEATURE_WORDS,
  NO_CHANGE_SENTENCES,
  PAST_WORDS,
  PROTOCOLS,
  RATIO_BLOCK_SENTENCES,
  SUMMARY_WORDS,
} from '@surae/shared';
import { decimal, fixed } from '../words/decimal.ts';
import { entryWords } from '../words/entry-words.ts';
import { fill } from '../words/fill.ts';
import { errorWords, otherErrorWords, ownUnusedWords } from './error-words.ts';
import { amountWords, capital, finer, signed, type ValueWords } from './value-words.ts';

/** One visit of a series that may be looked at as one, with the 95 % interval of its value. */
export interface CoursePoint {
  readonly day: number;
  readonly when: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** The same test of one leg over its visits. */
export interface CourseMarks {
  readonly side: Side;
  readonly title: string;
  readonly points: readonly CoursePoint[];
  readonly words: ValueWords;
}

/** An earlier test that is not joined to this one, and why. */
export interface ApartLine {
  readonly when: string;
  readonly value: string;
  readonly why: string;
}

/** One leg beside its own earlier visits. */
export interface PastView {
  readonly side: Side;
  readonly lead: string;
  readonly lines: readonly string[];
  /** two visits and more of the same test; null where there are fewer */
  readonly course: CourseMarks | null;
  readonly apart: readonly ApartLine[];
}

/** A visit with its day as it is read, and the standard uncertainty of its value from one test to the next. */
export interface PastVisit {
  readonly result: VisitResult;
  readonly when: string;
  readonly u: number | null;
  readonly words: ValueWords;
}

export interface PastQuestion {
  readonly side: Side;
  readonly now: PastVisit;
  /** earlier ones that were done in the same way and show what the calf could do, the oldest first */
  readonly alike: readonly PastVisit[];
  /** the other earlier ones */
  readonly unlike: readonly PastVisit[];
  /** of the alike ones and this one; null where this one is not interpreted or there is nothing alike */
  readonly course: LegCourse | null;
  /** the clinic's own error of this test, used or not */
  readonly own?: OwnReliability | undefined;
}

const reach = 1.96;

/** Features that have a name of their own, in the order in which they are named. */
const named = Object.keys(FEATURE_WORDS).filter((feature) => feature !== 'others');

function valueWords(value: string | null): string {
  if (value === null) return PAST_WORDS['not-known'].text;
  const protocol = PROTOCOLS.find(({ id }) => id === value);
  if (protocol !== undefined) return entryWords(protocol, 'title');
  return Object.hasOwn(FEATURE_VALUE_WORDS, value)
    ? FEATURE_VALUE_WORDS[value as keyof typeof FEATURE_VALUE_WORDS].text
    : value;
}

/** In what two tests differ, feature by feature; fine settings are counted and not listed. */
export function differenceWords(differences: readonly IdentityDifference[]): readonly string[] {
  const known = named.flatMap((feature) => differences.find((one) => one.feature === feature) ?? []);
  const others = differences.length - known.length;
  return [
    ...known.map(({ feature, before, after }) =>
      fill(PAST_WORDS.differs, {
        feature: FEATURE_WORDS[feature as keyof typeof FEATURE_WORDS].text,
        before: valueWords(before),
        after: valueWords(after),
      }),
    ),
    ...(others === 0 ? [] : [fill(FEATURE_WORDS.others, { count: others })]),
  ];
}

/** In what two results differ; the unit hangs on the sensor, and is no part of how a test was done. */
function differencesOf({ result: before }: PastVisit, { result: after }: PastVisit): readonly IdentityDifference[] {
  const unit = before.unit === after.unit ? [] : [{ feature: 'unit', before: before.unit, after: after.unit }];
  return [...identityDifferences(before.identity, after.identity), ...unit];
}

/** Why a test is not held against earlier ones. */
function blockWords({ result }: PastVisit): string {
  return result.blocks.map((block) => RATIO_BLOCK_SENTENCES[block].text).join(' ');
}

/** @param otherwise - what is said of a test that is like this one and shows what the calf could do */
function apartLine(one: PastVisit, now: PastVisit, otherwise: string): ApartLine {
  const { words } = one;
  const { value, blocks } = one.result;
  const differences = differenceWords(differencesOf(one, now));
  const why = [...differences, ...blocks.map((block) => RATIO_BLOCK_SENTENCES[block].text)];
  return {
    when: one.when,
    value: value === null ? PAST_WORDS['not-known'].text : `${decimal(value, words.decimals)} ${words.unit}`,
    why: why.length === 0 ? otherwise : why.join('; '),
  };
}

/** Why nothing earlier is held against this test: done in another way, or in the same way and not interpreted, or today. */
function unlikeCode(now: PastVisit, unlike: readonly PastVisit[]): 'none-alike' | 'none-interpreted' | 'only-today' {
  const differs = (one: PastVisit): boolean => differencesOf(one, now).length > 0;
  if (unlike.some(differs)) return 'none-alike';
  return unlike.some(({ result }) => result.blocks.length > 0) ? 'none-interpreted' : 'only-today';
}

function leadOf({ side, now, alike, unlike, course }: PastQuestion): string {
  const { words } = now;
  const leg = capital(SUMMARY_WORDS[side].text);
  const why = blockWords(now);
  if (alike.length + unlike.length === 0) return fill(PAST_WORDS.none, { leg });
  if (now.result.blocks.length > 0) return fill(PAST_WORDS['not-now'], { leg, why });
  const change = course?.changes.find(({ since }) => since === 'visit-before');
  if (change === undefined) return fill(PAST_WORDS[unlikeCode(now, unlike)], { leg });
  const { outcome } = change;
  if (outcome.kind === 'side-by-side') {
    const reasons = outcome.reasons.map((reason) => NO_CHANGE_SENTENCES[reason].text).join(' ');
    return fill(PAST_WORDS['no-error'], { leg, why: reasons });
  }
  const told = {
    leg,
    day: alike[alike.length - 1]?.when ?? '',
    zone: CHANGE_ZONE_SENTENCES[outcome.detectable.zone].text,
  };
  if (Number(fixed(outcome.change.value, words.decimals)) === 0) {
    return fill(PAST_WORDS[words.isCount ? 'change-equal' : 'change-none'], told);
  }
  return fill(PAST_WORDS.change, { ...told, difference: amountWords(outcome.change.value, words) });
}

/** Everything about one change behind its zone. */
function changeLines(
  { outcome, underOthers, hangsOnReliability }: SinceVisit,
  { now: { words, result }, own }: PastQuestion,
): readonly string[] {
  if (outcome.kind === 'side-by-side') return [];
  const { change, detectable, ratio, reliability } = outcome;
  const digits = finer(words);
  // on the log scale the detectable change is one of a ratio, and has no place among differences
  const sizes =
    ratio === null
      ? [
          fill(PAST_WORDS.detectable, {
            at95: decimal(detectable.at95, digits),
            at80: decimal(detectable.at80, digits),
            change: signed(change.value, words.decimals),
            low: signed(change.low, digits),
            high: signed(change.high, digits),
          }),
        ]
      : [];
  return [
    ...sizes,
    errorWords(reliability),
    ...ownUnusedWords(own, result.unit),
    ...otherErrorWords(
      hangsOnReliability,
      underOthers.map(({ reliability: other, zone }) => ({
        source: other.source,
        verdict: PAST_WORDS[`zone-${zone}`].text,
      })),
    ),
  ];
}

function trendLines({ trend, visits }: LegCourse, words: ValueWords): readonly string[] {
  if (trend === null || trend.kind === 'side-by-side') return [];
  const { value, low, high } = trend.slopePerWeek;
  const told = { visits: visits.length, slope: `${signed(value, finer(words))} ${words.unit}` };
  if (low === null || high === null) return [fill(PAST_WORDS['trend-open'], told)];
  const code = trend.moves === 'yes' ? 'trend-yes' : 'trend-cannot_tell';
  return [fill(PAST_WORDS[code], { ...told, low: signed(low, finer(words)), high: signed(high, finer(words)) })];
}

function linesOf(question: PastQuestion): readonly string[] {
  const { alike, course, now } = question;
  const { words } = now;
  if (course === null) return [];
  const before = course.changes.find(({ since }) => since === 'visit-before');
  const first = course.changes.find(({ since }) => since === 'first-visit');
  const sinceFirst =
    first === undefined || first.outcome.kind === 'side-by-side'
      ? []
      : [
          fill(PAST_WORDS.since, {
            day: alike[0]?.when ?? '',
            difference: amountWords(first.outcome.change.value, words),
            zone: CHANGE_ZONE_SENTENCES[first.outcome.detectable.zone].text,
          }),
        ];
  const cautions = [before, first].flatMap((one) => (one?.outcome.kind === 'change' ? one.outcome.cautions : []));
  return [
    ...(before === undefined ? [] : changeLines(before, question)),
    ...sinceFirst,
    ...trendLines(course, words),
    ...[...new Set(cautions)].map((caution) => COMPARE_CAUTION_SENTENCES[caution].text),
  ];
}

function courseOf({ side, now, alike }: PastQuestion): CourseMarks | null {
  const points = [...alike, now].flatMap(({ result: { day, value }, when, u }) =>
    day === null || value === null || u === null
      ? []
      : [{ day, when, value, low: Math.max(0, value - reach * u), high: value + reach * u }],
  );
  if (now.result.blocks.length > 0 || points.length < 2) return null;
  return { side, title: fill(PAST_WORDS.series, { leg: capital(SUMMARY_WORDS[side].text) }), points, words: now.words };
}

/** One leg beside its own earlier visits: the change and what it hangs on, the course, and whatever stands apart. */
export function pastView(question: PastQuestion): PastView {
  const { side, now, unlike } = question;
  // without a result that is interpreted nothing is alike: everything stands beside it, and the reason lies with this test
  const beside = now.result.blocks.length > 0 ? question.alike : [];
  return {
    side,
    lead: leadOf(question),
    lines: linesOf(question),
    course: courseOf(question),
    apart: [
      ...beside.map((one) => apartLine(one, now, fill(PAST_WORDS['now-blocked'], { why: blockWords(now) }))),
      ...unlike.map((one) => apartLine(one, now, PAST_WORDS['same-day'].text)),
    ],
  };
}
