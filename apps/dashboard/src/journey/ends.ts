import type { PullEnd, VisitSet } from '@surae/casebook';
import { END_REASON_SENTENCES, type EndReason } from '@surae/shared';

/** What a protocol of either test says of its end. */
interface Ending {
  readonly endConditions: readonly EndReason[];
  readonly parameters: { readonly painLimit: { readonly value: number | null } };
}

/** The ends that can be chosen for a protocol; all of them where the protocol is not known here. */
export function endsOf(protocol: Ending | undefined): readonly EndReason[] {
  return protocol?.endConditions ?? (Object.keys(END_REASON_SENTENCES) as EndReason[]);
}

/** Pain above which the protocol lets nobody go on, 0 to 10; null where it sets no limit or is not known. */
export function painLimitOf(protocol: Ending | undefined): number | null {
  return protocol?.parameters.painLimit.value ?? null;
}

/** Most pain that was noted while a set ran, 0 to 10; null where none was noted: that is not the same as no pain. */
export function notedPainPeak({ notes }: Pick<VisitSet, 'notes'>): number | null {
  const pains = (notes ?? []).filter(({ what }) => what === 'pain').map(({ value }) => value);
  return pains.length === 0 ? null : Math.max(...pains);
}

/** What was answered of an end, as it is kept; null is not asked, and where there was no pain it was not sharp either. */
export function endAnswered(reason: EndReason, answers: Omit<PullEnd, 'reason'>): PullEnd {
  return { reason, ...answers, painSharp: answers.painPeak === 0 ? false : (answers.painSharp ?? null) };
}

/** The end of a test in which something gave way: whatever else would be asked is not asked then. */
export function endedByPop(painPeak: number | null): PullEnd {
  return { reason: 'safety', painPeak, exertion: null, painSharp: null, happened: 'pop' };
}
