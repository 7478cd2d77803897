import { requireRange } from '../check.ts';
import type { Acceptance, AcceptFinding } from './acceptance.ts';
import type { IsometricEffort } from './isometric-effort.ts';

/** What tells warm-up pushes from trials. */
export interface WarmUpRule {
  /** how many of the first pushes of the recording were warm-ups; null where nobody said */
  readonly told: number | null;
  /** share of the best peak from which a push is full; 0 where the protocol asks for none [-] */
  readonly share: number;
}

function withFinding({ accepted, findings }: Acceptance, finding: AcceptFinding): Acceptance {
  const verdict =
    finding.met === 'no' ? 'no' : finding.met === 'cannot_tell' && accepted === 'yes' ? 'cannot_tell' : accepted;
  return { accepted: verdict, findings: [finding, ...findings] };
}

/** Whether the peak of an effort reaches a share of the best, as far as the uncertainties of both allow to say. */
function reaches({ peak }: IsometricEffort, best: IsometricEffort, share: number): AcceptFinding['met'] {
  const beyond = peak.net.value - share * best.peak.net.value;
  if (Math.abs(beyond) < 1.96 * Math.hypot(peak.net.u, share * best.peak.net.u)) return 'cannot_tell';
  return beyond > 0 ? 'yes' : 'no';
}

/**
 * Efforts with one criterion more: that they are trials and no warm-up pushes. Where it was told how many pushes were warm-ups,
 * these are the first ones, whatever their size, and all others are trials. Where nobody said, pushes that do not reach a
 * share of the best peak are warm-ups as long as no full one came before; of a later one nobody can tell whether it was a trial.
 * The best is the greatest of those that nothing else speaks against; without one there is nothing to compare with.
 *
 * @param efforts - in time order [s, N or N.m]
 * @param otherS - times of pushes that were found and could not be measured, which count as pushes where they are told [s]
 * @param rule - what was told, and the share, see {@link WarmUpRule} [-]
 * @returns the efforts with their acceptance as it is then; as they came where nothing is asked [s, N or N.m]
 * @throws {@link InputError} `out-of-range` for a told number that is no whole number >= 0
 *
 * Source: common practice, no source
 */
export function judgeWarmUps(
  efforts: readonly IsometricEffort[],
  otherS: readonly number[],
  { told, share }: WarmUpRule,
): IsometricEffort[] {
  const judged = (met: AcceptFinding['met'], effort: IsometricEffort, ratio: number | null): IsometricEffort => ({
    ...effort,
    acceptance: withFinding(effort.acceptance, {
      code: 'warm-up',
      met,
      value: ratio,
      limit: told === null ? share : null,
    }),
  });
  if (told !== null) {
    requireRange(told, Number.isInteger(told) && told >= 0, 'warmUpPushes', 'a whole number >= 0');
    return efforts.map((effort, i) => {
      const before = i + otherS.filter((timeS) => timeS < effort.onsetS.value).length;
      return judged(before < told ? 'no' : 'yes', effort, null);
    });
  }
  const best = efforts
    .filter(({ acceptance }) => acceptance.accepted !== 'no')
    .reduce<IsometricEffort | null>(
      (most, one) => (most === null || one.peak.net.value > most.peak.net.value ? one : most),
      null,
    );
  if (share === 0 || best === null) return [...efforts];
  const full = efforts.map((effort) => reaches(effort, best, share));
  const first = full.indexOf('yes');
  return efforts.map((effort, i) =>
    judged(
      full[i] === 'no' && i > first ? 'cannot_tell' : full[i],
      effort,
      effort.peak.net.value / best.peak.net.value,
    ),
  );
}
