import type { AssessmentRequest, PracticeRaise, Report, Trace } from '@surae/analysis';
import type { Person, Visit, VisitSet } from '@surae/casebook';
import { RecordError, type Recording, recordingFromStream } from '@surae/records';
import { PROTOCOLS, type Protocol, REFUSAL_SENTENCES } from '@surae/shared';
import type { StoredBytes } from '@surae/storage';
import { countedForces } from './counted-forces.ts';

/** Why a set has no report, in a code that has words. */
export type AssessmentProblem = 'bytes-missing' | 'unreadable' | 'no-protocol' | 'unexpected';

/** A set that could not be assessed; what was recorded stays where it is. */
export class AssessmentError extends Error {
  override readonly name = 'AssessmentError';
  readonly code: AssessmentProblem;

  constructor(code: AssessmentProblem, message: string, options?: ErrorOptions) {
    super(message, options);
    this.code = code;
  }
}

/** Sets that were stopped, whose end is known, and that have no report yet. */
export function setsToAssess(visit: Visit): VisitSet[] {
  return visit.sets.filter((set) => !set.setAside && set.stoppedAt !== null && set.end !== null && set.report === null);
}

/** The protocol by its id; undefined where this version does not know it. */
export function protocolOf(id: string): Protocol | undefined {
  return PROTOCOLS.find((protocol) => protocol.id === id);
}

/**
 * What an assessment of a set is asked: what is known about person and set, and nothing that is not.
 *
 * @param protocol - the one that was chosen for the set, when left out
 */
export function assessmentRequest(
  { choice, end, marks }: VisitSet,
  person: Person,
  protocol: Protocol | undefined = protocolOf(choice.protocolId),
): AssessmentRequest {
  if (protocol === undefined) throw new AssessmentError('no-protocol', `There is no protocol ${choice.protocolId}.`);
  return {
    placement: choice.placement,
    side: choice.side,
    protocol,
    subject: {
      ...(person.bodyMassKg === null ? {} : { bodyMassKg: person.bodyMassKg }),
      ...(person.heelLeverM === null ? {} : { heelLeverM: person.heelLeverM }),
      ...(choice.stringRestLengthM === undefined ? {} : { stringRestLengthM: choice.stringRestLengthM }),
    },
    context: {
      ...(end === null ? {} : { endReason: end.reason }),
      ...(end?.exertion == null ? {} : { exertion: end.exertion }),
      ...(end?.painPeak == null ? {} : { painPeak: end.painPeak }),
      ...(marks.length === 0 ? {} : { marks }),
    },
  };
}

/** The recording of a set from its stored bytes. */
export function recordingOf({ choice }: Pick<VisitSet, 'choice'>, bytes: StoredBytes | undefined): Recording {
  if (bytes === undefined) throw new AssessmentError('bytes-missing', 'The bytes of the set are not in the store.');
  try {
    return recordingFromStream(bytes.pieces, { side: choice.side, placement: choice.placement });
  } catch (error) {
    if (!(error instanceof RecordError)) throw error;
    throw new AssessmentError('unreadable', REFUSAL_SENTENCES[error.code].text, { cause: error });
  }
}

/** A pass over a whole recording. */
export type FinalPass = (trace: Trace, request: AssessmentRequest) => Promise<Report>;

/** What a set is counted by: its own protocol where none is given, and practice raises where there are any. */
export interface CountedBy {
  readonly protocol?: Protocol;
  readonly practice?: readonly PracticeRaise[];
}

/** The report of a set by the final pass over its whole recording. */
export async function assessSet(
  set: VisitSet,
  person: Person,
  bytes: StoredBytes | undefined,
  final: FinalPass,
  { protocol, practice = [] }: CountedBy = {},
): Promise<Report> {
  try {
    // the raw bytes are large and of no use to the final pass
    const { groups } = countedForces(recordingOf(set, bytes), set.choice);
    const request = assessmentRequest(set, person, protocol);
    if (practice.length === 0) return await final({ groups }, request);
    return await final({ groups }, { ...request, context: { ...request.context, familiarisation: practice } });
  } catch (error) {
    if (error instanceof AssessmentError) throw error;
    throw new AssessmentError('unexpected', error instanceof Error ? error.message : String(error), { cause: error });
  }
}
