import { DECISIONS, type DeclaredStudy, decide, entryLine, readDecisions } from '@surae/study';
import { appendLines } from './append-lines.ts';
import { sha256 } from './fingerprints.ts';
import type { Io } from './io.ts';
import type { StudyAct } from './study-arguments.ts';
import { manifestOf } from './study-assess.ts';
import { followed, type StudyInputs } from './study-inputs.ts';
import { UsageError } from './usage-error.ts';

async function hashAt(path: string, io: Io): Promise<string | null> {
  try {
    return sha256(await io.readFile(path));
  } catch {
    // a recording that cannot be read can be decided about: its row says that it is refused
    return null;
  }
}

/** Puts one decision about a trial at the end of the file of decisions. */
export async function decideAct(
  asked: Extract<StudyAct, { act: 'decide' }>,
  declared: DeclaredStudy,
  inputs: StudyInputs,
  io: Io,
): Promise<string[]> {
  const [word, reason] = asked.decision.split(':', 2) as [string, string | undefined];
  const decision = DECISIONS.find((known) => known === word);
  if (decision === undefined || (decision === 'exclude') !== (reason !== undefined)) {
    throw new UsageError(`--decide ${asked.trial}=${asked.decision}: expected include, exclude:REASON or open`);
  }
  const items = await manifestOf(declared.study, asked.manifest, inputs);
  const item = items.find(({ file }) => file === asked.trial);
  const text = io.exists(asked.decisions) ? new TextDecoder().decode(await io.readFile(asked.decisions)) : '';
  const entries = followed(() => readDecisions(text, declared, asked.decisions));
  const { by, at } = asked.who;
  const says = {
    trial: asked.trial,
    sha256: item === undefined ? null : await hashAt(item.path, io),
    decision,
    reason: reason ?? null,
    by,
    at,
    why: asked.why,
  };
  const trials = items.map(({ file }) => file);
  const entry = followed(() => decide(entries, declared, trials, says));
  appendLines(asked.decisions, entryLine(entry), io);
  return [`${asked.decisions}: ${asked.trial} ${asked.decision}, by ${by} (entry ${entry.entry})`];
}
