import type { Json, StoredDocument } from '@surae/storage';
import type { Episode } from '../kinds/person-kinds.ts';
import { readBody } from '../kinds/read-body.ts';

/** An episode as it stands, with what stood before its last entry. */
export interface EpisodeCourse {
  readonly id: string;
  /** when it was first written down, with offset */
  readonly at: string;
  readonly episode: Episode;
  /** what its last entry made it from; null where that entry is the first one */
  readonly before: Episode | null;
}

/** Why an amendment was written that takes the last entry back. */
export const undoneWhy = 'undone';

type Body = Readonly<Record<string, Json>>;
interface Amendment {
  readonly change: Body;
  readonly why: string | null;
}

/** States that an episode went through and that were not taken back, the first one first. */
function statesOf(document: StoredDocument, amendments: readonly StoredDocument[]): readonly Body[] {
  return amendments.reduce<readonly Body[]>(
    (states, one) => {
      const { change, why } = one.body as unknown as Amendment;
      const body = { ...states.at(-1), ...change };
      if (!readBody({ ...document, body }).ok) return states;
      return why === undoneWhy && states.length > 1 ? states.slice(0, -1) : [...states, body];
    },
    [document.body as Body],
  );
}

/**
 * The episodes of somebody as they count, each with the way back.
 *
 * @param documents - episodes, amendments and removals of one person, in order and as they were written [-]
 * @returns in the order in which they were written down; those that were taken out are left out [-]
 * Source: ours
 */
export function episodeCourses(documents: readonly StoredDocument[]): readonly EpisodeCourse[] {
  return documents
    .filter((one) => one.kind === 'episode' && readBody(one).ok)
    .flatMap((document) => {
      const own = documents.filter(({ about }) => about === document.id);
      if (own.some(({ kind }) => kind === 'removal')) return [];
      const states = statesOf(
        document,
        own.filter((one) => one.kind === 'amendment' && readBody(one).ok),
      ) as unknown as readonly Episode[];
      return [{ id: document.id, at: document.at, episode: states.at(-1)!, before: states.at(-2) ?? null }];
    });
}

/** The document that takes the last entry of an episode back: what was changed is so again, or the episode is taken out. */
export function undoOf({ id, episode, before }: EpisodeCourse): {
  readonly kind: 'amendment' | 'removal';
  readonly schema: 1;
  readonly about: string;
  readonly body: Json;
} {
  if (before === null) return { kind: 'removal', schema: 1, about: id, body: { why: undoneWhy } };
  const [now, then] = [episode, before] as unknown as readonly [Body, Body];
  const changed = Object.keys(now).filter((name) => JSON.stringify(now[name]) !== JSON.stringify(then[name]));
  const change = Object.fromEntries(changed.map((name) => [name, then[name] ?? null]));
  return { kind: 'amendment', schema: 1, about: id, body: { change, why: undoneWhy } };
}
