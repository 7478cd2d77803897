import type { Side } from '@surae/analysis';
import { choiceBlocks, choiceFacts, choosableRaises, chosenFor, type Visit } from '@surae/casebook';
import { PROTOCOLS, type Protocol } from '@surae/shared';

/**
 * The protocol of the set of a leg: what the other leg did, else what was chosen, else the default. In a visit that was begun
 * before there was a choice, a surface that is not for this leg gives way to the default.
 */
export function protocolOfLeg(visit: Visit, side: Side): Protocol {
  const [standing] = choosableRaises;
  const chosen = chosenFor(visit, 'heel-raise');
  const done = visit.sets.filter(({ setAside }) => !setAside).at(-1)?.choice.protocolId;
  const wanted = protocolOf(done ?? chosen?.protocolId ?? '');
  if (wanted === undefined || !choosableRaises.includes(wanted)) return standing!;
  if (wanted.id === chosen?.protocolId) return wanted;
  const isBlocked = choiceBlocks(wanted, choiceFacts(visit, [])).some(
    ({ rule, legs }) => rule === 'insertion-not-floor' && legs.includes(side),
  );
  return isBlocked ? standing! : wanted;
}

/** The protocol of this id; undefined when there is none. */
export function protocolOf(id: string): Protocol | undefined {
  return PROTOCOLS.find((protocol) => protocol.id === id);
}

/** Beats a minute, up on one and down on the next; null where the protocol gives none. */
export function beatsPerMinute({ cue, cycleTarget }: Protocol['parameters']): number | null {
  return cue.value === 'none' || cycleTarget.value === null ? null : 120 / cycleTarget.value;
}
