import { type Report, type SetBlock, type Side, setBlocks } from '@surae/analysis';
import { PROTOCOLS } from '@surae/shared';
import { factTold } from './facts-told.ts';
import type { SetChoice } from './set-choice.ts';
import type { Visit } from './visit.ts';
import { setOf } from './visit-events.ts';

/** With one of these a result is not used at all. */
const unusable: readonly SetBlock[] = [
  'signal-not-usable',
  'hands-used',
  'no-reference',
  'ended-incomplete',
  'end-not-recorded',
];

/** With one of these the leg may be able to do more than it did: the count has no upper bound. */
const atLeast: readonly SetBlock[] = ['ended-for-pain', 'censored', 'fixed-test', 'effort-not-full'];

/** Single-leg raises that counted, with the bounds of their number. */
export interface RaisesCounted {
  readonly scored: number;
  readonly low: number;
  /** endless where the leg may be able to do more than it did */
  readonly high: number;
}

/**
 * Whether a set says something of whom it is of. A simulated or played set tests nobody; a simulated one of an invented person of the
 * demo is all that there is of them.
 */
export function testsSomebody({ origin }: Pick<SetChoice, 'origin'>, isInvented: boolean): boolean {
  return origin === 'live' || origin === 'by-hand' || (isInvented && origin === 'simulated');
}

/**
 * What a result says of single-leg raises at body weight.
 *
 * @param report - of a set [-]
 * @returns the count with its bounds [1], or why it says nothing [-]
 *
 * Source: ours
 */
export function raisesCounted(report: Report): RaisesCounted | 'other-test' | 'not-usable' {
  const protocol = PROTOCOLS.find(({ id }) => id === report.protocol.id);
  const { legs, externalMass } = protocol?.parameters ?? {};
  if (legs?.value !== 'single' || externalMass?.value !== 'none') return 'other-test';
  const blocks = setBlocks(report);
  if (blocks.some((one) => unusable.includes(one))) return 'not-usable';
  const { scored, scoredLow, scoredHigh } = report.count;
  const isOpen = blocks.some((one) => atLeast.includes(one));
  return {
    scored,
    low: Math.min(scoredLow, scored),
    high: isOpen ? Number.POSITIVE_INFINITY : Math.max(scoredHigh, scored),
  };
}

/**
 * Whether a leg did not one raise in this visit, and nobody looked for signs of a rupture and found none. One that was stopped for pain
 * may be able to do more, and is none of these.
 *
 * @param visit - with its sets [-]
 * @param side - the leg [-]
 * @param isInvented - whether the person is one of the demo [-]
 *
 * Source: ours; that not one raise asks for the signs of a rupture first is common practice, no source
 */
export function isRuptureFirst(visit: Pick<Visit, 'sets' | 'factsTold'>, side: Side, isInvented: boolean): boolean {
  const set = setOf(visit, side);
  if (set === undefined || set.report === null || !testsSomebody(set.choice, isInvented)) return false;
  const counted = raisesCounted(set.report);
  return (
    typeof counted === 'object' && counted.high === 0 && factTold(visit, 'rupture-looked', side)?.answer !== 'clear'
  );
}
