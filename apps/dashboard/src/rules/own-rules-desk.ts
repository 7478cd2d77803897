import { type OwnRuleNumber, type OwnRulesEntry, ownNumbersInUse, ownRulesOf, ownRulesSchema } from '@surae/casebook';
import { type ClinicRules, clinicRules } from '@surae/guidance';
import { GUIDANCE_RULES } from '@surae/shared';
import type { Json } from '@surae/storage';
import type { BookHand } from '../journey/taken-shelf.ts';

/** One number as it is changed, or given back by null. */
export type RuleChange = OwnRulesEntry['changes'][number];

/** A clinic's own copy of the rules: what was changed, and the rules as they count. */
export class OwnRulesDesk {
  private readonly hand: BookHand;

  constructor(hand: BookHand) {
    this.hand = hand;
  }

  /** Every change, the oldest first. */
  async entries(): Promise<readonly OwnRulesEntry[]> {
    const documents = await this.hand.read({ kind: ['own-rules', 'own-rules-back'] });
    const [kept, back] = ['own-rules', 'own-rules-back'].map((kind) => documents.filter((one) => one.kind === kind));
    return ownRulesOf(kept ?? [], back ?? []);
  }

  /** Rules as they count in this clinic. */
  async rules(): Promise<ClinicRules> {
    return rulesInUse(await this.entries());
  }

  /** Keeps changes in one document, so that all of them are there or none; gives its id. */
  async keep(changes: readonly RuleChange[], file: string | null = null): Promise<string> {
    const body = JSON.parse(JSON.stringify({ changes, file })) as Json;
    return (await this.hand.add({ kind: 'own-rules', schema: ownRulesSchema, about: null, body })).id;
  }

  /** Takes changes back: what stood before them stands again. They stay readable. */
  async takeBack(id: string): Promise<void> {
    await this.hand.add({ kind: 'own-rules-back', schema: ownRulesSchema, about: id, body: {} });
  }
}

/** Rules as they count by the changes of a clinic. */
export function rulesInUse(entries: readonly OwnRulesEntry[]): ClinicRules {
  const own: readonly OwnRuleNumber[] = ownNumbersInUse(entries);
  return clinicRules(GUIDANCE_RULES, own);
}
