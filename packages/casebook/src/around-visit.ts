import type { StoredDocument } from '@surae/storage';
import type { AroundVisit } from './around-told.ts';
import { type Entry, entryOf } from './entry.ts';
import type { Episode, Target } from './kinds/person-kinds.ts';
import type { Visit } from './visit.ts';

/** Kinds of documents about a person that tell what is around a visit. */
export const aroundKinds = ['episode', 'target'] as const;

/** Whether a day lies after a day, a month or a year as a whole. */
function isAfter(day: string, part: string): boolean {
  return day.slice(0, part.length) > part;
}

function isSore(place: Episode['sore']['left']): boolean {
  return place !== null && place !== 'no';
}

/** The newest complaint that had begun by a day and was not over before it. */
function episodeOn(day: string, episodes: readonly Entry<Episode>[]): AroundVisit['episode'] {
  const found = episodes.findLast(({ at, body: { began, over } }) => {
    const from = began ?? at.slice(0, 10);
    const hasBegun = day.slice(0, from.length) >= from;
    return hasBegun && (over === null || !isAfter(day, over));
  });
  if (found === undefined) return null;
  const { began, sore } = found.body;
  return { began, bothSore: isSore(sore.left) && isSore(sore.right) };
}

/** Of each test and leg the target that was set last; one for both legs is one for each. */
function targetsOn(day: string, targets: readonly Entry<Target>[]): readonly Target[] {
  const byLeg = new Map<string, Target>();
  for (const { body } of targets.filter((one) => one.body.on <= day)) {
    const sides = body.side === 'both' ? (['left', 'right'] as const) : [body.side];
    for (const side of sides) byLeg.set(`${body.test} ${side}`, { ...body, side });
  }
  return [...byLeg.values()];
}

/** A visit with what is known around it; as it was where nothing is. */
export function withAround(visit: Visit, documents: readonly StoredDocument[]): Visit {
  const day = visit.begunAt.slice(0, 10);
  const ofKind = <Body>(kind: string): readonly Entry<Body>[] =>
    documents.filter((one) => one.kind === kind && one.about === visit.personId).map((one) => entryOf<Body>(one));
  const episode = episodeOn(day, ofKind<Episode>('episode'));
  const targets = targetsOn(day, ofKind<Target>('target'));
  return episode === null && targets.length === 0 ? visit : { ...visit, around: { episode, targets } };
}

/** Whether both tendons are sore: as it was answered on the visit, or as the complaint that it falls into tells. */
export function isBothSore({ sore, around }: Pick<Visit, 'sore' | 'around'>): boolean {
  const isBoth = [sore.left, sore.right].every((place) => place !== null && place !== 'no');
  return isBoth || around?.episode?.bothSore === true;
}

/** Whether an earlier visit belongs to the same complaint; every one does where its beginning is not known. */
export function isOfEpisode({ around }: Pick<Visit, 'around'>, earlier: Pick<Visit, 'begunAt'>): boolean {
  const began = around?.episode?.began ?? null;
  return began === null || earlier.begunAt.slice(0, began.length) >= began;
}
