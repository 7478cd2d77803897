import { defaultSettings, type HandVerdict, type Report, recounted, type Verdict } from '@surae/analysis';
import type { CriterionId } from '@surae/shared';
import { judgedProtocol } from './compare/judged-protocol.ts';
import { isJudgedByHand } from './judged-by-hand.ts';
import type { VerdictByHand } from './kinds/person-kinds.ts';
import { type VerdictLeft, verdictPlace } from './verdict-place.ts';
import type { Visit, VisitSet } from './visit.ts';

const VERDICTS: Readonly<Record<VerdictByHand['verdict'], Verdict>> = {
  yes: 'yes',
  no: 'no',
  'cannot-tell': 'cannot_tell',
};

/** The verdict as the analysis writes it. */
export function handVerdict({ repetition, criterion, verdict }: VerdictByHand): HandVerdict {
  return { repetition, criterion: criterion as CriterionId | null, verdict: VERDICTS[verdict] };
}

/** The report of a set as the final pass made it, whatever a person saw. */
export function automaticReport(set: Pick<VisitSet, 'report' | 'automatic'>): Report | null {
  return set.automatic ?? set.report;
}

/**
 * A set as it counts: with what a person saw laid over the automatic verdicts, which stay beside it. The end rule is applied
 * again; what was attempted stays. A verdict about another movement than the one that has its number now is not laid on and stands
 * apart, see `verdictPlace`.
 *
 * @param set - as its documents tell it [-]
 * @returns the set itself where nobody judged by hand, where there is no report yet, or where this version does not know the protocol [-]
 * Source: ours
 */
export function acceptedSet(set: VisitSet): VisitSet {
  const automatic = automaticReport(set);
  const { byHand = [], end } = set;
  if (automatic === null || byHand.length === 0) return set;
  const protocol = judgedProtocol(automatic);
  if (protocol === undefined) return set;
  const left = byHand.flatMap((verdict): VerdictLeft[] => {
    const why = verdictPlace(verdict.body, automatic.repetitions);
    return why === null ? [] : [{ verdict, why }];
  });
  if (left.length > 0) {
    const laid = byHand.filter((one) => left.every(({ verdict }) => verdict !== one));
    return acceptedSet({ ...set, byHand: laid, notLaidOn: [...(set.notLaidOn ?? []), ...left] });
  }
  const verdicts = byHand.map(({ body }) => handVerdict(body));
  const settings = defaultSettings().judging;
  const report = recounted(automatic, verdicts, { protocol, exertion: end?.exertion ?? null, settings });
  return { ...set, report, automatic };
}

/** A visit of which every set counts as it was accepted; what shows or compares a result starts from this one. */
export function acceptedVisit(visit: Visit): Visit {
  return isJudgedByHand(visit) ? { ...visit, sets: visit.sets.map(acceptedSet) } : visit;
}

/** On how many repetitions a person and the automatic verdicts agree. */
export interface VerdictAgreement {
  readonly agreed: number;
  readonly of: number;
}

/** Agreement over all repetitions of a set: those that a person left are agreed with. Null where nobody judged by hand. */
export function verdictAgreement(set: VisitSet): VerdictAgreement | null {
  const { report, automatic } = set;
  if (report === null || automatic === undefined) return null;
  const agreed = report.repetitions.filter(({ valid }, at) => valid === automatic.repetitions[at]?.valid).length;
  return { agreed, of: report.repetitions.length };
}
