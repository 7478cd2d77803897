import type { PracticeRaise, Side } from '@surae/analysis';
import type { StoredDocument } from '@surae/storage';
import type { SetChoice } from './set-choice.ts';

/** Raises for practice before a set: a recording of its own, from which the reference height is taken. */
export interface PracticeSet {
  /** id of the document that began it */
  readonly id: string;
  readonly choice: SetChoice;
  /** id of the stream of raw bytes */
  readonly bytesId: string;
  readonly begunAt: string;
  /** named after the other leg since it was recorded; absent or false where it never was, or was named back */
  readonly swapped?: boolean;
  /** null while it runs, and for ever when the page was closed */
  readonly stoppedAt: string | null;
  /** heights as they were found when it stopped; empty where they could not be told */
  readonly raises: readonly PracticeRaise[];
}

/** What can happen in the practice before a set. */
export type PracticeEvent =
  | { readonly kind: 'practice-begun'; readonly choice: SetChoice; readonly bytesId: string }
  | { readonly kind: 'practice-stopped'; readonly practiceId: string; readonly raises: readonly PracticeRaise[] };

/** The kinds of documents that practice is made of. */
export const practiceEventKinds = [
  'practice-begun',
  'practice-stopped',
] as const satisfies readonly PracticeEvent['kind'][];

/** Practice after one more event; an event about one that is not there changes nothing. */
export function afterPractice(
  practice: readonly PracticeSet[] | undefined,
  event: PracticeEvent,
  { id, at }: Pick<StoredDocument, 'id' | 'at'>,
): readonly PracticeSet[] {
  if (event.kind === 'practice-begun') {
    const { choice, bytesId } = event;
    return [...(practice ?? []), { id, choice, bytesId, begunAt: at, stoppedAt: null, raises: [] }];
  }
  return (practice ?? []).map((one) =>
    one.id === event.practiceId ? { ...one, stoppedAt: at, raises: event.raises } : one,
  );
}

/** raises of which the mean is taken, at least. Ours: the protocols take the best two */
const raisesLeast = 2;

/**
 * The practice whose heights a set of a leg is held against: the last one of the leg that was stopped, with the sensor at the
 * same place of the same source, before the set; undefined where there is none of which the heights are known. A string whose
 * length was told, or told otherwise, gives other heights of the same raises: such practice is none.
 */
export function practiceFor(
  { practice = [] }: { readonly practice?: readonly PracticeSet[] },
  {
    side,
    placement,
    origin,
    stringRestLengthM,
  }: { readonly side: Side } & Pick<SetChoice, 'placement' | 'origin' | 'stringRestLengthM'>,
  beforeIso?: string,
): PracticeSet | undefined {
  return practice.findLast(
    ({ choice, stoppedAt, raises }) =>
      choice.side === side &&
      choice.placement === placement &&
      choice.origin === origin &&
      choice.stringRestLengthM === stringRestLengthM &&
      stoppedAt !== null &&
      raises.length >= raisesLeast &&
      (beforeIso === undefined || Date.parse(stoppedAt) <= Date.parse(beforeIso)),
  );
}

/** The last practice of a leg where it was begun and never stopped: the page was closed or left during it; else undefined. */
export function cutOffPractice(
  { practice = [] }: { readonly practice?: readonly PracticeSet[] },
  side: Side,
): PracticeSet | undefined {
  const last = practice.findLast(({ choice }) => choice.side === side);
  return last?.stoppedAt === null ? last : undefined;
}
