import {
  type ArmComparison,
  type AutomaticCount,
  agreementTable,
  analysesOf,
  assessmentsOf,
  blindAgreement,
  blindDefaults,
  choicesTable,
  comparisonTable,
  type DeclaredStudy,
  estimatesPicture,
  MOST_ANALYSES,
  type Multiverse,
  multiverse,
  multiverseTable,
  type OpenedRater,
  outcomesTable,
  type PairOfCounts,
  peoplePicture,
  peopleTable,
  type QualityRow,
  qualityRows,
  qualityTable,
  requireOpened,
  type StudyTable,
  settingsWith,
  standingDecisions,
} from '@surae/study';
import type { Outcome } from './assess-file.ts';
import type { Io } from './io.ts';
import type { StudyAct, StudyArguments } from './study-arguments.ts';
import { assessStudy, studyItems } from './study-assess.ts';
import { commandOf, madeLine, type StudyOrigin, type StudyOutput, studyOutputs } from './study-files.ts';
import { followed, type StudyInputs } from './study-inputs.ts';

/** What a study comes to. */
export interface StudyResults {
  readonly declared: DeclaredStudy;
  readonly origin: StudyOrigin;
  readonly rows: readonly QualityRow[];
  readonly comparison: ArmComparison;
  readonly multiverse: Multiverse;
  readonly agreement: readonly PairOfCounts[];
  readonly outputs: readonly StudyOutput[];
}

/** What the machine counted, for those who counted again. */
export function automaticCounts(outcomes: readonly Outcome[]): AutomaticCount[] {
  return outcomes.flatMap((outcome): AutomaticCount[] => {
    if (outcome.status === 'refused' || outcome.test !== 'heel-raise') return [];
    const { count, repetitions } = outcome.report;
    return [{ trial: outcome.item.file, count: count.valid, verdicts: repetitions.map(({ valid }) => valid) }];
  });
}

async function openedRaters(
  { raters }: Extract<StudyAct, { act: 'results' }>,
  declared: DeclaredStudy,
  inputs: StudyInputs,
): Promise<OpenedRater[]> {
  const opened: OpenedRater[] = [];
  for (const files of raters) {
    const key = await inputs.key(files.key, declared);
    opened.push({ key, book: await inputs.book(files, key) });
  }
  followed(() => requireOpened(opened));
  return opened;
}

/** Everything from the study file and the manifest to the files of the result, without writing any. */
export async function studyResults(
  args: StudyArguments,
  asked: Extract<StudyAct, { act: 'results' }>,
  inputs: StudyInputs,
  io: Io,
): Promise<StudyResults> {
  const declared = await inputs.study(args.study);
  const { study, hash } = declared;
  const line = await inputs.line(declared, args.earlier);
  const analyses = followed(() => analysesOf(study, asked.most ?? MOST_ANALYSES));
  const assessments = assessmentsOf(analyses);
  const items = studyItems(study, asked.manifest, await inputs.bytes(asked.manifest));
  const decisions = standingDecisions(await inputs.decisions(asked.decisions, declared));
  const raters = await openedRaters(asked, declared, inputs);
  const trials = await assessStudy(study, items, assessments, io);
  const own = trials.of.get(assessments[0]!.key)!;
  const rows = qualityRows(study, own, decisions);
  const found = multiverse(study, analyses, trials.of, decisions);
  const { comparison } = found.declared;
  const agreement = blindAgreement(raters, automaticCounts(trials.outcomes), blindDefaults);
  const origin: StudyOrigin = {
    command: commandOf(args),
    study: hash,
    amendments: line?.amendments ?? null,
    inputs: inputs.read,
    recordings: own.map(({ trial, sha256 }) => ({ file: trial, sha256 })),
    settings: settingsWith(study),
    assessed: assessments.map(({ key }) => ({
      as: key,
      settings_hashes: [...new Set(trials.of.get(key)!.flatMap((one) => one.settingsHash ?? []))].sort(),
    })),
  };
  const tables: StudyTable[] = [
    qualityTable(study, rows),
    outcomesTable(study, assessments, trials.of),
    peopleTable(study, comparison),
    comparisonTable(study, comparison),
    multiverseTable(study, found),
    choicesTable(study, found),
    ...(raters.length === 0 ? [] : [agreementTable(agreement)]),
  ];
  const made = madeLine(origin);
  const pictures = [
    { name: 'estimates.svg', text: estimatesPicture(study, found, made) },
    { name: 'people.svg', text: peoplePicture(study, comparison, made) },
  ];
  const outputs = studyOutputs(tables, pictures, origin);
  return { declared, origin, rows, comparison, multiverse: found, agreement, outputs };
}
