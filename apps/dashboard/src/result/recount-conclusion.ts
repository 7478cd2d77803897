import { type Report, robustness, type Verdict } from '@surae/analysis';
import { noOwnErrors, type OwnErrorsInUse, type Person, setOf, type Visit, type VisitSet } from '@surae/casebook';
import { RECOUNT_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';
import { comparedRaises } from './comparisons.ts';

/** Everything that a conclusion about a set stands on. */
export interface ConclusionOf {
  readonly visit: Visit;
  readonly person: Person;
  /** visits before it, the oldest first */
  readonly earlier: readonly Visit[];
  readonly own?: OwnErrorsInUse;
}

/** Sets that are held beside one, and that must be counted by the same criteria before they are again. */
export interface BesideSets {
  /** of the other leg in the same visit */
  readonly other: VisitSet | null;
  /** of the same leg in the last visit that was done alike */
  readonly before: VisitSet | null;
}

/** What is concluded from a set; null where there is no answer. */
export interface Conclusions {
  /** whether this leg does less than the other one */
  readonly less: Verdict | null;
  /** whether it does more than at the visit before */
  readonly more: Verdict | null;
}

/** A conclusion by the first criteria and by the others. */
export interface RobustLine {
  readonly text: string;
  readonly robust: Verdict | 'blocked';
}

function assessed(set: VisitSet | undefined): VisitSet | null {
  return set === undefined || set.report === null ? null : set;
}

/** The sets that one is held beside as it was counted first. */
export function besideSets(set: VisitSet, { visit, person, earlier, own = noOwnErrors }: ConclusionOf): BesideSets {
  const { side } = set.choice;
  const last = comparedRaises(visit, person, earlier, own).pasts[side]?.alike.at(-1)?.visit;
  return {
    other: assessed(setOf(visit, side === 'left' ? 'right' : 'left')),
    before: last === undefined ? null : assessed(setOf(last, side)),
  };
}

function withReports(visit: Visit, reports: ReadonlyMap<string, Report>): Visit {
  const sets = visit.sets.map((set) => ({ ...set, report: reports.get(set.id) ?? set.report }));
  return { ...visit, sets };
}

/** What is concluded from a set when these reports stand in the place of those that were kept, for this look alone. */
export function conclusionsOf(
  set: VisitSet,
  { visit, person, earlier, own = noOwnErrors }: ConclusionOf,
  reports: ReadonlyMap<string, Report>,
): Conclusions {
  const { side } = set.choice;
  const { found, pasts } = comparedRaises(
    withReports(visit, reports),
    person,
    earlier.map((one) => withReports(one, reports)),
    own,
  );
  const { comparison } = found;
  const less = comparison.kind === 'blocked' ? undefined : comparison.underLine.find((one) => one.side === side);
  const outcome = pasts[side]?.course?.changes.find(({ since }) => since === 'visit-before')?.outcome;
  const moved = (change: number): Verdict => (change > 0 ? 'yes' : 'no');
  const more = outcome?.kind !== 'change' ? null : outcome.real === 'yes' ? moved(outcome.change.value) : 'cannot_tell';
  return { less: less?.verdict ?? null, more };
}

function lineOf(code: 'beside-other' | 'beside-past', first: Verdict | null, again: Verdict | null): RobustLine[] {
  if (first === null && again === null) return [];
  const told = (verdict: Verdict | null): string => RECOUNT_WORDS[verdict ?? 'no-answer'].text;
  const robust = first === null || again === null ? 'blocked' : robustness([first, again]);
  const text = fill(RECOUNT_WORDS[code], { first: told(first), again: told(again) });
  return [{ text: `${text} ${RECOUNT_WORDS[`robust-${robust}`].text}`, robust }];
}

/** Each conclusion by both criteria, and whether it hangs on which is chosen; what could not be counted again is not told. */
export function robustLines(
  first: Conclusions,
  again: Conclusions,
  missing: readonly ('other-leg' | 'visit-before')[],
): readonly RobustLine[] {
  const open = missing.map((what): RobustLine => {
    const text = fill(RECOUNT_WORDS['others-missing'], { what: RECOUNT_WORDS[what].text });
    return { text, robust: 'cannot_tell' };
  });
  return [
    ...(missing.includes('other-leg') ? [] : lineOf('beside-other', first.less, again.less)),
    ...(missing.includes('visit-before') ? [] : lineOf('beside-past', first.more, again.more)),
    ...open,
  ];
}
