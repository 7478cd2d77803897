import {
  type BegunPlan,
  type BegunPlanEntry,
  begunPlanKinds,
  begunPlanOf,
  begunPlanSchema,
  type ClinicContact,
  type DoneItem,
  type Entry,
  entryOf,
  type MorningCheck,
  type PlanItem,
  planFacts,
  planItemSchema,
  planOpenBlocks,
  type Run,
  type Visit,
} from '@surae/casebook';
import type { PlanRuleCode } from '@surae/shared';
import type { Json } from '@surae/storage';
import type { BookHand, UnsignedDocument } from './taken-shelf.ts';

/** A plan item with the id of its document. */
export type PlanEntry = Entry<PlanItem>;

/** A plan was to be kept although rules stand against it. */
export class PlanRefusedError extends Error {
  readonly rules: readonly PlanRuleCode[];

  constructor(rules: readonly PlanRuleCode[]) {
    super(`Rules stand against the plan: ${rules.join(', ')}.`);
    this.name = 'PlanRefusedError';
    this.rules = rules;
  }
}

/** Documents that take others out of what counts. */
function removals(ids: readonly string[], why: string): readonly UnsignedDocument[] {
  return ids.map((about) => ({ kind: 'removal', schema: 1, about, body: { why } }));
}

/** What is kept beside the visits, of a person and of the clinic, and what takes a document back. */
export class PersonNotes {
  private readonly hand: BookHand;

  constructor(hand: BookHand) {
    this.hand = hand;
  }

  /** Takes documents out of what counts; they stay readable. */
  async remove(ids: readonly string[], why: string): Promise<void> {
    await this.hand.addAll(removals(ids, why));
  }

  /**
   * Keeps the plan of a visit in place of an earlier one of it; gives the ids of its documents, in order. The last gate: what loads
   * is refused under a lock, and what a rule stands against without a reason.
   */
  async keepPlan(visit: Visit, items: readonly PlanItem[]): Promise<readonly string[]> {
    const rules = items.flatMap((item) => planOpenBlocks(item, planFacts(visit)));
    if (rules.length > 0) throw new PlanRefusedError(rules);
    const lines = items.map((item) => {
      const body = { ...item } as unknown as Json;
      return { kind: 'plan-item', schema: planItemSchema, about: visit.personId, body };
    });
    // a plan that was cut off between two lines would be another plan
    const kept = await this.hand.addAll([...lines, ...removals(visit.plan ?? [], 'planned-anew')]);
    return kept.slice(0, lines.length).map(({ id }) => id);
  }

  /** Writes down a plan of a visit as it stands while it is being written; the newest is what a page begins from. */
  async keepBegunPlan(visitId: string, { items, typed }: BegunPlan): Promise<void> {
    const body = JSON.parse(JSON.stringify({ items, typed })) as Json;
    await this.hand.add({ kind: 'plan-begun', schema: begunPlanSchema, about: visitId, body });
  }

  /** The plan of a visit that was begun and not kept; null where there is none. */
  async begunPlan(visitId: string): Promise<BegunPlanEntry | null> {
    return begunPlanOf(await this.hand.read({ kind: begunPlanKinds, about: visitId }));
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
    const told = { kind: 'morning-check', schema: 1, about: personId, body };
    await this.hand.addAll([told, ...removals(replaces, 'told-anew')]);
  }

  /** What was written down at home, in place of what is said to be replaced. */
  async keepFromHome(
    personId: string,
    entry: { readonly kind: 'done-item'; readonly body: DoneItem } | { readonly kind: 'run'; readonly body: Run },
    replaces: readonly string[],
  ): Promise<void> {
    const body = JSON.parse(JSON.stringify(entry.body)) as Json;
    const told = { kind: entry.kind, schema: 1, about: personId, body };
    await this.hand.addAll([told, ...removals(replaces, 'told-anew')]);
  }

  /** What of a plan still counts, in its order. */
  async plan(personId: string, ids: readonly string[]): Promise<readonly PlanEntry[]> {
    if (ids.length === 0) return [];
    const found = await this.hand.read({ kind: 'plan-item', about: personId });
    return ids.flatMap((id) => found.filter((one) => one.id === id).map((one) => entryOf<PlanItem>(one)));
  }
}
