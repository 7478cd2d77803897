import type { ChoiceParameter, NumberParameter, Protocol } from '@surae/shared';
import type { ComparedReport } from './pair.ts';

/** The way in which a test was done, feature by feature; null is not known and matches nothing. */
export interface TestIdentity {
  readonly protocol: string | null;
  readonly version: string | null;
  readonly placement: string | null;
  readonly [feature: string]: string | null;
}

/** A feature in which two tests differ, or that is not known of one. */
export interface IdentityDifference {
  readonly feature: string;
  readonly before: string | null;
  readonly after: string | null;
}

function shown({ value, unit }: NumberParameter | ChoiceParameter): string {
  if (value === null) return 'none';
  return typeof value === 'number' && unit !== '1' ? `${value} ${unit}` : String(value);
}

/**
 * The way in which a set of heel raises was done: protocol, each of its parameters, placement, what the heights are of, the
 * rule of the reference, and whatever else the caller knows (kind of source, device, footwear).
 *
 * @param report - of the set [-]
 * @param protocol - the protocol that it was done by [-]
 * @param others - further features by name; null is not known [-]
 * @returns features by name [-]
 *
 * Source: ours
 */
export function testIdentity(
  report: Pick<ComparedReport, 'placement' | 'kind' | 'reference'>,
  protocol: Protocol,
  others: Readonly<Record<string, string | null>>,
): TestIdentity {
  const parameters = Object.entries(protocol.parameters) as [string, NumberParameter | ChoiceParameter][];
  return {
    ...others,
    protocol: protocol.id,
    version: protocol.version,
    placement: report.placement,
    heights: report.kind,
    // a count by hand is held against no height, which is known and no open question
    referenceUsed: report.reference?.rule ?? (report.kind === 'not-measured' ? 'none' : null),
    ...Object.fromEntries(parameters.map(([name, parameter]) => [`parameter.${name}`, shown(parameter)])),
  };
}

/**
 * Features in which two tests differ; one that is not known of either, or that only one has, is a difference.
 *
 * @param before - the earlier test [-]
 * @param after - the later test [-]
 * @returns the differences by name of the feature; empty when the tests were done in the same way [-]
 *
 * Source: ours
 */
export function identityDifferences(before: TestIdentity, after: TestIdentity): readonly IdentityDifference[] {
  const of = (identity: TestIdentity, feature: string): string | null =>
    Object.hasOwn(identity, feature) ? identity[feature] : null;
  return [...new Set([...Object.keys(before), ...Object.keys(after)])]
    .sort()
    .map((feature) => ({ feature, before: of(before, feature), after: of(after, feature) }))
    .filter((one) => one.before === null || one.before !== one.after);
}
