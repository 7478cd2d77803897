import { readRecording } from '@surae/records';
import { blindTrials, choosePlacement, listedSource } from '@surae/study';
import { type ItemTrace, itemTrace } from './item-trace.ts';
import type { RecountBase } from './recount-desk.ts';
import type { StudySession } from './study-session.ts';

async function traceOf(session: StudySession, sha256: string): Promise<ItemTrace> {
  const bytes = await session.bytes(sha256);
  if (bytes === undefined) throw new Error('the recording is not there any more');
  const at = session.trials.findIndex((one) => one?.facts[0]?.sha256 === sha256);
  // read as it was for its report: by the recipe that its row names, where it names one
  const listed = listedSource(session.content.items[at]!, bytes, sha256);
  if (!('source' in listed)) throw new Error('the recording cannot be read any more');
  const { about } = listed.item;
  const recording =
    listed.source instanceof Uint8Array ? readRecording(listed.source, { file: 'recording' }) : listed.source;
  const choice = choosePlacement(about.placement, recording);
  const placement = 'refusal' in choice ? null : choice.placement;
  const metres = (lengthMm: number | undefined): number | undefined =>
    lengthMm === undefined ? undefined : lengthMm / 1000;
  return itemTrace(recording, placement, metres(about.heelLeverMm) ?? null, metres(about.stringRestMm));
}

/** What counting again stands on, out of a study that is looked at. */
export function recountBase(session: StudySession): RecountBase {
  const { declared } = session.content;
  return {
    declared,
    trials: () => blindTrials(declared, session.rows),
    kept: (rater) => {
      const key = session.keyOf(rater);
      return key === undefined ? null : { key, book: session.book(key) };
    },
    keep: async (key, entries) => {
      await session.takeKey(key);
      if (entries.length > 0) {
        await session.count(
          key,
          entries.map(({ says }) => says),
        );
      }
    },
    trace: (sha256) => traceOf(session, sha256),
    automatic: () => session.trials.flatMap((one) => one?.automatic ?? []),
  };
}
