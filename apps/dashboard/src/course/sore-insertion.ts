import type { Side } from '@surae/analysis';
import type { CasebookPerson } from '@surae/casebook';

type Place = CasebookPerson['episodes'][number]['body']['sore']['left'];

const sides = ['left', 'right'] as const satisfies readonly Side[];

function isInsertion(place: Place | undefined): boolean {
  return place === 'insertion' || place === 'both-places';
}

/** Legs whose tendon is sore at the heel bone, by a complaint that is not over or by the newest visit: either is enough to mind it. */
export function soreAtInsertion({ episodes, visits }: Pick<CasebookPerson, 'episodes' | 'visits'>): readonly Side[] {
  const open = episodes.filter(({ body }) => body.over === null);
  const newest = visits.at(-1)?.visit.sore;
  return sides.filter((side) => open.some(({ body }) => isInsertion(body.sore[side])) || isInsertion(newest?.[side]));
}
