import { withParameters } from '@surae/analysis';
import type { Protocol } from '@surae/shared';
import { UsageError } from './usage-error.ts';
import type { Vary } from './vary.ts';

/**
 * The protocol under each of the values; none where nothing was asked for.
 *
 * @throws {@link UsageError} when the protocol has no such parameter, or it cannot have such a value
 */
export function variedProtocols(
  protocol: Protocol,
  vary: Vary | undefined,
): { readonly value: string; readonly protocol: Protocol }[] {
  if (vary === undefined) return [];
  const { parameter, values } = vary;
  return values.map((value) => {
    const number = Number(value);
    const adjusted = withParameters(protocol, { [parameter]: Number.isNaN(number) ? value : number });
    if (adjusted.ok) return { value: `${parameter} ${value}`, protocol: adjusted.value };
    const [problem] = adjusted.problems;
    throw new UsageError(`--vary ${parameter}=${value}: expected ${problem?.expected}, got ${problem?.actual}`);
  });
}
