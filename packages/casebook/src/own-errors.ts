import type { OwnErrors, OwnRatios, OwnReliabilities } from '@surae/analysis';
import { COMPARISON_RULES } from '@surae/shared';
import type { Json, StoredDocument } from '@surae/storage';

/** How a clinic handed over its own error: a file as it was read, or the figures as they were typed. */
export type OwnErrorsGiven =
  | { readonly kind: 'file'; readonly name: string; readonly json: Json }
  | {
      readonly kind: 'typed';
      /** in `unit`; a share in percent */
      readonly standardError: number;
      /** UCUM code, or a share of values in that unit */
      readonly unit: '1' | 'N' | 'N.m';
      readonly isShare: boolean;
      readonly people: number;
      readonly days: number;
      /** who measured it and on whom; null was not told */
      readonly source: string | null;
    };

/** What is kept of a clinic's own error: the figures that results are held against, and what they were made of. */
export interface OwnErrorsKept {
  readonly errors: OwnErrors;
  readonly given: OwnErrorsGiven;
  /** name and version of what made the figures */
  readonly software: string;
}

/** An own error in the book. */
export interface OwnErrorsEntry extends OwnErrorsKept {
  readonly id: string;
  readonly at: string;
  readonly author: string;
  /** a newer one of the same protocol stands in its place, or it was taken back: kept, and not used */
  readonly isOver: boolean;
}

/** Own errors by protocol, as comparisons ask for them. */
export interface OwnErrorsInUse {
  readonly tests: OwnReliabilities;
  readonly ratios: OwnRatios;
}

export const ownErrorsSchema = 1;
export const noOwnErrors: OwnErrorsInUse = { tests: {}, ratios: {} };

/** Whether a figure stands in the place of an older one: one of too few pairs is shown, and takes the place of none that is used. */
function standsFor(newer: { readonly pairs: number } | null, older: { readonly pairs: number } | null): boolean {
  const least = COMPARISON_RULES.ownPairsLeast.value;
  return older === null || (newer !== null && (newer.pairs >= least || older.pairs < least));
}

/** Whether everything that the older one says of a protocol is said anew. */
function replaces({ errors: newer }: OwnErrorsKept, { errors: older }: OwnErrorsKept): boolean {
  return (
    newer.protocolId === older.protocolId && standsFor(newer.test, older.test) && standsFor(newer.ratios, older.ratios)
  );
}

/** The own errors that documents tell of, in the order in which they were added, and which of them are over. */
export function ownErrorsOf(
  kept: readonly StoredDocument[],
  takenBack: readonly Pick<StoredDocument, 'about'>[],
): readonly OwnErrorsEntry[] {
  const bodies = kept.map(({ id, at, author, body }) => ({ id, at, author, ...(body as unknown as OwnErrorsKept) }));
  const isBack = ({ id }: { readonly id: string }): boolean => takenBack.some(({ about }) => about === id);
  return bodies.map((one, place) => ({
    ...one,
    isOver: isBack(one) || bodies.slice(place + 1).some((later) => !isBack(later) && replaces(later, one)),
  }));
}

/** By protocol the newest figure that stands for those before it. */
function newest<Figure extends { readonly pairs: number }>(
  entries: readonly OwnErrorsEntry[],
  of: (errors: OwnErrors) => Figure | null,
): Readonly<Record<string, Figure>> {
  const found: Record<string, Figure> = {};
  for (const { errors, isOver } of entries) {
    const [figure, before = null] = [of(errors), found[errors.protocolId]];
    if (!isOver && figure !== null && standsFor(figure, before)) found[errors.protocolId] = figure;
  }
  return found;
}

/** What counts by protocol. */
export function ownErrorsInUse(entries: readonly OwnErrorsEntry[]): OwnErrorsInUse {
  return { tests: newest(entries, ({ test }) => test), ratios: newest(entries, ({ ratios }) => ratios) };
}
