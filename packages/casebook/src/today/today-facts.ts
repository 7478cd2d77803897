import type { Side } from '@surae/analysis';
import type { StoredDocument } from '@surae/storage';
import type { Episode, MorningCheck } from '../kinds/person-kinds.ts';
import { personOf } from '../person.ts';
import { amendmentOf } from '../person-amendment.ts';
import type { VisitHistory } from '../visit.ts';
import { type MorningLine, morningLine } from './morning-line.ts';

/** An episode as a list of people shows it. */
export interface EpisodeLine extends Pick<Episode, 'sore' | 'onset' | 'began'> {
  readonly id: string;
  /** when it was written down, with offset */
  readonly at: string;
}

/** The legs of which a flare was told in a visit. */
export interface FlareTold {
  readonly visitId: string;
  /** when the visit was begun, with offset */
  readonly begunAt: string;
  readonly sides: readonly Side[];
}

/** What today's list asks of a person, as the documents of that person tell it: no time of today is in it. */
export interface TodayFacts {
  /** when the body mass was last written down, with offset; null where it is not measured */
  readonly massAt: string | null;
  /** the body mass that stood before it; null where there was none [kg] */
  readonly massBefore: number | null;
  /** those that are not over, the oldest first */
  readonly episodes: readonly EpisodeLine[];
  readonly morning: MorningLine | null;
  /** null where the newest visit tells of none, or was not asked */
  readonly flareTold: FlareTold | null;
}

/** What the facts are made of, beside the person and the visits. */
export const factKinds = ['episode', 'morning-check', 'visit-history'] as const;

interface MassFacts {
  readonly massAt: string | null;
  readonly massBefore: number | null;
}

function massOf(begun: StoredDocument, amendments: readonly StoredDocument[]): MassFacts {
  const told = [
    { at: begun.at, mass: personOf(begun).bodyMassKg },
    ...amendments
      .map(amendmentOf)
      .flatMap(({ at, change }) => (change.bodyMassKg === undefined ? [] : [{ at, mass: change.bodyMassKg }])),
  ];
  const last = told.at(-1)!;
  if (last.mass === null) return { massAt: null, massBefore: null };
  return { massAt: last.at, massBefore: told.at(-2)?.mass ?? null };
}

const bothSides = ['left', 'right'] as const satisfies readonly Side[];

function flareOf(visit: StoredDocument | undefined, histories: readonly StoredDocument[]): FlareTold | null {
  const told = histories.filter(({ about }) => about === visit?.id).at(-1);
  if (visit === undefined || told === undefined) return null;
  const { legs } = (told.body as unknown as { readonly history: VisitHistory }).history;
  const sides = bothSides.filter((side) => legs[side].irritability.flare === 'yes');
  return sides.length === 0 ? null : { visitId: visit.id, begunAt: visit.at, sides };
}

/** The episodes among documents of one person that are not over, in their order. */
export function openEpisodes(documents: readonly StoredDocument[]): readonly EpisodeLine[] {
  return documents.flatMap(({ id, kind, at, body }): readonly EpisodeLine[] => {
    if (kind !== 'episode') return [];
    const { sore, onset, began, over } = body as unknown as Episode;
    return over === null ? [{ id, at, sore, onset, began }] : [];
  });
}

/**
 * What today's list asks of somebody.
 *
 * @param begun - the document of the person [-]
 * @param own - documents about the person and about the visits of that person, in order [-]
 * @param newest - the newest visit in which anything was answered; undefined without one [-]
 * @returns facts that hold until a further document comes [-]
 * Source: ours
 */
export function todayFacts(
  begun: StoredDocument,
  own: readonly StoredDocument[],
  newest: StoredDocument | undefined,
): TodayFacts {
  const ofKind = (kind: string): readonly StoredDocument[] => own.filter((one) => one.kind === kind);
  return {
    ...massOf(begun, ofKind('person-amended')),
    episodes: openEpisodes(ofKind('episode')),
    morning: morningLine(ofKind('morning-check').map(({ body }) => body as unknown as MorningCheck)),
    flareTold: flareOf(newest, ofKind('visit-history')),
  };
}
