import { withParameters } from '@surae/analysis';
import type { Protocol } from '@surae/shared';
import type { Told } from './told-columns.ts';

/** A row that says of its test what its protocol denies. */
export interface Contradiction {
  readonly contradiction: string;
}

/**
 * The protocol as the set was done: footwear and support that were told take the place of the usual ones, so that a set in
 * shoes is another test than one barefoot. Surface and knee make a protocol what it is: another one is a contradiction.
 */
export function toldProtocol(protocol: Protocol, told: Told): Protocol | Contradiction {
  for (const name of ['surface', 'knee'] as const) {
    const { value } = protocol.parameters[name];
    const said = told[name];
    if (said !== null && said !== value) {
      return { contradiction: `column "${name}": the protocol ${protocol.id} is done with ${value}, got ${said}` };
    }
  }
  if (told.end_reason === 'trials-done') {
    return { contradiction: 'column "end_reason": trials-done belongs to the test isometric' };
  }
  const { footwear, support } = told;
  const differing = {
    ...(footwear === null || footwear === protocol.parameters.footwear.value ? {} : { footwear }),
    ...(support === null || support === protocol.parameters.support.value ? {} : { support }),
  };
  if (Object.keys(differing).length === 0) return protocol;
  const adjusted = withParameters(protocol, differing);
  // the words of the columns are those that the parameters allow
  return adjusted.ok ? adjusted.value : protocol;
}
