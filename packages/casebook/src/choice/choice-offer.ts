import { CHOICE_PROPOSALS, FEW_RAISES } from '@surae/shared';
import type { ChoiceBlock } from './choice-block.ts';
import { choiceBlocks, mayGoOver } from './choice-blocks.ts';
import { type ChoiceFacts, gradeOf, type LastTest } from './choice-facts.ts';
import { type Choosable, choosable } from './choosable.ts';
import type { TestChosen } from './test-chosen.ts';

/** A test that can be chosen, or not today. */
export interface ChoiceEntry {
  readonly protocol: Choosable;
  readonly from: TestChosen['from'];
  /** how it was done on the last visit; absent where it was not */
  readonly last?: LastTest;
  /** what stands against it; empty where it can be chosen */
  readonly blocks: readonly ChoiceBlock[];
  /** a clinician may go over that, with a reason */
  readonly mayGoOver: boolean;
}

/** Everything on the page of the choice. */
export interface ChoiceOffer {
  /** up to three, the default first; empty where nothing is left for today */
  readonly proposed: readonly ChoiceEntry[];
  readonly others: readonly ChoiceEntry[];
  readonly blocked: readonly ChoiceEntry[];
  /** fewest single-leg raises of the last time, where they are so few that both legs together are proposed; else null */
  readonly fewRaises: number | null;
}

/** how many are proposed at most. Ours: what is taken in at one look */
const proposedMost = 3;

function fewestOf({ legs }: ChoiceFacts): number | null {
  const counts = [legs.left, legs.right].flatMap(({ lastRaises }) => lastRaises?.count ?? []);
  const fewest = Math.min(...counts);
  return fewest < FEW_RAISES.value ? fewest : null;
}

/**
 * The tests of a visit in the order in which they are offered: what was done on the last visit first, then what is proposed
 * for the irritability that counts, then the rest; what is blocked stands apart with what stands against it.
 *
 * @param facts - what is known of the person today [-]
 * @param offered - tests that the visit has steps for, the default first [-]
 * @returns the offer [-]
 * Source: ours; the orders have their own source in the shared data
 */
export function choiceOffer(facts: ChoiceFacts, offered: readonly Choosable[] = choosable): ChoiceOffer {
  const fewRaises = fewestOf(facts);
  const ids = CHOICE_PROPOSALS[fewRaises === null ? (gradeOf(facts) ?? 'none') : 'few-raises'].protocolIds;
  const lastOf = ({ id }: Choosable): LastTest | undefined => facts.last.find(({ protocolId }) => protocolId === id);
  const entry = (protocol: Choosable): ChoiceEntry => {
    const last = lastOf(protocol);
    const blocks = choiceBlocks(protocol, facts);
    const from = last !== undefined ? 'last-time' : ids.includes(protocol.id) ? 'proposed' : 'other';
    return { protocol, from, ...(last === undefined ? {} : { last }), blocks, mayGoOver: mayGoOver(blocks) };
  };
  const order = [...facts.last.map(({ protocolId }) => protocolId), ...ids];
  const rank = ({ protocol: { id } }: ChoiceEntry): number => (order.includes(id) ? order.indexOf(id) : order.length);
  // the sort keeps the order of equals
  const entries = offered.map(entry).sort((one, other) => rank(one) - rank(other));
  const open = entries.filter(({ blocks }) => blocks.length === 0);
  const proposed = open.filter(({ protocol: { id } }) => order.includes(id)).slice(0, proposedMost);
  return {
    proposed,
    others: open.filter((one) => !proposed.includes(one)),
    blocked: entries.filter(({ blocks }) => blocks.length > 0),
    fewRaises,
  };
}
