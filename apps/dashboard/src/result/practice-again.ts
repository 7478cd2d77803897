import type { PracticeRaise, Report } from '@surae/analysis';
import { type Person, practiceFor, type Visit, type VisitSet } from '@surae/casebook';
import { WARM_UP } from '@surae/shared';
import type { StoredBytes } from '@surae/storage';
import { assessmentRequest, type FinalPass, recordingOf } from './assessment.ts';
import { countedForces } from './counted-forces.ts';

/** Practice raises that are asked for, and that a reference is taken from. */
export const practiceMost = WARM_UP.practiceRaises.value;

/** Heights of the first raises of a practice, as far as they are known. */
export function practiceHeights({ repetitions }: Pick<Report, 'repetitions'>): readonly PracticeRaise[] {
  return repetitions.slice(0, practiceMost).flatMap(({ heightM, heightUM, riseM, riseUM }) => {
    const height = heightM ?? riseM;
    const u = heightM === null ? riseUM : heightUM;
    return height === null || u === null ? [] : [{ heightM: height, heightUM: u }];
  });
}

/**
 * Heights of the practice before a set, assessed again from its bytes; none where there was no practice. One that cannot be
 * read any more counts as it was found when it was recorded.
 */
export async function practiceAgain(
  visit: Visit,
  set: VisitSet,
  person: Person,
  read: (bytesId: string) => Promise<StoredBytes | undefined>,
  final: FinalPass,
): Promise<readonly PracticeRaise[]> {
  const practice = practiceFor(visit, set.choice, set.begunAt);
  if (practice === undefined) return [];
  try {
    const { choice, bytesId } = practice;
    const { groups } = countedForces(recordingOf({ choice }, await read(bytesId)), choice);
    // marks and the end are of the set, and not of its practice
    const request = { ...assessmentRequest({ ...set, choice }, person), context: {} };
    const again = practiceHeights(await final({ groups }, request));
    return again.length === 0 ? practice.raises : again;
  } catch {
    return practice.raises;
  }
}
