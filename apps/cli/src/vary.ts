import { withParameters } from '@surae/analysis';
import type { Protocol } from '@surae/shared';
import { UsageError } from './usage-error.ts';

/** Values of one parameter of a protocol, under each of which every recording is judged as well. */
export interface Vary {
  readonly parameter: string;
  readonly values: readonly string[];
}

/**
 * What `NAME=VALUE,VALUE...` asks for.
 *
 * @throws {@link UsageError} unless it names a parameter and two different values or more
 */
export function readVary(text: string): Vary {
  const found = /^([a-zA-Z]+)=([^,]+(?:,[^,]+)+)$/.exec(text);
  const values = found?.[2]!.split(',') ?? [];
  if (found === null || new Set(values).size !== values.length) {
    throw new UsageError(`--vary ${text}: expected a parameter and its values, such as heightFraction=0.6,0.7,0.8`);
  }
  return { parameter: found[1]!, values };
}

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
