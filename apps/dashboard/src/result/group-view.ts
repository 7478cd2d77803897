import type { NoReference, ReferenceBeside, ReferencesFound, Side } from '@surae/analysis';
import { COMPARED_WORDS, GROUP_WORDS, NO_REFERENCE_SENTENCES, type ReferenceEntry, SUMMARY_WORDS } from '@surae/shared';
import { decimal } from '../words/decimal.ts';
import { entryWords } from '../words/entry-words.ts';
import { fill } from '../words/fill.ts';
import { capital, type ValueWords } from './value-words.ts';

/** Where a value lies against the middle of a group: near where its 95 % interval holds the middle. */
export type GroupPlace = 'below' | 'near' | 'above';

/** One published group beside the value. */
export interface GroupRow {
  readonly id: string;
  readonly who: string;
  readonly middle: number;
  readonly middleWords: string;
  readonly place: GroupPlace | null;
  readonly placeWords: string;
  readonly source: string;
  readonly notes: readonly string[];
}

/** One leg beside every group that was tested in the same way. */
export interface GroupView {
  readonly side: Side;
  readonly lead: string;
  readonly title: string;
  /** with its 95 % bounds; null where the set is not interpreted */
  readonly value: { readonly value: number; readonly low: number; readonly high: number } | null;
  readonly rows: readonly GroupRow[];
  readonly lines: readonly string[];
}

export interface GroupQuestion {
  readonly side: Side;
  readonly value: number | null;
  /** standard uncertainty from one test to the next; null is not known */
  readonly u: number | null;
  readonly reference: ReferencesFound | NoReference;
  readonly words: ValueWords;
}

const reach = 1.96;
const places = ['below', 'near', 'above'] as const satisfies readonly GroupPlace[];

/** The place of a value against the middle of a group; null where either is not known. */
export function placeOf(
  value: number | null,
  u: number | null,
  { difference, entry }: ReferenceBeside,
): GroupPlace | null {
  if (value === null || u === null || difference === null) return null;
  if (value + reach * u < entry.value) return 'below';
  return value - reach * u > entry.value ? 'above' : 'near';
}

/** Who is in a group, as one reads it. */
export function whoWords({ group: { sex, ageFrom, ageBelow, people } }: ReferenceEntry): string {
  const who = GROUP_WORDS[sex].text;
  // a bound beyond every age is none
  const ages =
    ageBelow >= 110
      ? fill(GROUP_WORDS['ages-open'], { who, from: ageFrom })
      : fill(GROUP_WORDS.ages, { who, from: ageFrom, to: ageBelow - 1 });
  return people === null ? ages : `${ages}, ${fill(GROUP_WORDS.people, { count: people })}`;
}

function rowOf(beside: ReferenceBeside, { value, u, words }: GroupQuestion): GroupRow {
  const { entry, cautions } = beside;
  const place = placeOf(value, u, beside);
  const cautionWords = cautions.map((caution) =>
    fill(GROUP_WORDS[caution], { most: entry.group.bodyMassIndexMost ?? '' }),
  );
  return {
    id: entry.id,
    who: whoWords(entry),
    middle: entry.value,
    middleWords: fill(GROUP_WORDS[entry.statistic], { value: decimal(entry.value, words.decimals) }),
    place,
    placeWords: place === null ? GROUP_WORDS.near.text : GROUP_WORDS[place].text,
    source: entry.source,
    notes: [entryWords(entry, 'remark'), ...cautionWords],
  };
}

function leadOf(leg: string, rows: readonly GroupRow[]): string {
  const counted = places.map((place) => ({
    place,
    count: rows.filter((row) => (row.place ?? 'near') === place).length,
  }));
  const [only, other] = counted.filter(({ count }) => count > 0);
  if (only !== undefined && other === undefined) return fill(GROUP_WORDS[`all-${only.place}`], { leg });
  const told = counted
    .filter(({ count }) => count > 0)
    .map(({ place, count }) => fill(GROUP_WORDS[`mixed-${place}`], { count }));
  return fill(GROUP_WORDS.mixed, { leg, all: rows.length, places: told.join(', ') });
}

/** One leg beside every published group that was tested in the same way, or why there is none; nothing is averaged. */
export function groupView(question: GroupQuestion): GroupView {
  const { side, value, u, reference, words } = question;
  const leg = capital(SUMMARY_WORDS[side].text);
  if (reference.kind === 'none') {
    const why = reference.reasons.map((reason) => NO_REFERENCE_SENTENCES[reason].text).join(' ');
    return { side, lead: fill(GROUP_WORDS.none, { leg, why }), title: leg, value: null, rows: [], lines: [] };
  }
  const rows = reference.references.map((one) => rowOf(one, question));
  const bounds =
    value === null || u === null ? null : { value, low: Math.max(0, value - reach * u), high: value + reach * u };
  const interval =
    bounds === null
      ? ''
      : fill(COMPARED_WORDS.interval, {
          low: decimal(bounds.low, words.decimals),
          high: decimal(bounds.high, words.decimals),
        });
  return {
    side,
    lead: leadOf(leg, rows),
    title: fill(GROUP_WORDS.value, { leg, value: `${decimal(value ?? 0, words.decimals)} ${words.unit}`, interval }),
    value: bounds,
    rows,
    lines: [
      ...(reference.disagree ? [GROUP_WORDS.disagree.text] : []),
      ...(reference.missing.includes('sex') ? [GROUP_WORDS['sex-missing'].text] : []),
    ],
  };
}
