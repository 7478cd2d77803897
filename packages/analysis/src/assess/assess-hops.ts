import type { ChoiceParameter, EndReason, HopProtocol, NumberParameter } from '@surae/shared';
import { findHops } from '../hops/find-hops.ts';
import { type HopEntry, type HopEntryFacts, hopEntry } from '../hops/hop-entry.ts';
import type { HopSeries } from '../hops/hop-series.ts';
import type { HopSettings } from '../hops/hop-settings.ts';
import type { Side, Trace } from '../trace.ts';
import { canonicalJson } from './fingerprint.ts';
import type { TestEnd } from './report.ts';
import { endClass } from './test-end.ts';

/** Where hops are measured. */
export type HopPlacement = 'platform' | 'foot';

/** What one assessment of hops is asked. */
export interface HopTestRequest {
  readonly placement: HopPlacement;
  readonly side?: Side;
  readonly protocol: HopProtocol;
  readonly bodyMassKg?: number;
  /** what is known of the person before the hops; what is left out was not asked */
  readonly entry?: HopEntryFacts;
  readonly endReason?: EndReason;
}

/** Everything that is known about one test of repeated hops, ready for JSON. */
export interface HopReport extends HopSeries {
  readonly test: 'hop-series';
  readonly placement: HopPlacement;
  readonly side: Side | null;
  readonly protocol: { readonly id: string; readonly version: string; readonly fingerprint: string };
  /** whether the conditions before hops were met */
  readonly entry: HopEntry;
  readonly end: { readonly reasonGiven: EndReason | null; readonly class: TestEnd['class'] };
}

/**
 * Text that two results of hops share only when they were taken in the same way.
 *
 * @param protocol - the protocol [-]
 * @param placement - where the hops were measured [-]
 * @returns canonical JSON [-]
 *
 * Source: ours
 */
export function hopFingerprint(protocol: HopProtocol, placement: HopPlacement): string {
  const entries = Object.entries(protocol.parameters) as [string, NumberParameter | ChoiceParameter][];
  return canonicalJson({
    protocol: protocol.id,
    version: protocol.version,
    test: protocol.test,
    placement,
    parameters: Object.fromEntries(entries.map(([name, { value, unit }]) => [name, { value, unit }])),
  });
}

/**
 * Report on one recording of repeated hops: the series, and whether the conditions before it were met.
 *
 * @param trace - the recording, SI units, native sample times [SI]
 * @param request - placement, side, protocol, what is known of person and trial [-]
 * @param settings - see {@link HopSettings} [-]
 * @returns the report, plain JSON; poor data are said in it [-]
 * @throws {@link InputError} `missing-channel` when the trace lacks what the placement needs; `too-short`, `not-finite`, `not-increasing`, `length-mismatch` for a trace that breaks its contract; `out-of-range` for a mass
 *
 * Source: ours
 */
export function assessHops(trace: Trace, request: HopTestRequest, settings: HopSettings): HopReport {
  const { placement, side, protocol, bodyMassKg, endReason } = request;
  const series = findHops(
    trace,
    { placement, parameters: protocol.parameters, ...(bodyMassKg === undefined ? {} : { bodyMassKg }) },
    settings,
  );
  return {
    test: 'hop-series',
    placement,
    side: side ?? null,
    protocol: { id: protocol.id, version: protocol.version, fingerprint: hopFingerprint(protocol, placement) },
    ...series,
    entry: hopEntry(request.entry ?? {}, protocol.parameters),
    end: { reasonGiven: endReason ?? null, class: endReason === undefined ? 'unknown' : endClass(endReason) },
  };
}
