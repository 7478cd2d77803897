import type { EffortMethod } from '../efforts/effort-settings.ts';
import type { Figure } from '../efforts/figure.ts';
import type { FoundEfforts } from '../efforts/find-efforts.ts';
import type { Issue } from '../issue.ts';
import { findGaps } from '../signal/gaps.ts';
import type { PullPlacement } from './pull-request.ts';
import type { SignalLimits } from './settings.ts';
import { timingIssues } from './signal-issues.ts';

/** What issues of a recording of pulls are looked for in. */
export interface PullsLookedAt {
  readonly found: FoundEfforts;
  readonly timesS: Float64Array;
  readonly placement: PullPlacement;
  /** load at rest beside the efforts; null without efforts [N or N.m] */
  readonly restLoad: Figure | null;
  /** weight of the body; null when the mass is not known [N] */
  readonly bodyWeightN: number | null;
  /** gaps from this length are said [s] */
  readonly gapS: number;
}

type Said = Omit<Issue, 'fromS' | 'toS'>;

/** Issues of single efforts: the sensor at its limit, and a load at rest that is another one afterwards. */
function ofEfforts({ efforts }: FoundEfforts): Issue[] {
  return efforts.flatMap((effort): Issue[] => {
    const place = { fromS: effort.onsetS.value, toS: effort.endS.value };
    const unmet = (code: string) => effort.acceptance.findings.find((one) => one.code === code && one.met === 'no');
    const moved = unmet('tare-error');
    return [
      ...(unmet('clipped') === undefined ? [] : [{ code: 'saturated', severity: 'warning', ...place } as const]),
      ...(moved === undefined
        ? []
        : [
            {
              code: 'rest-load-changed',
              severity: 'note',
              ...place,
              details: { by: moved.value ?? 0, unit: effort.unit },
            } as const,
          ]),
    ];
  });
}

/** Whether the sensor was zeroed with the leg on it: the load at rest is below zero, or a plate reads no leg. */
function tareLeftOn(looked: PullsLookedAt, method: EffortMethod): Said[] {
  const { restLoad, placement, bodyWeightN, found } = looked;
  if (restLoad === null || found.unit !== 'N') return [];
  const { legLeastN, legLeastShare } = method.signal;
  const least =
    placement === 'platform' ? (bodyWeightN === null ? legLeastN : legLeastShare * bodyWeightN) : -legLeastN;
  if (restLoad.value + 1.96 * restLoad.u >= least) return [];
  return [{ code: 'tare-left-on', severity: 'warning', details: { rest: restLoad.value, least, unit: 'N' } }];
}

function ofSize({ found }: PullsLookedAt, method: EffortMethod): Said[] {
  const { mostN, mostNm } = method.signal;
  const most = found.unit === 'N' ? mostN : mostNm;
  const greatest = Math.max(0, ...found.efforts.map(({ peak }) => peak.net.value));
  return greatest <= most
    ? []
    : [{ code: 'implausible-size', severity: 'warning', details: { value: greatest, most, unit: found.unit } }];
}

function restsDiffer({ found }: PullsLookedAt, method: EffortMethod): Said[] {
  const rests = found.efforts.map(({ rest }) => rest.value);
  const by = Math.max(...rests) - Math.min(...rests);
  const most = found.unit === 'N' ? method.signal.restSpreadN : method.signal.restSpreadNm;
  return by > most ? [{ code: 'rest-load-differs', severity: 'note', details: { by, unit: found.unit } }] : [];
}

/**
 * What a reader must know about the signal of a recording of pulls: samples missing, slow or uneven; a sensor at its limit; a
 * load at rest that changed, or was tared away; a polarity that the signal does not tell; a size that is no person's.
 *
 * @param looked - efforts, times and what is known of the rig [s, N or N.m]
 * @param method - limits of the method [-]
 * @param limits - of sample times [-]
 * @returns the issues; empty for an ordinary recording [s]
 *
 * Source: ours
 */
export function pullIssues(looked: PullsLookedAt, method: EffortMethod, limits: SignalLimits): Issue[] {
  const { found, timesS } = looked;
  const whole = { fromS: timesS[0], toS: timesS[timesS.length - 1] };
  const { coarseBelowHz, rateTolerance } = method.measure;
  const rateLeastHz = method.signal.peakLeastHz * (1 - rateTolerance);
  const { sampleRateHz } = found;
  const coarse = sampleRateHz < coarseBelowHz * (1 - rateTolerance) && sampleRateHz >= rateLeastHz;
  const said: Said[] = [
    ...(found.polarity.clear || found.efforts.length + found.others.length === 0
      ? []
      : [{ code: 'polarity-unclear', severity: 'warning' } as const]),
    ...ofSize(looked, method),
    ...tareLeftOn(looked, method),
    ...restsDiffer(looked, method),
    ...(coarse ? [{ code: 'coarse-rate', severity: 'note', details: { rateHz: sampleRateHz } } as const] : []),
    ...timingIssues(timesS, 1, { ...limits, rateLeastHz }),
  ];
  return [
    ...said.map((one) => ({ ...one, ...whole })),
    ...findGaps(timesS, looked.gapS).map((gap): Issue => ({ code: 'samples-missing', severity: 'note', ...gap })),
    ...ofEfforts(found),
  ];
}
