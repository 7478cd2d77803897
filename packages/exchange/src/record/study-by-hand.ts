import { type VisitSet, verdictAgreement } from '@surae/casebook';
import type { StudyByHand } from '../study.ts';

/** What a person judged in an accepted set, as it leaves; nothing where nobody did. */
export function studyByHand(set: VisitSet): { readonly byHand?: StudyByHand } {
  const { automatic, byHand = [] } = set;
  const agreement = verdictAgreement(set);
  if (automatic === undefined || agreement === null) return {};
  const last = new Map(byHand.map(({ body }) => [body.repetition, body]));
  const verdicts = [...last.values()]
    .sort((a, b) => a.repetition - b.repetition)
    .map(({ repetition, verdict, criterion, why }) => {
      const found = automatic.repetitions[repetition - 1]?.valid ?? null;
      return { repetition, automatic: found, verdict, criterion, why };
    });
  return { byHand: { count: automatic.count, endAt: automatic.end.atRepetition, ...agreement, verdicts } };
}

/** Repetitions as rows of a table, each with what a person saw in it. */
export function repetitionRows(
  repetitions: readonly { readonly index: number }[],
  byHand: StudyByHand | undefined,
): object[] {
  const hands = new Map((byHand?.verdicts ?? []).map((one) => [one.repetition, one]));
  return repetitions.map((one) => ({ ...one, byHand: hands.get(one.index) ?? null }));
}
