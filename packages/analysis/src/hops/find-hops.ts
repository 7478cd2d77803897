import type { HopParameters } from '@surae/shared';
import { requireRange } from '../check.ts';
import type { Figure } from '../efforts/figure.ts';
import type { Trace } from '../trace.ts';
import { footFlights } from './foot-flights.ts';
import type { Flight, Hop } from './hop.ts';
import { hopList, largestGroup } from './hop-list.ts';
import type { HopCaution, HopSeries, HopWithheld, NoSeriesReason, SeriesVerdict } from './hop-series.ts';
import type { HopSettings } from './hop-settings.ts';
import { footSignal, forceSignal } from './hop-signal.ts';
import { hopSummary } from './hop-summary.ts';
import { weightFromHops } from './hop-weight.ts';
import type { HopMass } from './measure-hop.ts';
import { platformFlights } from './platform-flights.ts';

/** What one hop series is measured with. */
export interface HopRequest {
  readonly placement: 'platform' | 'foot';
  readonly parameters: HopParameters;
  readonly bodyMassKg?: number;
}

/** Flights with what one placement adds to them. */
interface Seen {
  readonly flights: readonly Flight[];
  readonly sampleRateHz: number;
  readonly timesS: Float64Array;
  readonly refused: { readonly found: SeriesVerdict; readonly reason: NoSeriesReason } | null;
  readonly withheld: readonly HopWithheld[];
  readonly bodyWeightN: Figure | null;
  readonly zeroN: number | null;
}

function onPlatform(trace: Trace, request: HopRequest, settings: HopSettings): Seen {
  const signal = forceSignal(trace);
  const { series, platform, gravityMps2 } = settings;
  const sampleRateHz = 1 / signal.intervalS;
  const least = request.parameters.platformRateLeast.value ?? 0;
  const found = platformFlights(signal, settings);
  const flights = found === undefined ? [] : largestGroup(found.flights, series);
  const usual = flights.length >= series.hopsLeast;
  const weight = found === undefined ? undefined : weightFromHops(signal, flights, found.zeroN, series.contactMostS);
  let refused: Seen['refused'] = null;
  if (sampleRateHz < settings.foot.rateLeastHz) refused = { found: 'cannot_tell', reason: 'rate-too-low' };
  else if (!usual || found === undefined) refused = { found: 'no', reason: 'no-hops' };
  else if (weight === undefined || weight.value < platform.weightLeastN || weight.value > platform.weightMostN) {
    refused = { found: 'cannot_tell', reason: 'weight-differs' };
  } else if (Math.abs(found.zeroN) > platform.zeroShareMost * weight.value) {
    refused = { found: 'cannot_tell', reason: 'not-zeroed' };
  } else if (request.bodyMassKg !== undefined) {
    const givenN = request.bodyMassKg * gravityMps2;
    if (Math.abs(weight.value / givenN - 1) > 3 * platform.weightShareMost) {
      refused = { found: 'cannot_tell', reason: 'weight-differs' };
    }
  }
  return {
    flights,
    sampleRateHz,
    timesS: signal.timesS,
    refused,
    withheld: sampleRateHz < least * 0.98 ? ['low-rate'] : [],
    bodyWeightN: weight ?? null,
    zeroN: found?.zeroN ?? null,
  };
}

function onFoot(trace: Trace, request: HopRequest, settings: HopSettings): Seen {
  const signal = footSignal(trace);
  const sampleRateHz = 1 / signal.intervalS;
  const least = request.parameters.footRateLeast.value ?? 0;
  const { flights: all, edgesWithheld } = footFlights(signal, settings);
  const flights = largestGroup(all, settings.series);
  const slow = sampleRateHz < settings.foot.rateLeastHz;
  const few = flights.length < settings.series.hopsLeast;
  const withheld: HopWithheld[] = sampleRateHz < least * 0.98 ? ['low-rate'] : [];
  if (edgesWithheld !== null) withheld.push(edgesWithheld);
  return {
    flights,
    sampleRateHz,
    timesS: signal.timesS,
    refused: slow ? { found: 'cannot_tell', reason: 'rate-too-low' } : few ? { found: 'no', reason: 'no-hops' } : null,
    withheld,
    bodyWeightN: null,
    zeroN: null,
  };
}

/** Whether the hops are alike enough to be one movement: most have a plausible time on the ground. */
function alike(hops: readonly Hop[], settings: HopSettings): boolean {
  const timed = hops.filter((hop) => hop.contactS !== null);
  const { contactLeastS, contactMostS } = settings.series;
  const plausible = timed.filter(({ contactS }) => contactS!.value >= contactLeastS && contactS!.value <= contactMostS);
  return plausible.length >= Math.min(settings.series.hopsLeast - 1, Math.ceil(0.6 * (hops.length - 1)));
}

/** Gaps that may hide a flight: long enough for one, from two hops before the first to two after the last. */
function hiddenHops(timesS: Float64Array, hops: readonly Hop[], settings: HopSettings): number {
  const [firstS, lastS] = [hops[0].middleS, hops[hops.length - 1].middleS];
  const usualS = (lastS - firstS) / Math.max(1, hops.length - 1);
  // the first or the last hop may be hidden as well
  const [fromS, toS] = [firstS - 2 * usualS, lastS + 2 * usualS];
  let hidden = 0;
  for (let i = 1; i < timesS.length; i++) {
    const gapS = timesS[i] - timesS[i - 1];
    if (gapS < settings.series.flightLeastS || timesS[i] < fromS || timesS[i - 1] > toS) continue;
    hidden += Math.ceil(gapS / usualS);
  }
  return hidden;
}

function massOf(request: HopRequest, seen: Seen, settings: HopSettings): HopMass | undefined {
  const { gravityMps2, massRelativeU } = settings;
  if (request.bodyMassKg !== undefined) {
    return { massKg: request.bodyMassKg, massUKg: massRelativeU * request.bodyMassKg };
  }
  if (seen.bodyWeightN === null || seen.refused !== null) return undefined;
  const massKg = seen.bodyWeightN.value / gravityMps2;
  return { massKg, massUKg: Math.hypot(seen.bodyWeightN.u / gravityMps2, massRelativeU * massKg) };
}

/**
 * The hop series of a recording: contact and flight of every hop, height, ratio, stiffness, and their drift over the hops that
 * the protocol analyses.
 *
 * @param trace - the recording, native times [N, or m/s2 and rad/s]
 * @param request - placement, protocol, body mass where known [-]
 * @param settings - see {@link HopSettings} [-]
 * @returns the series, plain JSON; where there is none, or none that can be judged, the reason and no hops [-]
 * @throws {@link InputError} `missing-channel` when the trace lacks what the placement needs; `too-short`, `not-finite`, `not-increasing`, `length-mismatch` for a trace that breaks its contract; `out-of-range` for a mass
 *
 * Source: ours
 */
export function findHops(trace: Trace, request: HopRequest, settings: HopSettings): HopSeries {
  const { parameters, bodyMassKg } = request;
  if (bodyMassKg !== undefined) requireRange(bodyMassKg, bodyMassKg > 0, 'bodyMassKg', '> 0');
  const seen =
    request.placement === 'platform' ? onPlatform(trace, request, settings) : onFoot(trace, request, settings);
  const timesWithheld = seen.withheld.some((reason) => reason !== 'no-body-mass');
  const mass = massOf(request, seen, settings);
  const listed = hopList(seen.flights, {
    mass,
    settings,
    analysedFrom: parameters.analysedFrom.value ?? 1,
    analysedTo: parameters.analysedTo.value ?? Number.POSITIVE_INFINITY,
    timesWithheld,
  });
  let { refused } = seen;
  if (refused === null && !timesWithheld && !alike(listed, settings)) refused = { found: 'no', reason: 'unlike-hops' };
  const unclear = refused === null && timesWithheld && request.placement === 'foot';
  const hops = refused === null ? listed : [];
  const hidden = hops.length > 0 ? hiddenHops(seen.timesS, hops, settings) : 0;
  const analysed = hops.filter((hop) => hop.analysed).length;
  const withheld: HopWithheld[] = refused === null ? [...seen.withheld] : [];
  if (refused === null && mass === undefined) withheld.push('no-body-mass');
  if (refused === null && !timesWithheld && analysed === 0) withheld.push('too-few-hops');
  const least = parameters.hopsLeast.value ?? 0;
  const complete: SeriesVerdict =
    refused?.found === 'cannot_tell'
      ? 'cannot_tell'
      : hops.length >= least
        ? 'yes'
        : hops.length + hidden < least
          ? 'no'
          : 'cannot_tell';
  return {
    // free flight alone does not tell a hop from the swing of a stride
    found: refused?.found ?? (unclear ? 'cannot_tell' : 'yes'),
    reason: refused?.reason ?? (unclear ? 'strides-possible' : null),
    sampleRateHz: seen.sampleRateHz,
    hops,
    count: { hops: hops.length, low: hops.length, high: hops.length + hidden, analysed, complete },
    measures: hopSummary(hops),
    bodyWeightN: refused === null ? seen.bodyWeightN : null,
    zeroN: refused === null ? seen.zeroN : null,
    massKg: mass === undefined ? null : { value: mass.massKg, u: mass.massUKg },
    withheld,
    cautions: cautionsOf(hops, hidden, complete, request, seen, settings),
  };
}

function cautionsOf(
  hops: readonly Hop[],
  hidden: number,
  complete: SeriesVerdict,
  { parameters, placement, bodyMassKg }: HopRequest,
  seen: Seen,
  settings: HopSettings,
): HopCaution[] {
  const cautions: HopCaution[] = ['ratio-is-no-clearance', 'leg-not-seen'];
  if (hops.length === 0) return cautions;
  if (complete !== 'yes') cautions.push('fewer-than-asked');
  if (hops.length > (parameters.hopsMost.value ?? Number.POSITIVE_INFINITY)) cautions.push('more-than-asked');
  if (hops.some((hop) => hop.index > 1 && hop.reason === 'from-standing')) cautions.push('interrupted');
  if (hidden > 0 || hops.some((hop) => hop.reason === 'gap')) cautions.push('gaps');
  if (placement === 'foot' && hops.some((hop) => hop.contactS !== null)) cautions.push('times-by-foot-sensor');
  if (bodyMassKg !== undefined && seen.bodyWeightN !== null) {
    const givenN = bodyMassKg * settings.gravityMps2;
    if (Math.abs(seen.bodyWeightN.value / givenN - 1) > settings.platform.weightShareMost)
      cautions.push('mass-differs');
  }
  return cautions;
}
