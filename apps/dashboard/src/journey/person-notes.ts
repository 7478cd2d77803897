import { type Entry, entryOf, type PlanItem } from '@surae/casebook';
import type { Json } from '@surae/storage';
import type { BookHand } from './taken-shelf.ts';

/** A plan item with the id of its document. */
export type PlanEntry = Entry<PlanItem>;

/** What is kept of a person beside the visits, and what takes a document back. */
export class PersonNotes {
  private readonly hand: BookHand;

  constructor(hand: BookHand) {
    this.hand = hand;
  }

  /** Takes documents out of what counts; they stay readable. */
  async remove(ids: readonly string[], why: string): Promise<void> {
    for (const about of ids) await this.hand.add({ kind: 'removal', schema: 1, about, body: { why } });
  }

  /** Keeps a plan in place of an earlier one; gives the ids of its documents, in order. */
  async keepPlan(personId: string, items: readonly PlanItem[], before: readonly string[]): Promise<readonly string[]> {
    const ids: string[] = [];
    for (const item of items) {
      const body = { ...item } as unknown as Json;
      ids.push((await this.hand.add({ kind: 'plan-item', schema: 1, about: personId, body })).id);
    }
    await this.remove(before, 'planned-anew');
    return ids;
  }

  /** What of a plan still counts, in its order. */
  async plan(personId: string, ids: readonly string[]): Promise<readonly PlanEntry[]> {
    if (ids.length === 0) return [];
    const found = await this.hand.read({ kind: 'plan-item', about: personId });
    return ids.flatMap((id) => found.filter((one) => one.id === id).map((one) => entryOf<PlanItem>(one)));
  }
}
