import type { Figure } from '../efforts/figure.ts';
import type { GrossAndNet, IsometricEffort } from '../efforts/isometric-effort.ts';
import type { AssessedEffort } from './pull-report.ts';

/**
 * A figure whose uncertainty takes in that of a factor common to all.
 *
 * @param figure - with its own standard uncertainty [unit of figure]
 * @param relativeU - relative standard uncertainty of the factor, >= 0 [-]
 * @returns the same value with the whole uncertainty [unit of figure]
 *
 * Source: first-order propagation of uncertainty, JCGM 100:2008, 5.1.2
 */
export function withCommonU(figure: Figure, relativeU: number): Figure {
  return { value: figure.value, u: Math.hypot(figure.u, relativeU * figure.value) };
}

/**
 * The same for a force that is given gross and net.
 *
 * @param force - gross and net [N or N.m]
 * @param relativeU - relative standard uncertainty of the factor, >= 0 [-]
 * @returns the same values with the whole uncertainty [N or N.m]
 *
 * Source: first-order propagation of uncertainty, JCGM 100:2008, 5.1.2
 */
export function withCommonUOfBoth(force: GrossAndNet, relativeU: number): GrossAndNet {
  return { gross: withCommonU(force.gross, relativeU), net: withCommonU(force.net, relativeU) };
}

/**
 * One effort of the report: its figures with the uncertainty of the calibration in them, and why it does not count.
 *
 * @param effort - as measured [s, N or N.m]
 * @param index - its number, from 1 [-]
 * @param calibrationRelativeU - relative standard uncertainty of the calibration; 0 where it is not known [-]
 * @returns the effort [s, N or N.m]
 *
 * Source: definition
 */
export function assessedEffort(effort: IsometricEffort, index: number, calibrationRelativeU: number): AssessedEffort {
  const c = calibrationRelativeU;
  const { acceptance, bestMean } = effort;
  const early = effort.early.impulse;
  // what nobody was asked to look at is no open question
  const looked = acceptance.findings.filter(({ code, met }) => code !== 'lifted' || met !== 'cannot_tell');
  const codes = (met: 'no' | 'cannot_tell') => looked.filter((one) => one.met === met).map(({ code }) => code);
  return {
    ...effort,
    rest: withCommonU(effort.rest, c),
    peak: withCommonUOfBoth(effort.peak, c),
    bestMean: bestMean === null ? null : withCommonUOfBoth(bestMean, c),
    impulse: withCommonU(effort.impulse, c),
    rates: effort.rates.map((one) => ({ ...one, rate: one.rate === null ? null : withCommonU(one.rate, c) })),
    early: { ...effort.early, impulse: early === null ? null : withCommonU(early, c) },
    index,
    accepted: acceptance.accepted,
    reasons: codes('no'),
    undecided: codes('cannot_tell'),
  };
}
