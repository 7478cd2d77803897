import type { Protocol } from '@surae/shared';
import { requireRange } from '../check.ts';
import { InputError } from '../errors.ts';
import type { Count, NoMaximumReason, SeatedLoad, TestEnd } from './report.ts';
import type { AssessmentRequest, Subject } from './request.ts';

/** Largest share by which a load in kilograms may miss one in percent before they contradict each other [-]; ours. */
const SAME_LOAD = 0.01;

/**
 * Whether a protocol is a seated one, with its load on the knee.
 *
 * @param protocol - the protocol [-]
 * @returns true when it is [-]
 *
 * Source: definition
 */
export function isSeated(protocol: Protocol): boolean {
  return protocol.parameters.externalMass.value === 'on-knee';
}

/**
 * Nothing; refuses a seated test at a place of the sensor that cannot show it.
 *
 * @param request - placement and protocol [-]
 * @returns nothing [-]
 * @throws {@link InputError} `out-of-range` for a seated protocol at trunk or platform
 *
 * Source: ours
 */
export function requireSeatedPlacement({
  protocol,
  placement,
}: Pick<AssessmentRequest, 'protocol' | 'placement'>): void {
  if (!isSeated(protocol) || placement === 'heel' || placement === 'foot') return;
  throw new InputError('out-of-range', {
    argument: 'placement',
    expected:
      'heel or foot: in a seated raise the trunk rests, and a platform under the forefoot carries load and leg but shows no height',
    actual: placement,
  });
}

/**
 * Load on the knee.
 *
 * @param subject - load in kilograms, or as a share of a body mass that is given [kg, -]
 * @returns the load; undefined when neither tells it [kg]
 * @throws {@link InputError} `out-of-range` for a load that is not above 0, or two that contradict each other
 *
 * Source: definition
 */
export function kneeLoadKg(subject: Subject): number | undefined {
  const { bodyMassKg, externalMassKg, externalMassShare } = subject;
  if (externalMassKg !== undefined) requireRange(externalMassKg, externalMassKg > 0, 'externalMassKg', '> 0');
  if (externalMassShare === undefined || bodyMassKg === undefined) return externalMassKg;
  requireRange(externalMassShare, externalMassShare > 0, 'externalMassShare', '> 0');
  const byShareKg = externalMassShare * bodyMassKg;
  if (externalMassKg !== undefined && Math.abs(byShareKg / externalMassKg - 1) > SAME_LOAD) {
    throw new InputError('out-of-range', {
      argument: 'externalMassKg',
      expected: `${byShareKg} kg, the given share of body mass`,
      actual: `${externalMassKg} kg`,
    });
  }
  return externalMassKg ?? byShareKg;
}

/** Share of the load for one repetition that can be lifted so often, by the two usual formulas. */
const FORMULAS: readonly ((repetitions: number) => number)[] = [
  // Epley (1985): 1RM = load (1 + n / 30)
  (repetitions) => 1 / (1 + repetitions / 30),
  // Brzycki (1993): 1RM = load 36 / (37 - n)
  (repetitions) => (37 - repetitions) / 36,
];

function reasonAgainst(
  loadKg: number | undefined,
  count: Count,
  end: TestEnd,
  limits: { readonly countLeast: number; readonly countMost: number },
): NoMaximumReason | null {
  if (loadKg === undefined) return 'no-load';
  if (count.scored < limits.countLeast || count.scored > limits.countMost) return 'count-out-of-range';
  if (end.class === 'unknown') return 'end-unknown';
  return end.class === 'capacity' ? null : 'not-to-fatigue';
}

/**
 * What a seated set says about its load: the pair of load and valid repetitions, and the load for the number of repetitions
 * that the protocol names, only where the count lies in the range that the protocol allows and the set went to fatigue.
 *
 * The load is the middle between what two formulas make of the count; its bounds are the extremes of both over the bounds of
 * the count, as far as these lie in the range. At the named number itself both give the load that was lifted.
 *
 * @param request - protocol, load and body mass [kg]
 * @param count - valid repetitions with their bounds [-]
 * @param end - why the set ended [-]
 * @param massRelativeU - relative standard uncertainty of a weighed mass [-]
 * @returns the load and what follows; null for a protocol that is not seated [kg]
 * @throws {@link InputError} `out-of-range` for a load that is not above 0, or two that contradict each other
 *
 * Source: Epley (1985) and Brzycki (1993), J Phys Educ Recreat Dance 64:88-90, both from memory; limits: common practice, no source
 */
export function seatedLoad(
  request: AssessmentRequest,
  count: Count,
  end: TestEnd,
  massRelativeU: number,
): SeatedLoad | null {
  const { protocol, subject } = request;
  const limits = protocol.repetitionMaximum;
  if (!isSeated(protocol) || limits === undefined) return null;
  const loadKg = kneeLoadKg(subject);
  const { target, countLeast, countMost } = limits;
  const reason = reasonAgainst(loadKg, count, end, limits);
  const within = (value: number): number => Math.min(countMost, Math.max(countLeast, value));
  const loadsAt = (repetitions: number): number[] =>
    FORMULAS.map((share) => ((loadKg ?? Number.NaN) * share(target)) / share(repetitions));
  const all = [count.scored, within(count.scoredLow), within(count.scoredHigh)].flatMap(loadsAt);
  const [first, second] = loadsAt(count.scored);
  const { bodyMassKg } = subject;
  return {
    massKg: loadKg ?? null,
    massUKg: loadKg === undefined ? null : massRelativeU * loadKg,
    percentOfBodyMass: loadKg === undefined || bodyMassKg === undefined ? null : (100 * loadKg) / bodyMassKg,
    repetitions: count.scored,
    repetitionsLow: count.scoredLow,
    repetitionsHigh: count.scoredHigh,
    maximum: {
      target,
      massKg: reason === null ? (first + second) / 2 : null,
      lowKg: reason === null ? Math.min(...all) : null,
      highKg: reason === null ? Math.max(...all) : null,
      reason,
    },
  };
}
