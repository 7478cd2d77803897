import type { ChoiceParameter, NumberParameter, Protocol, PullProtocol, ReferenceRule } from '@surae/shared';
import type { Placement } from '../trace.ts';
import type { PullPlacement } from './pull-request.ts';

type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/**
 * Text that is the same for the same value: JSON with the keys of every object in order.
 *
 * @param value - plain JSON; a number must be finite [-]
 * @returns the text [-]
 *
 * Source: definition
 */
export function canonicalJson(value: Json): string {
  if (value === null || typeof value !== 'object') return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map((one) => canonicalJson(one as Json)).join(',')}]`;
  const record = value as { readonly [key: string]: Json };
  const keys = Object.keys(record).sort();
  return `{${keys.map((key) => `${JSON.stringify(key)}:${canonicalJson(record[key])}`).join(',')}}`;
}

function plainParameters({ parameters }: Protocol | PullProtocol): Json {
  const entries = Object.entries(parameters) as [string, NumberParameter | ChoiceParameter][];
  return Object.fromEntries(entries.map(([name, { value, unit }]) => [name, { value, unit }]));
}

/**
 * Text that two results share only when they were taken and judged in the same way: every parameter of the protocol with
 * its unit, the rule that gave the reference, and the placement. A hash of it is a matter of the caller.
 *
 * @param protocol - the protocol [-]
 * @param placement - where the sensor sat [-]
 * @param referenceRule - the rule that gave the reference, which may differ from the one asked for [-]
 * @returns canonical JSON [-]
 *
 * Source: ours
 */
export function protocolFingerprint(protocol: Protocol, placement: Placement, referenceRule: ReferenceRule): string {
  const maximum = protocol.repetitionMaximum;
  return canonicalJson({
    protocol: protocol.id,
    version: protocol.version,
    test: protocol.test,
    placement,
    referenceUsed: referenceRule,
    parameters: plainParameters(protocol),
    ...(maximum === undefined
      ? {}
      : { maximum: { target: maximum.target, least: maximum.countLeast, most: maximum.countMost } }),
  });
}

/**
 * The same for an isometric test: every parameter of the protocol with its unit, and the placement.
 *
 * @param protocol - the protocol [-]
 * @param placement - where the force was measured [-]
 * @returns canonical JSON [-]
 *
 * Source: ours
 */
export function pullFingerprint(protocol: PullProtocol, placement: PullPlacement): string {
  return canonicalJson({
    protocol: protocol.id,
    version: protocol.version,
    test: protocol.test,
    placement,
    parameters: plainParameters(protocol),
  });
}
