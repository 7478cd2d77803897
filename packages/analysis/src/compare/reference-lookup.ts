import { COMPARISON_RULES, REFERENCE_TABLES, type ReferenceEntry } from '@surae/shared';

/** Who was tested and how; null is not known. */
export interface ReferenceQuestion {
  /** force of a hold depends on the rig: no group is held beside it */
  readonly measure: ReferenceEntry['measure'] | 'peak-force';
  readonly protocolId: string;
  readonly value: number | null;
  /** UCUM code of the value */
  readonly unit: string;
  readonly sex: 'men' | 'women' | null;
  /** [a] */
  readonly ageYears: number | null;
  /** [kg/m2] */
  readonly bodyMassIndex: number | null;
  readonly pregnant: boolean | null;
  readonly amputation: boolean | null;
  readonly nerveCondition: boolean | null;
}

export type NoReferenceReason =
  /** the set is not interpreted as what the calf can do, so that nothing stands beside it */
  | 'set-not-interpreted'
  | 'not-for-this-measure'
  | 'no-matching-protocol'
  | 'age-not-known'
  | 'under-18'
  | 'pregnancy'
  | 'pregnancy-not-asked'
  | 'amputation'
  | 'amputation-not-asked'
  | 'nerve-condition'
  | 'nerve-condition-not-asked'
  | 'no-matching-group';

/** One published group beside the result. */
export interface ReferenceBeside {
  readonly entry: ReferenceEntry;
  /** where the value lies against the middle of the group; null without a value in the unit of the entry */
  readonly place: 'below' | 'at' | 'above' | null;
  /** value minus middle of the group; null without such a value [unit of the entry] */
  readonly difference: number | null;
  /** what about the person may not fit the group */
  readonly cautions: readonly ('body-mass-index-above-group' | 'body-mass-index-not-known')[];
}

/** Every source that matches, each for itself. */
export interface ReferencesFound {
  readonly kind: 'references';
  /** never averaged */
  readonly references: readonly ReferenceBeside[];
  /** the groups have different middles */
  readonly disagree: boolean;
  /** what was not known and kept groups out */
  readonly missing: readonly 'sex'[];
}

export interface NoReference {
  readonly kind: 'none';
  readonly reasons: readonly NoReferenceReason[];
}

function personReasons(question: ReferenceQuestion): NoReferenceReason[] {
  const { ageYears, pregnant, amputation, nerveCondition } = question;
  const age = Number.isFinite(ageYears) ? ageYears : null;
  const holds: readonly (readonly [NoReferenceReason, boolean])[] = [
    ['age-not-known', age === null],
    ['under-18', age !== null && age < COMPARISON_RULES.adultFrom.value],
    ['pregnancy', pregnant === true],
    ['pregnancy-not-asked', pregnant === null],
    ['amputation', amputation === true],
    ['amputation-not-asked', amputation === null],
    ['nerve-condition', nerveCondition === true],
    ['nerve-condition-not-asked', nerveCondition === null],
  ];
  return holds.filter(([, one]) => one).map(([reason]) => reason);
}

function beside(entry: ReferenceEntry, { value, unit, bodyMassIndex }: ReferenceQuestion): ReferenceBeside {
  const difference = value !== null && Number.isFinite(value) && unit === entry.unit ? value - entry.value : null;
  const place = difference === null ? null : difference < 0 ? 'below' : difference > 0 ? 'above' : 'at';
  const most = entry.group.bodyMassIndexMost;
  if (most === null) return { entry, place, difference, cautions: [] };
  if (bodyMassIndex === null) return { entry, place, difference, cautions: ['body-mass-index-not-known'] };
  return { entry, place, difference, cautions: bodyMassIndex > most ? ['body-mass-index-above-group'] : [] };
}

/**
 * Every published group of the same protocol, measure, age and sex, side by side with the value; they are never averaged.
 * Where none matches, or the person is one that no group stands for, or it was not asked, there is no reference.
 *
 * @param question - see {@link ReferenceQuestion} [unit of the question]
 * @param tables - the groups to look in [-]
 * @returns every match with the place of the value, or the reasons why there is none [unit of the entries]
 *
 * Source: sources stand with the entries; whom no group stands for: common practice, no source
 */
export function referencesFor(
  question: ReferenceQuestion,
  tables: readonly ReferenceEntry[] = REFERENCE_TABLES,
): ReferencesFound | NoReference {
  const ofMeasure = tables.filter(({ measure }) => measure === question.measure);
  if (ofMeasure.length === 0) return { kind: 'none', reasons: ['not-for-this-measure'] };
  const ofProtocol = ofMeasure.filter(({ protocols }) => protocols.includes(question.protocolId));
  if (ofProtocol.length === 0) return { kind: 'none', reasons: ['no-matching-protocol'] };
  const against = personReasons(question);
  if (question.ageYears === null || against.length > 0) return { kind: 'none', reasons: against };
  const age = question.ageYears;
  const ofAge = ofProtocol.filter(({ group }) => age >= group.ageFrom && age < group.ageBelow);
  const matching = ofAge.filter(({ group }) => group.sex === 'all' || group.sex === question.sex);
  if (matching.length === 0) return { kind: 'none', reasons: ['no-matching-group'] };
  const keptOut = question.sex === null && matching.length < ofAge.length;
  return {
    kind: 'references',
    references: matching.map((entry) => beside(entry, question)),
    disagree: new Set(matching.map(({ value }) => value)).size > 1,
    missing: keptOut ? ['sex'] : [],
  };
}
