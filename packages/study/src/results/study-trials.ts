import type { Recording } from '@surae/records';
import type { AutomaticCount } from '../blind/told-counts.ts';
import type { StudyFile } from '../declared/study-document.ts';
import { assessListed, type Outcome } from '../listed/assess-listed.ts';
import { listedFacts } from '../listed/listed-facts.ts';
import { listedSource } from '../listed/listed-source.ts';
import { type Refused, refused } from '../listed/refused.ts';
import { recordingOf } from '../listed/source-of.ts';
import type { WorkItem } from '../listed/work-list.ts';
import type { Assessment } from '../multiverse/analyses.ts';
import type { TrialFacts } from '../quality/trial-facts.ts';
import { studySettings } from './study-items.ts';

/** What is read of a recording: its bytes with their hash, or why they cannot be had. */
export type ReadRecording =
  | { readonly bytes: Uint8Array; readonly sha256: string }
  /** in words, as they follow the name of the file */
  | { readonly fault: string };

/** One recording under every assessment: what a study keeps of it. Plain JSON. */
export interface StudyTrial {
  /** in the order of the assessments; empty for none */
  readonly facts: readonly TrialFacts[];
  /** what the machine counted as declared; null where it counted nothing */
  readonly automatic: AutomaticCount | null;
}

/** The trials of a study under every assessment, in the order of its manifest. */
export interface StudyTrials {
  /** by the key of the assessment */
  readonly of: ReadonlyMap<string, readonly TrialFacts[]>;
  readonly automatic: readonly AutomaticCount[];
}

/** What one recording came to. */
export interface TrialOutcomes {
  /** under each assessment, in their order */
  readonly outcomes: readonly Outcome[];
  /** as it was read; null where it could not be */
  readonly recording: Recording | null;
}

/** The recording of a file, read once for all assessments; null where its refusal is to be found by reading it again. */
function readOnce({ file }: WorkItem, bytes: Uint8Array): Recording | null {
  try {
    return recordingOf(bytes, file);
  } catch {
    return null;
  }
}

/** What one listed recording comes to under each assessment, in their order. Whatever goes wrong refuses it alone. */
export function trialOutcomes(
  study: StudyFile,
  assessments: readonly Assessment[],
  item: WorkItem,
  read: ReadRecording,
): TrialOutcomes {
  const { refusal, file } = item;
  const none = (one: Refused): TrialOutcomes => ({ outcomes: assessments.map(() => one), recording: null });
  if (refusal !== undefined) return none(refused(item, refusal, null));
  if ('fault' in read) return none(refused(item, `${file}: ${read.fault}`, null));
  const found = listedSource(item, read.bytes, read.sha256);
  if ('reason' in found) return none(found);
  const { item: told, source } = found;
  const recording = source instanceof Uint8Array ? readOnce(told, source) : source;
  return {
    outcomes: assessments.map((one) => assessListed(told, recording ?? source, studySettings(study, one))),
    recording,
  };
}

function automaticOf(outcome: Outcome | undefined): AutomaticCount | null {
  if (outcome === undefined || outcome.status === 'refused' || outcome.test !== 'heel-raise') return null;
  const { report, item, beginS } = outcome;
  return {
    trial: item.file,
    count: report.count.valid,
    verdicts: report.repetitions.map(({ valid }) => valid),
    topsS: report.repetitions.map(({ topS }) => topS - beginS),
  };
}

/** What a study keeps of a recording, from its outcomes under each assessment, the declared one first. */
export function studyTrial(outcomes: readonly Outcome[]): StudyTrial {
  return { facts: outcomes.map(listedFacts), automatic: automaticOf(outcomes[0]) };
}

/** All trials of a study together: only here it shows that two have the same bytes. */
export function studyTrials(assessments: readonly Assessment[], trials: readonly StudyTrial[]): StudyTrials {
  const first = new Map<string, string>();
  const sameAs = trials.map(({ facts: [own] }) => {
    if (own === undefined || own.sha256 === null) return null;
    const before = first.get(own.sha256);
    if (before === undefined) first.set(own.sha256, own.trial);
    return before ?? null;
  });
  const of = new Map(
    assessments.map(({ key }, place) => [
      key,
      trials.map(({ facts }, at) => ({ ...facts[place]!, sameAs: sameAs[at]! })),
    ]),
  );
  return { of, automatic: trials.flatMap(({ automatic }) => automatic ?? []) };
}
