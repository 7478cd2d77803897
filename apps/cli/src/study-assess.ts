import { type Assessment, isOfStudy, type StudyFile, type TrialFacts } from '@surae/study';
import { assessFile, type Outcome } from './assess-file.ts';
import type { Io } from './io.ts';
import { manifestItems } from './manifest.ts';
import { studyItem, studySettings } from './study-settings.ts';
import { cellsOf, trialFacts } from './study-trials.ts';
import { UsageError } from './usage-error.ts';
import { NOTHING_GIVEN, type WorkItem } from './work-list.ts';

/** The recordings of a study under every assessment, the declared one first. */
export interface StudyTrials {
  readonly items: readonly WorkItem[];
  /** trials by the key of the assessment */
  readonly of: ReadonlyMap<string, readonly TrialFacts[]>;
  /** what each came to as declared */
  readonly outcomes: readonly Outcome[];
}

/** The rows of a manifest that belong to a study. @throws {@link UsageError} where a file is named twice or none belongs to it */
export function studyItems(study: StudyFile, path: string, bytes: Uint8Array): WorkItem[] {
  const items = manifestItems(path, bytes, NOTHING_GIVEN)
    .filter((item) => isOfStudy(study, { cells: cellsOf({ item }) }))
    .map((item) => studyItem(study, item));
  const twice = items.find(({ file }, at) => items.findIndex((one) => one.file === file) < at);
  if (twice !== undefined) throw new UsageError(`${path}: expected every file once, got "${twice.file}" twice`);
  if (items.length === 0) throw new UsageError(`${path}: no row has what the study says of its trials`);
  return items;
}

/** Assesses every recording under every assessment; each is read once, and only one is in memory at a time. */
export async function assessStudy(
  study: StudyFile,
  items: readonly WorkItem[],
  assessments: readonly Assessment[],
  io: Io,
): Promise<StudyTrials> {
  const settings = assessments.map((one) => ({ key: one.key, given: studySettings(study, one) }));
  const found = new Map<string, TrialFacts[]>(assessments.map(({ key }) => [key, []]));
  const seen = new Map<string, string>();
  const outcomes: Outcome[] = [];
  for (const [at, item] of items.entries()) {
    if (io.watched) io.writeError(`\r${at + 1} of ${items.length}  ${item.file}\u001b[K`);
    let bytes: Promise<Uint8Array> | undefined;
    const once = { readFile: (path: string) => (bytes ??= io.readFile(path)) };
    for (const [place, { key, given }] of settings.entries()) {
      const outcome = await assessFile(item, given, once);
      const same = outcome.sha256 === null ? undefined : seen.get(outcome.sha256);
      found.get(key)!.push(trialFacts(outcome, same ?? null));
      if (place === 0) outcomes.push(outcome);
    }
    const hash = outcomes.at(-1)!.sha256;
    if (hash !== null && !seen.has(hash)) seen.set(hash, item.file);
  }
  if (io.watched) io.writeError('\r\u001b[K');
  return { items, of: found, outcomes };
}
