import { dirname, isAbsolute, join } from 'node:path';
import {
  type Assessment,
  type Outcome,
  type ReadRecording,
  type StudyFile,
  type StudyTrial,
  studyItems,
  studyTrial,
  trialOutcomes,
  type WorkItem,
  withRecipes,
} from '@surae/study';
import { sha256 } from './fingerprints.ts';
import type { Io } from './io.ts';
import { readFault } from './read-fault.ts';
import { recipeReader } from './recipe-file.ts';
import { followed, type StudyInputs } from './study-inputs.ts';

/** The rows of a manifest that belong to a study. @throws {@link UsageError} where a file is named twice or none belongs to it */
export async function manifestOf(study: StudyFile, path: string, inputs: StudyInputs): Promise<WorkItem[]> {
  const bytes = await inputs.bytes(path);
  const place = (file: string): string => (isAbsolute(file) ? file : join(dirname(path), file));
  return withRecipes(
    followed(() => studyItems(study, path, bytes, place)),
    recipeReader(inputs.reader),
  );
}

async function readItem({ path, refusal }: WorkItem, io: Pick<Io, 'readFile'>): Promise<ReadRecording> {
  // one that is refused by its row is not read
  if (refusal !== undefined) return { fault: refusal };
  try {
    const bytes = await io.readFile(path);
    return { bytes, sha256: sha256(bytes) };
  } catch (error) {
    return { fault: readFault(error) };
  }
}

/** Assesses every recording under every assessment; each is read once, and only one is in memory at a time. */
export async function assessStudy(
  study: StudyFile,
  items: readonly WorkItem[],
  assessments: readonly Assessment[],
  io: Io,
): Promise<{ readonly trials: readonly StudyTrial[]; readonly outcomes: readonly Outcome[] }> {
  const trials: StudyTrial[] = [];
  const outcomes: Outcome[] = [];
  for (const [at, item] of items.entries()) {
    if (io.watched) io.writeError(`\r${at + 1} of ${items.length}  ${item.file}\u001b[K`);
    const read = await readItem(item, io);
    const { outcomes: found } = followed(() => trialOutcomes(study, assessments, item, read));
    trials.push(studyTrial(found));
    // what was found as declared
    outcomes.push(...found.slice(0, 1));
  }
  if (io.watched) io.writeError('\r\u001b[K');
  return { trials, outcomes };
}
