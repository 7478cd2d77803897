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
