import type { Report, Side } from '@surae/analysis';
import { SUMMARY_WORDS } from '@surae/shared';
import type { Visit, VisitSet } from '../journey/visit.ts';
import { setOf } from '../journey/visit-events.ts';
import { fill } from '../words/fill.ts';

const sides = ['left', 'right'] as const satisfies readonly Side[];

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function between(what: string, count: number, low: number, high: number): string {
  return low === count && high === count ? what : fill(SUMMARY_WORDS.between, { what, low, high });
}

/** What one leg did. A set that ended for pain tells how far it was tolerated, and never that it "only" came so far. */
function legClause(side: Side, set: VisitSet | undefined): string {
  const leg = SUMMARY_WORDS[side].text;
  if (set === undefined) return fill(SUMMARY_WORDS.untested, { leg });
  if (set.report === null) return fill(SUMMARY_WORDS.waiting, { leg });
  return resultClause(leg, set.report);
}

function resultClause(leg: string, { count, end }: Report): string {
  const { attempted, low, high, scored, scoredLow, scoredHigh } = count;
  if (attempted === 0) return fill(SUMMARY_WORDS.nothing, { leg });
  // how far a set came is a matter of all that was tried; what it is worth, of what met the rules
  const came = (code: 'pain' | 'ended-early'): string =>
    between(fill(SUMMARY_WORDS[code], { leg, count: attempted }), attempted, low, high);
  const didSo = (code: 'did' | 'probe' | 'reason-unknown'): string =>
    between(fill(SUMMARY_WORDS[code], { leg, count: scored }), scored, scoredLow, scoredHigh);
  switch (end.class) {
    case 'capacity':
      return count.censored ? fill(SUMMARY_WORDS['at-least'], { leg, count: scored }) : didSo('did');
    case 'censored':
      return fill(SUMMARY_WORDS['at-least'], { leg, count: scored });
    case 'tolerance':
      return came('pain');
    case 'incomplete':
      return came('ended-early');
    case 'probe':
      return didSo('probe');
    case 'unknown':
      return didSo('reason-unknown');
  }
}

/** The result of a visit in one sentence, left before right. */
export function summarySentence(visit: Visit): string {
  const [first, second] = sides.map((side) => legClause(side, setOf(visit, side)));
  return fill(SUMMARY_WORDS.joined, { first: capital(first ?? ''), second: second ?? '' });
}

/** How the number of a leg came about: tried, met, after the end. Undefined where nothing was found. */
export function attemptedSentence(side: Side, { count }: Report): string | undefined {
  const { attempted, valid, scored } = count;
  if (attempted === 0) return undefined;
  const leg = capital(SUMMARY_WORDS[side].text);
  const met = fill(SUMMARY_WORDS[valid === attempted ? 'all-met' : 'some-met'], { leg, attempted, valid });
  return valid === scored ? met : `${met} ${fill(SUMMARY_WORDS['after-end'], { late: valid - scored })}`;
}
