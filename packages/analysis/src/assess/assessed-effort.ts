import type { IsometricEffort } from '../efforts/isometric-effort.ts';
import type { AssessedEffort } from './pull-report.ts';
import { type ScaleError, withScaleU, withScaleUOfBoth, withSlopeU } from './scale-error.ts';

/**
 * One effort of the report: its figures with the uncertainty of the calibration in them, and why it does not count.
 *
 * @param effort - as measured [s, N or N.m]
 * @param index - its number, from 1 [-]
 * @param scale - error of the calibration, see {@link ScaleError} [-, N or N.m]
 * @returns the effort [s, N or N.m]
 *
 * Source: definition
 */
export function assessedEffort(effort: IsometricEffort, index: number, scale: ScaleError): AssessedEffort {
  const { relativeU } = scale;
  const { acceptance, bestMean } = effort;
  const early = effort.early.impulse;
  // what nobody was asked to look at is no open question
  const looked = acceptance.findings.filter(({ code, met }) => code !== 'lifted' || met !== 'cannot_tell');
  const codes = (met: 'no' | 'cannot_tell') => looked.filter((one) => one.met === met).map(({ code }) => code);
  return {
    ...effort,
    rest: withScaleU(effort.rest, scale),
    peak: withScaleUOfBoth(effort.peak, scale),
    bestMean: bestMean === null ? null : withScaleUOfBoth(bestMean, scale),
    impulse: withSlopeU(effort.impulse, relativeU),
    rates: effort.rates.map((one) => ({ ...one, rate: one.rate === null ? null : withSlopeU(one.rate, relativeU) })),
    early: { ...effort.early, impulse: early === null ? null : withSlopeU(early, relativeU) },
    index,
    accepted: acceptance.accepted,
    reasons: codes('no'),
    undecided: codes('cannot_tell'),
  };
}
