import type { AcceptRule } from './effort-settings.ts';
import type { Figure } from './figure.ts';
import type { PullUnit } from './pull-signal.ts';

/** What an effort is judged on, in the order in which reasons are shown. */
export const ACCEPT_CODES = [
  /** a push before the trials, told or far below the best: see `judgeWarmUps` */
  'warm-up',
  /** the force wandered before the effort, or no rest was recorded there */
  'restless-baseline',
  /** the resting level changed over the effort: the zero, or the leg, moved */
  'tare-error',
  /** the force dipped before it rose */
  'countermovement',
  /** tension crept in before the onset; for rates of rise only */
  'pre-tension',
  /** samples are missing near the peak */
  'gap-near-peak',
  /** the sensor was at its limit */
  'clipped',
  /** the force was held near its peak for too short a time; strength efforts only */
  'short-plateau',
  /** heel or hip lifted, as the tester marked it */
  'lifted',
  /** an effort as fast as possible was asked for, and it was ramped up */
  'not-fast',
] as const;

/** Reason why an effort is not accepted. */
export type AcceptCode = (typeof ACCEPT_CODES)[number];

/** One criterion: its answer, what was found and the limit; null where it could not be observed. */
export interface AcceptFinding {
  readonly code: AcceptCode;
  /** whether the criterion is met */
  readonly met: 'yes' | 'no' | 'cannot_tell';
  readonly value: number | null;
  readonly limit: number | null;
}

/** Whether an effort counts, with every criterion. */
export interface Acceptance {
  readonly accepted: 'yes' | 'no' | 'cannot_tell';
  readonly findings: readonly AcceptFinding[];
}

/** What the criteria look at. */
export interface AcceptSubject {
  readonly unit: PullUnit;
  /** what was asked for */
  readonly kind: 'ramp' | 'fast';
  /** how it was made */
  readonly made: 'ramp' | 'fast';
  readonly peak: number;
  /** scatter of the still level before; null when no rest was recorded */
  readonly restSd: number | null;
  /** change of the resting level over the effort; null when one side is missing */
  readonly restChange: Figure | null;
  /** depth of the dip, and rate of creeping tension, before the onset; null when nothing was recorded there */
  readonly dip: Figure | null;
  readonly creep: Figure | null;
  /** longest stretch without samples near the peak [s] */
  readonly gapS: number;
  /** whether the sensor was at its limit */
  readonly clipped: boolean;
  readonly plateauS: Figure;
  /** tester's mark; null when nobody looked */
  readonly lifted: boolean | null;
}

/** Above the limit by more than the interval, below it by more, or neither. */
function atMost(code: AcceptCode, figure: Figure | null, limit: number, sense: 1 | -1 = 1): AcceptFinding {
  // a limit that the protocol does not set
  if (!Number.isFinite(limit)) return { code, met: 'yes', value: figure?.value ?? null, limit: null };
  if (figure === null) return { code, met: 'cannot_tell', value: null, limit };
  const beyond = sense * (figure.value - limit);
  const met = Math.abs(beyond) < 1.96 * figure.u ? 'cannot_tell' : beyond <= 0 ? 'yes' : 'no';
  return { code, met, value: figure.value, limit };
}

function plain(code: AcceptCode, bad: boolean | null): AcceptFinding {
  return { code, met: bad === null ? 'cannot_tell' : bad ? 'no' : 'yes', value: null, limit: null };
}

/**
 * Whether an effort counts: every criterion with its answer. What cannot be observed never makes an effort fail, and a mark
 * that nobody was asked for leaves the rest to decide.
 *
 * @param subject - what was measured [N or N.m, s]
 * @param rule - limits, see {@link AcceptRule} [-]
 * @returns the answer and the findings in their fixed order [-]
 *
 * Source: common practice, no source; dip and creep: Maffiuletti et al. (2016), Eur J Appl Physiol 116:1091-1116
 */
export function judgeEffort(subject: AcceptSubject, rule: AcceptRule): Acceptance {
  const inNewton = subject.unit === 'N';
  const of = (newton: number, newtonMetre: number): number => (inNewton ? newton : newtonMetre);
  const { peak, kind, made, restSd } = subject;
  const sd = restSd === null ? null : { value: restSd, u: 0 };
  const findings: AcceptFinding[] = [
    atMost('restless-baseline', sd, Math.max(of(rule.stillN, rule.stillNm), rule.stillShare * peak)),
    atMost('tare-error', subject.restChange, of(rule.tareN, rule.tareNm)),
    atMost('countermovement', subject.dip, Math.max(of(rule.dipN, rule.dipNm), rule.dipShare * peak)),
    ...(kind === 'fast' && made === 'fast'
      ? [atMost('pre-tension', subject.creep, of(rule.creepNps, rule.creepNmps))]
      : []),
    { ...atMost('gap-near-peak', { value: subject.gapS, u: 0 }, rule.gapS) },
    plain('clipped', subject.clipped),
    ...(kind === 'ramp' && rule.plateauS > 0 ? [atMost('short-plateau', subject.plateauS, rule.plateauS, -1)] : []),
    plain('lifted', subject.lifted),
    ...(kind === 'fast' ? [plain('not-fast', made !== 'fast')] : []),
  ];
  const asked = findings.filter(({ code }) => code !== 'lifted' || subject.lifted !== null);
  const accepted = asked.some(({ met }) => met === 'no')
    ? 'no'
    : asked.some(({ met }) => met === 'cannot_tell')
      ? 'cannot_tell'
      : 'yes';
  return { accepted, findings };
}
