import {
  type ClinicContact,
  type Entry,
  entryOf,
  type MorningCheck,
  type PlanItem,
  planItemSchema,
} from '@surae/casebook';
import type { Json } from '@surae/storage';
import type { BookHand } from './taken-shelf.ts';

/** A plan item with the id of its document. */
export type PlanEntry = Entry<PlanItem>;

/** What is kept beside the visits, of a person and of the clinic, and what takes a document back. */
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
      ids.push((await this.hand.add({ kind: 'plan-item', schema: planItemSchema, about: personId, body })).id);
    }
    await this.remove(before, 'planned-anew');
    return ids;
  }

  /** Whom somebody who was tested rings; null until the clinic said so. */
  async contact(): Promise<ClinicContact | null> {
    const last = (await this.hand.read({ kind: 'clinic-contact' })).at(-1);
    return last === undefined ? null : entryOf<ClinicContact>(last).body;
  }

  /** Keeps whom to ring in place of what was said before. */
  async keepContact({ name, telephone }: ClinicContact): Promise<void> {
    await this.hand.add({ kind: 'clinic-contact', schema: 1, about: null, body: { name, telephone } });
  }

  /** Mornings of a person that count. */
  async mornings(personId: string): Promise<readonly Entry<MorningCheck>[]> {
    return (await this.hand.read({ kind: 'morning-check', about: personId })).map((one) => entryOf<MorningCheck>(one));
  }

  /** Keeps a morning in place of what is said to be replaced. */
  async keepMorning(personId: string, morning: MorningCheck, replaces: readonly string[]): Promise<void> {
    const { left, right } = morning.pain;
    const body = { ...morning, pain: { left, right } };
    await this.hand.add({ kind: 'morning-check', schema: 1, about: personId, body });
    await this.remove(replaces, 'told-anew');
  }

  /** What of a plan still counts, in its order. */
  async plan(personId: string, ids: readonly string[]): Promise<readonly PlanEntry[]> {
    if (ids.length === 0) return [];
    const found = await this.hand.read({ kind: 'plan-item', about: personId });
    return ids.flatMap((id) => found.filter((one) => one.id === id).map((one) => entryOf<PlanItem>(one)));
  }
}
