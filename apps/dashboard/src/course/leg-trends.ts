import type { Side } from '@surae/analysis';
import {
  type CasebookVisit,
  isBothSore,
  type LegOfVisit,
  type LegPast,
  noOwnErrors,
  type OwnErrorsInUse,
  type Person,
  pullSetOf,
  setOf,
  type TestKind,
  type Visit,
} from '@surae/casebook';
import { PAST_WORDS, RATIO_BLOCK_SENTENCES, TEST_CHOICE_WORDS, TREND_WORDS } from '@surae/shared';
import { type WholeLine, wholeLine } from '../legs/leg-change.ts';
import { type BilateralView, bilateralView } from '../result/bilateral-view.ts';
import type { PastCompared } from '../result/compared.ts';
import { comparedPushes, comparedRaises, groupViews, pastViews } from '../result/comparisons.ts';
import type { PastView } from '../result/past-view.ts';
import { capital, type ValueWords } from '../result/value-words.ts';
import { dayOf } from '../words/dates.ts';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';

/** One test of a leg in the table beside the picture. */
export interface TrendRow {
  readonly when: string;
  readonly value: string;
  readonly interval: string;
  /** whether a line joins it to the others, and if none does, why */
  readonly joined: string;
}

/** One leg in one kind of test over all its visits. */
export interface LegTrend {
  readonly side: Side;
  readonly lead: string;
  readonly lines: readonly string[];
  readonly rows: readonly TrendRow[];
}

/** One kind of test over all visits: both legs in one picture, each with its own line. */
export interface TestTrend {
  readonly test: TestKind;
  readonly title: string;
  readonly lines: readonly WholeLine[];
  readonly words: ValueWords;
  readonly legs: readonly LegTrend[];
  /** each leg by itself, where both were sore at the newest visit with this test; null where not */
  readonly bilateral: BilateralView | null;
}

const sides = ['left', 'right'] as const satisfies readonly Side[];
const tests = ['heel-raise', 'isometric'] as const satisfies readonly TestKind[];
const reach = 1.96;

function hasResult(visit: Visit, test: TestKind, side: Side): boolean {
  return (test === 'heel-raise' ? setOf : pullSetOf)(visit, side)?.report != null;
}

/** The newest test of a leg, when nothing is on a line with it yet. */
function rowOfNow({ now }: LegPast<unknown>, u: number | null, { decimals }: ValueWords): TrendRow[] {
  const { visit, result } = now;
  if (result.value === null) return [];
  const blocks = result.blocks.map((block) => RATIO_BLOCK_SENTENCES[block].text).join(' ');
  const half = u === null ? null : reach * u;
  return [
    {
      when: dayOf(visit.begunAt),
      value: decimal(result.value, decimals),
      interval:
        half === null
          ? PAST_WORDS['not-known'].text
          : fill(PAST_WORDS.range, {
              low: decimal(Math.max(0, result.value - half), decimals),
              high: decimal(result.value + half, decimals),
            }),
      joined: blocks === '' ? TREND_WORDS['joined-yes'].text : fill(TREND_WORDS.apart, { why: blocks }),
    },
  ];
}

/** Whether a result is told in the unit of the newest one: any other one is told with its own. */
function isOnAxis(one: LegOfVisit<unknown> | undefined, { now }: LegPast<unknown>): boolean {
  return one !== undefined && one.result.value !== null && one.result.unit === now.result.unit;
}

function rowsOf(past: LegPast<unknown>, view: PastView, u: number | null, words: ValueWords): readonly TrendRow[] {
  const number = (value: number): string => decimal(value, words.decimals);
  const onLine =
    view.course === null
      ? rowOfNow(past, u, words)
      : view.course.points.map(({ when, value, low, high }) => ({
          when,
          value: number(value),
          interval: fill(PAST_WORDS.range, { low: number(low), high: number(high) }),
          joined: TREND_WORDS['joined-yes'].text,
        }));
  // in the order in which the view tells of them
  const others = past.now.result.blocks.length > 0 ? [...past.alike, ...past.unlike] : past.unlike;
  const apart = view.apart.map(({ when, value, why }, at) => ({
    when,
    value: isOnAxis(others[at], past) ? number(others[at]?.result.value ?? 0) : value,
    interval: '',
    joined: fill(TREND_WORDS.apart, { why }),
  }));
  return [...onLine.toReversed(), ...apart.toReversed()];
}

function comparedBy(test: TestKind): (...of: Parameters<typeof comparedRaises>) => PastCompared {
  return test === 'heel-raise' ? comparedRaises : comparedPushes;
}

/** A leg from its newest result backwards; nothing where it has none. */
function legTrend(
  side: Side,
  test: TestKind,
  visits: readonly Visit[],
  person: Person,
  own: OwnErrorsInUse,
): { readonly leg: LegTrend; readonly line: WholeLine; readonly unit: string; readonly words: ValueWords }[] {
  const at = visits.findLastIndex((visit) => hasResult(visit, test, side));
  const visit = visits[at];
  if (visit === undefined) return [];
  const compared = comparedBy(test)(visit, person, visits.slice(0, at), own);
  const [past, view] = [compared.pasts[side], pastViews(compared, test).find((one) => one.side === side)];
  if (past === undefined || view === undefined) return [];
  const { unit } = past.now.result;
  const words = compared.wordsOf(unit);
  const rows = rowsOf(past, view, compared.found.findings[side]?.value.u ?? null, words);
  return [{ leg: { side, lead: view.lead, lines: view.lines, rows }, line: wholeLine(side, past), unit, words }];
}

/** Both legs by themselves at the newest visit with a result of this test, where both are sore. */
function bilateralNow(
  test: TestKind,
  visits: readonly Visit[],
  person: Person,
  own: OwnErrorsInUse,
): BilateralView | null {
  const at = visits.findLastIndex((visit) => sides.some((side) => hasResult(visit, test, side)));
  const visit = visits[at];
  if (visit === undefined || !isBothSore(visit)) return null;
  const compared = comparedBy(test)(visit, person, visits.slice(0, at), own);
  return bilateralView(visit, test, compared, test === 'heel-raise' ? groupViews(compared) : []);
}

/**
 * Every kind of test over all visits, a leg each from its newest result backwards: what was done alike is on one line, what
 * was not stands apart and says why. Legs whose results are in two units stand in two pictures.
 */
export function testTrends(
  visits: readonly CasebookVisit[],
  person: Person,
  own: OwnErrorsInUse = noOwnErrors,
): readonly TestTrend[] {
  const ordered = visits.map(({ visit }) => visit).sort((a, b) => Date.parse(a.begunAt) - Date.parse(b.begunAt));
  return tests.flatMap((test): readonly TestTrend[] => {
    const found = sides.flatMap((side) => legTrend(side, test, ordered, person, own));
    const bilateral = bilateralNow(test, ordered, person, own);
    const units = [...new Set(found.map(({ unit }) => unit))];
    return units.map((unit) => {
      const those = found.filter((one) => one.unit === unit);
      return {
        test,
        title: capital(TEST_CHOICE_WORDS[test].text),
        lines: those.map(({ line }) => line),
        words: those[0]!.words,
        legs: those.map(({ leg }) => leg),
        bilateral,
      };
    });
  });
}
