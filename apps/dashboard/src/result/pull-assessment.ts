import type { PullReport, PullTestRequest, Trace } from '@surae/analysis';
import { calibrationTold, type Person, type PullSet, type Visit } from '@surae/casebook';
import { decodeBlocks, encodeBlock, RecordError, type Recording, recordingFromStream } from '@surae/records';
import { REFUSAL_SENTENCES } from '@surae/shared';
import type { StoredBytes } from '@surae/storage';
import { pullProtocolOf } from '../live/pull-choices.ts';
import { AssessmentError } from './assessment.ts';
import { countedForces } from './counted-forces.ts';

/** Legs of which the end is known and that have no report yet. */
export function pullsToAssess({ pulls = [] }: Pick<Visit, 'pulls'>): PullSet[] {
  return pulls.filter(
    (set) =>
      !set.setAside && set.end !== null && set.report === null && set.trials.length > 0 && set.stoppedAt !== null,
  );
}

/** What an assessment of the trials of a leg is asked: what is known of person and trials, and nothing that is not. */
export function pullRequest(
  { choice, trials, end }: PullSet,
  { bodyMassKg }: Pick<Person, 'bodyMassKg'>,
): PullTestRequest {
  const protocol = pullProtocolOf(choice.protocolId);
  if (protocol === undefined) throw new AssessmentError('no-protocol', `There is no protocol ${choice.protocolId}.`);
  const liftedAtS = trials.flatMap((trial) => trial.liftedAtS);
  return {
    placement: choice.placement,
    side: choice.side,
    protocol,
    subject: {
      ...(bodyMassKg === null ? {} : { bodyMassKg }),
      ...(choice.forefootLeverM === null ? {} : { forefootLeverM: choice.forefootLeverM }),
      ...calibrationTold(choice.setUp),
    },
    context: {
      ...(end === null ? {} : { endReason: end.reason }),
      // warm-up pushes are made before, and none of them is recorded
      warmUpPushes: 0,
      // nobody is known to have looked where nothing was marked
      ...(liftedAtS.length === 0 ? {} : { liftedAtS }),
    },
  };
}

/**
 * The trials of a leg as one recording, in their order and at their own times: nothing was recorded in the rests between them.
 * A block that was cut off at the end of a stream is left out.
 */
export function pullRecording(
  { choice, trials }: PullSet,
  bytesOf: (bytesId: string) => StoredBytes | undefined,
): Recording {
  const streams = trials.map(({ bytesId }) => {
    const bytes = bytesOf(bytesId);
    if (bytes === undefined) throw new AssessmentError('bytes-missing', 'The bytes of a trial are not in the store.');
    return bytes;
  });
  try {
    const pieces = streams.flatMap((bytes) => decodeBlocks(bytes.pieces).map(encodeBlock));
    const place = choice.placement === 'platform' ? { placement: choice.placement } : {};
    return recordingFromStream(pieces, { side: choice.side, ...place });
  } catch (error) {
    if (!(error instanceof RecordError)) throw error;
    throw new AssessmentError('unreadable', REFUSAL_SENTENCES[error.code].text, { cause: error });
  }
}

/** Bytes of every trial of a leg, read from the store. */
export async function pullBytes(
  { trials }: PullSet,
  read: (bytesId: string) => Promise<StoredBytes | undefined>,
): Promise<(bytesId: string) => StoredBytes | undefined> {
  const found = await Promise.all(trials.map(async ({ bytesId }) => [bytesId, await read(bytesId)] as const));
  const byId = new Map(found);
  return (bytesId) => byId.get(bytesId);
}

/** The report of the trials of a leg so far, or of all of them. */
export async function assessPullSet(
  set: PullSet,
  person: Pick<Person, 'bodyMassKg'>,
  read: (bytesId: string) => Promise<StoredBytes | undefined>,
  pulls: (trace: Trace, request: PullTestRequest) => Promise<PullReport>,
): Promise<PullReport> {
  try {
    const { groups } = countedForces(pullRecording(set, await pullBytes(set, read)), set.choice);
    return await pulls({ groups }, pullRequest(set, person));
  } catch (error) {
    if (error instanceof AssessmentError) throw error;
    throw new AssessmentError('unexpected', error instanceof Error ? error.message : String(error), { cause: error });
  }
}
