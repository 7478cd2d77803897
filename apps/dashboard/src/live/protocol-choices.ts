import type { Side } from '@surae/analysis';
import type { Visit } from '@surae/casebook';
import { PROTOCOLS, type Protocol } from '@surae/shared';

/** A protocol for one leg, and why it cannot be chosen now. */
export interface ProtocolChoice {
  readonly protocol: Protocol;
  readonly blocked: 'insertion' | null;
}

/** Standing protocols for one leg, the default first: the visit does not ask for a load on the knee. Where the insertion is sore, only a level floor may be chosen. */
export function protocolChoices({ sore }: Pick<Visit, 'sore'>, side: Side): ProtocolChoice[] {
  const isInsertion = sore[side] === 'insertion' || sore[side] === 'both-places';
  return PROTOCOLS.filter(
    ({ parameters: { legs, externalMass } }) => legs.value === 'single' && externalMass.value !== 'on-knee',
  ).map((protocol) => ({
    protocol,
    blocked: isInsertion && protocol.parameters.surface.value !== 'floor' ? 'insertion' : null,
  }));
}

/** The protocol of this id; undefined when there is none. */
export function protocolOf(id: string): Protocol | undefined {
  return PROTOCOLS.find((protocol) => protocol.id === id);
}

/** Beats a minute, up on one and down on the next; null where the protocol gives none. */
export function beatsPerMinute({ cue, cycleTarget }: Protocol['parameters']): number | null {
  return cue.value === 'none' || cycleTarget.value === null ? null : 120 / cycleTarget.value;
}
