import { COMPARISON_RULES } from '@surae/shared';
import type { Side } from '../trace.ts';
import { countStandardError } from './count-repeatability.ts';
import { injuryStanding } from './earlier-injury.ts';
import type { ComparedReport, PairCircumstances } from './pair.ts';
import { handsOf, setBlocks } from './set-blocks.ts';

/** Why the two sides of a visit are not set into a ratio, in the order in which the reasons are shown. */
export const RATIO_BLOCKS = [
  /** both tendons are sore now: neither side stands for what is usual */
  'both-sides-sore',
  /** nobody said of both sides whether they are sore */
  'soreness-not-asked',
  /** a side stopped for pain: its result is what was tolerated */
  'ended-for-pain',
  /** a side stopped for safety, a technical failure, cramp, fear, breath or balance */
  'ended-incomplete',
  /** why a side ended was not recorded */
  'end-not-recorded',
  /** a side reached the preset number: its count is a lower bound */
  'censored',
  /** the sides were tested by different protocols or parameters of one */
  'different-protocol',
  /** the sensor was placed differently */
  'different-placement',
  /** how a side was tested beyond its protocol, such as the footwear worn, was not recorded */
  'way-not-recorded',
  /** a side has several sets of one way of testing, and nobody said which one counts */
  'several-sets',
  /** the sets came from different kinds of source */
  'different-source',
  /** where the sets came from is not recorded */
  'source-not-recorded',
  /** the side that is compared with has too few repetitions */
  'few-repetitions',
  /** the side that is compared with has too few repetitions for the error of the count */
  'within-error',
  /** the rest between the sides was too short */
  'short-rest',
  /** the rest between the sides was not recorded */
  'rest-not-recorded',
  /** which side came first was not recorded */
  'order-not-recorded',
  /** the side that is compared with was operated on, broken or torn, within twelve months or at a time that is not known */
  'earlier-injury',
  /** the same longer ago, and no clinician confirmed that the side may be compared with */
  'earlier-injury-not-confirmed',
  /** nobody asked about earlier injuries of the side that is compared with */
  'earlier-injury-not-asked',
  /** the signal of a side does not hold, nothing was found, or too much was lost */
  'signal-not-usable',
  /** it is not certain which side a set belongs to */
  'side-uncertain',
  /** a side stopped before signs of fatigue */
  'effort-not-full',
  /** too little is known about the effort of a side */
  'effort-unknown',
  /** the trials of a maximal hold differ, still rise, or have a short plateau */
  'no-maximum',
  /** a side was pushed with the hands by more than the protocol allows */
  'hands-used',
  /** the hands were observed on one side and not on the other */
  'hands-observed-once',
  /** the sides were tested on different days */
  'different-days',
  /** the day of a side was not recorded */
  'day-not-recorded',
  /** heights were held against references of different rules */
  'different-reference',
  /** a side had nothing that its heights were held against */
  'no-reference',
  /** progressive weakness, numbness or foot drop was ticked */
  'nerve-signs',
  /** nobody asked about signs of a nerve */
  'nerve-signs-not-asked',
  /** a fixed number or time, done for how it is tolerated */
  'fixed-test',
] as const;

export type RatioBlock = (typeof RATIO_BLOCKS)[number];

type Both<Value> = Readonly<Record<Side, Value>>;

const SIDES = ['left', 'right'] as const satisfies readonly Side[];

/** Sides that the other one would be set against: the less sore one, or both where that is not known. */
function comparators(sore: PairCircumstances['sore']): readonly Side[] {
  if (sore.left === true && sore.right === false) return ['right'];
  if (sore.right === true && sore.left === false) return ['left'];
  return SIDES;
}

function byCircumstances(circumstances: PairCircumstances): RatioBlock[] {
  const { sore, first, sameDay, sameSource, earlierInjury, nerveSigns } = circumstances;
  const restS = Number.isFinite(circumstances.restS) ? circumstances.restS : null;
  const injuries = comparators(sore).map((side) => injuryStanding(earlierInjury[side]));
  // what comes from a file may lack an answer altogether: whatever is neither yes nor no was not asked
  const unknown = (answer: boolean | null): boolean => answer !== true && answer !== false;
  const blocks: [RatioBlock, boolean][] = [
    ['both-sides-sore', sore.left === true && sore.right === true],
    ['soreness-not-asked', unknown(sore.left) || unknown(sore.right)],
    ['different-source', sameSource === false],
    ['source-not-recorded', unknown(sameSource)],
    ['short-rest', restS !== null && restS < COMPARISON_RULES.restLeast.value],
    ['rest-not-recorded', restS === null],
    ['order-not-recorded', first !== 'left' && first !== 'right'],
    ['earlier-injury', injuries.includes('recent')],
    ['earlier-injury-not-confirmed', injuries.includes('not-confirmed')],
    ['earlier-injury-not-asked', injuries.includes('not-asked')],
    ['different-days', sameDay === false],
    ['day-not-recorded', unknown(sameDay)],
    ['nerve-signs', nerveSigns === true],
    ['nerve-signs-not-asked', unknown(nerveSigns)],
  ];
  return blocks.filter(([, holds]) => holds).map(([block]) => block);
}

function byReports(of: Both<ComparedReport>, sore: PairCircumstances['sore']): RatioBlock[] {
  const differ = (value: (report: ComparedReport) => unknown): boolean => value(of.left) !== value(of.right);
  const compared = comparators(sore).map((side) => of[side]);
  const rules = SIDES.map((side) => of[side].reference?.rule);
  const errors = COMPARISON_RULES.standardErrorsLeast.value;
  const blocks: [RatioBlock, boolean][] = [
    ['different-protocol', differ(({ protocol }) => protocol.fingerprint)],
    ['different-placement', differ(({ placement }) => placement) || differ(({ kind }) => kind)],
    ['few-repetitions', compared.some(({ count }) => count.scored < COMPARISON_RULES.repetitionsLeast.value)],
    ['within-error', compared.some(({ count, protocol }) => count.scored < errors * countStandardError(protocol.id))],
    ['side-uncertain', SIDES.some((side) => of[side].side !== side || of[side].gate.reasons.includes('side-unknown'))],
    ['hands-observed-once', differ((report) => handsOf(report).observed)],
    ['different-reference', rules.every((rule) => rule !== undefined) && rules[0] !== rules[1]],
  ];
  return blocks.filter(([, holds]) => holds).map(([block]) => block);
}

/**
 * Whether a ratio of the sides would rest on a leg with an earlier injury that a clinician confirmed: allowed, with a caution.
 *
 * @param circumstances - soreness and earlier injuries; null is not known [-]
 * @returns true when it would [-]
 *
 * Source: common practice, no source
 */
export function restsOnConfirmedInjury({
  sore,
  earlierInjury,
}: Pick<PairCircumstances, 'sore' | 'earlierInjury'>): boolean {
  return comparators(sore).some((side) => injuryStanding(earlierInjury[side]) === 'confirmed');
}

/**
 * Every reason against a ratio of the sides that is known beyond what was measured, whatever was measured: soreness, rest,
 * order, day, source, earlier injury, signs of a nerve. What is not known is a reason of its own.
 *
 * @param circumstances - what is known; null is not known [s for the rest, - else]
 * @returns the reasons, in the order of {@link RATIO_BLOCKS}; empty when there is none [-]
 *
 * Source: common practice, no source; rest of two minutes: Sleeswijk Visser (2025), Braz J Phys Ther 29:101188
 */
export function circumstanceBlocks(circumstances: PairCircumstances): readonly RatioBlock[] {
  const found = new Set(byCircumstances(circumstances));
  return RATIO_BLOCKS.filter((block) => found.has(block));
}

/**
 * Every reason why the two sides of a visit would not be set into a ratio; what is not known is a reason of its own. An empty
 * list says only that nothing known stands against it: the other leg may be low too.
 *
 * @param left - report of the left side, or what is needed of it [-]
 * @param right - the same of the right side [-]
 * @param circumstances - what is known beyond the reports; null is not known [s for the rest, - else]
 * @returns the reasons, in the order of {@link RATIO_BLOCKS}; empty when there is none [-]
 *
 * Source: common practice, no source; rest of two minutes: Sleeswijk Visser (2025), Braz J Phys Ther 29:101188; both tendons
 * are often affected: Silbernagel (2006), Knee Surg Sports Traumatol Arthrosc 14:1207
 */
export function ratioBlocks(
  left: ComparedReport,
  right: ComparedReport,
  circumstances: PairCircumstances,
): readonly RatioBlock[] {
  const found = new Set<RatioBlock>([
    ...byCircumstances(circumstances),
    ...setBlocks(left),
    ...setBlocks(right),
    ...byReports({ left, right }, circumstances.sore),
  ]);
  return RATIO_BLOCKS.filter((block) => found.has(block));
}
