import type { AssessmentRequest } from '@surae/analysis';
import type { FaultMark, Person } from '@surae/casebook';
import type { SetPlan } from './set-plan.ts';

/** What is asked about a set while it runs; what was not measured of the person is left out. */
export function setRequest(
  { choice, protocol, practice }: Pick<SetPlan, 'choice' | 'protocol' | 'practice'>,
  { bodyMassKg, heelLeverM }: Pick<Person, 'bodyMassKg' | 'heelLeverM'>,
  marks: readonly FaultMark[],
): AssessmentRequest {
  const { stringRestLengthM } = choice;
  return {
    placement: choice.placement,
    side: choice.side,
    protocol,
    subject: {
      ...(bodyMassKg === null ? {} : { bodyMassKg }),
      ...(heelLeverM === null ? {} : { heelLeverM }),
      ...(stringRestLengthM === undefined ? {} : { stringRestLengthM }),
    },
    context: { marks, ...(practice === undefined ? {} : { familiarisation: practice }) },
  };
}
