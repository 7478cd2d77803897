import { COMPARISON_RULES } from '@surae/shared';
import type { JudgingSettings } from '../assess/settings.ts';
import { type EnduranceEffort, enduranceEffort } from './effort-quality.ts';
import { type Irritability, irritabilityOf } from './irritability.ts';
import type { MeasuredValue } from './measured-value.ts';
import { type PainFinding, painFinding } from './pain-and-capacity.ts';
import { type NoReference, type ReferencesFound, referencesFor } from './reference-lookup.ts';
import type { Reliability } from './reliability.ts';
import { chooseReliability, type ReliabilityQuestion } from './reliability-choice.ts';
import { scoredRepetitions } from './scored-repetitions.ts';
import { type SetBlock, setBlocks } from './set-blocks.ts';
import type { OwnReliabilities, PersonFacts, TestedLeg } from './visit-facts.ts';

/** What one set says by itself: its score, whether it may be interpreted, and what effort, pain and irritability make of it. */
export interface LegFinding {
  /** the score with its uncertainty from one test to the next */
  readonly value: MeasuredValue;
  /** the error that the uncertainty rests on; null where none is known */
  readonly reliability: Reliability | null;
  /** why the set is not interpreted as what the calf can do; empty when nothing stands against it */
  readonly blocks: readonly SetBlock[];
  readonly effort: EnduranceEffort;
  readonly pain: PainFinding;
  readonly irritability: Irritability;
  readonly reference: ReferencesFound | NoReference;
}

/**
 * What the choice of an error of the count of a set is asked.
 *
 * @param leg - the set [-]
 * @param own - the clinic's own errors [repetitions]
 * @returns the question; shares are taken of the score [repetitions]
 *
 * Source: ours
 */
export function countQuestion({ report, protocol }: TestedLeg, own: OwnReliabilities): ReliabilityQuestion {
  return {
    measure: 'repetitions',
    protocolId: protocol.id,
    unit: '1',
    before: report.count.scored,
    own: Object.hasOwn(own, protocol.id) ? own[protocol.id] : null,
  };
}

function referenceOf(
  { report, protocol }: TestedLeg,
  blocks: readonly SetBlock[],
  person: PersonFacts,
): LegFinding['reference'] {
  if (blocks.length > 0) return { kind: 'none', reasons: ['set-not-interpreted'] };
  const { sex, ageYears, bodyMassIndex, pregnant, amputation, nerveCondition } = person;
  const who = { sex, ageYears, bodyMassIndex, pregnant, amputation, nerveCondition };
  return referencesFor({
    ...who,
    measure: 'repetitions',
    protocolId: protocol.id,
    value: report.count.scored,
    unit: '1',
  });
}

/**
 * What one set of heel raises says by itself, before it is set beside anything: a set that is not interpreted has no
 * reference either.
 *
 * @param leg - the set with what was told of it [-]
 * @param person - what was told of the person [-]
 * @param own - the clinic's own errors [repetitions]
 * @param judging - limits of the signs of fatigue [-]
 * @returns see {@link LegFinding} [repetitions]
 * @throws {@link InputError} `out-of-range` for a pain or exertion outside 0 to 10, or a time below 0
 *
 * Source: ours; the parts name theirs
 */
export function legFinding(
  leg: TestedLeg,
  person: PersonFacts,
  own: OwnReliabilities,
  judging: JudgingSettings,
): LegFinding {
  const { report, facts } = leg;
  const reliability = chooseReliability(countQuestion(leg, own));
  const blocks = setBlocks(report);
  const irritability = irritabilityOf(facts.irritability);
  const pain = painFinding(
    report.count.scored,
    {
      endReason: report.end.reasonGiven,
      peak: facts.painPeak,
      resting: facts.painBefore,
      sharp: facts.painSharp,
      highIrritability: irritability.grade === null ? null : irritability.grade === 'high',
    },
    {
      painMost: COMPARISON_RULES.painMost.value,
      painMostIrritable: COMPARISON_RULES.painMostIrritable.value,
      painRiseMost: COMPARISON_RULES.painRiseMost.value,
    },
  );
  return {
    value: scoredRepetitions(report.count, reliability),
    reliability,
    blocks,
    effort: enduranceEffort(report.measures, report.end, facts.exertion, judging),
    pain,
    irritability,
    reference: referenceOf(leg, blocks, person),
  };
}
