import type { Report, Side } from '@surae/analysis';
import { endedWithPop, legsTested, setOf, type Visit, type VisitSet } from '@surae/casebook';
import { HAND_WORDS, SUMMARY_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';
import { scoreFigure } from './score-figure.ts';

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** What one leg did. A set that ended for pain tells how far it was tolerated, and never that it "only" came so far. */
export function legClause(side: Side, set: VisitSet | undefined): string {
  const leg = SUMMARY_WORDS[side].text;
  if (set === undefined) return fill(SUMMARY_WORDS.untested, { leg });
  if (endedWithPop(set)) return fill(SUMMARY_WORDS.popped, { leg });
  if (set.report === null) return fill(SUMMARY_WORDS.waiting, { leg });
  return resultClause(leg, set.report);
}

/** What is told of a leg, by how its set ended. */
export type Told = 'did' | 'at-least' | 'pain' | 'ended-early' | 'probe' | 'reason-unknown';

export const toldOfEnd = {
  capacity: 'did',
  censored: 'at-least',
  tolerance: 'pain',
  incomplete: 'ended-early',
  probe: 'probe',
  unknown: 'reason-unknown',
} as const satisfies Record<Report['end']['class'], Told>;

function resultClause(leg: string, report: Report): string {
  if (report.count.attempted === 0) return fill(SUMMARY_WORDS.nothing, { leg });
  const { value, low, high, atLeast } = scoreFigure(report);
  const told = toldOfEnd[report.end.class];
  const what = fill(SUMMARY_WORDS[told === 'did' && atLeast ? 'at-least' : told], { leg, count: value });
  const bounded = atLeast || low === high ? what : fill(SUMMARY_WORDS.between, { what, low, high });
  return report.placement === 'hand' ? fill(HAND_WORDS.told, { what: bounded }) : bounded;
}

/** The result of a visit in one sentence, left before right; of one leg alone nothing is said of the other. */
export function summarySentence(visit: Visit): string {
  const [first, second] = legsTested(visit).map((side) => legClause(side, setOf(visit, side)));
  if (visit.only !== undefined) return fill(SUMMARY_WORDS.alone, { what: capital(first ?? '') });
  return fill(SUMMARY_WORDS.joined, { first: capital(first ?? ''), second: second ?? '' });
}

/** How the number of a leg came about: tried, met, after the end. Undefined where nothing was found. */
export function attemptedSentence(side: Side, { count, placement }: Report): string | undefined {
  const { attempted, valid, scored } = count;
  if (attempted === 0) return undefined;
  const leg = capital(SUMMARY_WORDS[side].text);
  const isAll = valid === attempted;
  const met =
    placement === 'hand'
      ? fill(HAND_WORDS[isAll ? 'tried' : 'tried-marked'], { leg, attempted, marked: attempted - valid })
      : fill(SUMMARY_WORDS[isAll ? 'all-met' : 'some-met'], { leg, attempted, valid });
  return valid === scored ? met : `${met} ${fill(SUMMARY_WORDS['after-end'], { late: valid - scored })}`;
}
