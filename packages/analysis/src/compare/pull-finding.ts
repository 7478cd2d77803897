import { COMPARISON_RULES } from '@surae/shared';
import type { IsometricQuality } from './effort-quality.ts';
import type { ForceScale } from './force-scale.ts';
import { type Irritability, irritabilityOf } from './irritability.ts';
import type { MeasuredValue } from './measured-value.ts';
import { type PainFinding, painFinding } from './pain-and-capacity.ts';
import type { NoReference } from './reference-lookup.ts';
import type { Reliability } from './reliability.ts';
import { chooseReliability, type ReliabilityQuestion } from './reliability-choice.ts';
import { SET_BLOCKS, type SetBlock } from './set-blocks.ts';
import type { OwnReliabilities, TestedPull } from './visit-facts.ts';

/** What one recording of isometric efforts says by itself. */
export interface PullFinding {
  /** the net score with its uncertainty from one test to the next */
  readonly value: MeasuredValue;
  /** the error that the uncertainty rests on; null where none is known */
  readonly reliability: Reliability | null;
  /** why it is not interpreted as what the calf can do; empty when nothing stands against it */
  readonly blocks: readonly SetBlock[];
  /** whether the trials show a maximum; null where the protocol asks for none */
  readonly effort: IsometricQuality | null;
  /** the repetitions in it are efforts that count */
  readonly pain: PainFinding;
  readonly irritability: Irritability;
  /** forces hang on the rig: no published group stands beside them */
  readonly reference: NoReference;
}

/** What a net force is of: a plate reads what rests on it and a cell does not, so that the two are never pooled. */
const CONVENTIONS = { platform: 'plate under the forefoot', inline: 'cell in line' } as const;

/**
 * The scale that the forces of a recording were counted by.
 *
 * @param report - of the recording [-]
 * @returns name of the calibration and its error; null for what is not known [-]
 *
 * Source: definition
 */
export function scaleOf(report: Pick<TestedPull['report'], 'calibrationRelativeU' | 'calibrationId'>): ForceScale {
  // reports that were kept by earlier versions hold no name
  const calibration = report.calibrationId as string | null | undefined;
  return { calibration: calibration ?? null, relativeU: report.calibrationRelativeU };
}

/**
 * The net score of a recording of isometric efforts as a value to compare. Its uncertainty is that from one test to the next
 * together with that of the measurement, as if they were independent, which is cautious.
 *
 * @param pull - the recording [-]
 * @param reliability - error of such scores; null where none is known [unit of the score]
 * @returns the value; its uncertainty is null where no error is known, never that of the measurement alone [unit of the score]
 *
 * Source: ours; JCGM 100:2008, 5.1.2
 */
export function netScore({ report }: Pick<TestedPull, 'report'>, reliability: Reliability | null): MeasuredValue {
  const { net, unit, rule } = report.score;
  const convention = `net ${rule}, ${CONVENTIONS[report.placement]}`;
  const frame = { value: net?.value ?? null, unit, convention, scale: scaleOf(report) };
  if (net === null || reliability === null || reliability.unit !== unit) return { ...frame, u: null };
  const { scale, standardError } = reliability;
  const between = scale === 'log' ? standardError * Math.abs(net.value) : standardError;
  return { ...frame, u: Math.hypot(between, net.u) };
}

/**
 * What the choice of an error of a greatest force is asked; nothing is known of the error of a rate of rise.
 *
 * @param pull - the recording [-]
 * @param own - the clinic's own errors [unit of the score]
 * @returns the question; null without a force or torque that counts [unit of the score]
 *
 * Source: ours
 */
export function forceQuestion({ report, protocol }: TestedPull, own: OwnReliabilities): ReliabilityQuestion | null {
  const { net, unit } = report.score;
  if (net === null || net.value < 0 || (unit !== 'N' && unit !== 'N.m')) return null;
  return {
    measure: 'peak-force',
    protocolId: protocol.id,
    placement: report.placement,
    unit,
    before: net.value,
    own: Object.hasOwn(own, protocol.id) ? own[protocol.id] : null,
  };
}

/**
 * Every reason why a recording of isometric efforts is not interpreted as what the calf can do.
 *
 * @param report - of the recording [-]
 * @returns the reasons, in the order of {@link SET_BLOCKS}; empty when there is none [-]
 *
 * Source: common practice, no source
 */
export function pullBlocks({ end, gate, effort }: TestedPull['report']): readonly SetBlock[] {
  const holds: Readonly<Partial<Record<SetBlock, boolean>>> = {
    'ended-for-pain': end.class === 'tolerance',
    'ended-incomplete': end.class === 'incomplete',
    'end-not-recorded': end.reasonGiven === null,
    'signal-not-usable': gate.reasons.some((reason) => reason !== 'side-unknown'),
    'effort-unknown': effort === null || effort.good === 'cannot_tell',
    'no-maximum': effort?.good === 'no',
    'fixed-test': end.class === 'probe',
    censored: end.class === 'censored',
  };
  return SET_BLOCKS.filter((block) => holds[block] === true);
}

/**
 * What one recording of isometric efforts says by itself, before it is set beside anything.
 *
 * @param pull - the recording with what was told of it [-]
 * @param own - the clinic's own errors [unit of the score]
 * @returns see {@link PullFinding} [unit of the score]
 * @throws {@link InputError} `out-of-range` for a pain outside 0 to 10, or a time below 0
 *
 * Source: ours; the parts name theirs
 */
export function pullFinding(pull: TestedPull, own: OwnReliabilities): PullFinding {
  const { report, facts } = pull;
  const question = forceQuestion(pull, own);
  const reliability = question === null ? null : chooseReliability(question);
  const irritability = irritabilityOf(facts.irritability);
  const { painMost, painMostIrritable, painRiseMost } = COMPARISON_RULES;
  return {
    value: netScore(pull, reliability),
    reliability,
    blocks: pullBlocks(report),
    effort: report.effort,
    pain: painFinding(
      report.trials?.accepted.length ?? 0,
      {
        endReason: report.end.reasonGiven,
        peak: facts.painPeak,
        resting: facts.painBefore,
        sharp: facts.painSharp,
        highIrritability: irritability.grade === null ? null : irritability.grade === 'high',
      },
      { painMost: painMost.value, painMostIrritable: painMostIrritable.value, painRiseMost: painRiseMost.value },
    ),
    irritability,
    reference: { kind: 'none', reasons: ['not-for-this-measure'] },
  };
}
