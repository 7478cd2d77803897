import {
  analysesOf,
  assessmentsOf,
  type DeclaredStudy,
  MOST_ANALYSES,
  type OpenedRater,
  requireOpened,
  type StudyResults,
  standingDecisions,
  studyResults,
  studyTrials,
} from '@surae/study';
import type { Io } from './io.ts';
import { softwareName } from './software.ts';
import type { StudyAct, StudyArguments } from './study-arguments.ts';
import { assessStudy, manifestOf } from './study-assess.ts';
import { followed, type StudyInputs } from './study-inputs.ts';

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
export async function readResults(
  { study: file, earlier }: Pick<StudyArguments, 'study' | 'earlier'>,
  asked: Extract<StudyAct, { act: 'results' }>,
  inputs: StudyInputs,
  io: Io,
): Promise<StudyResults> {
  const declared = await inputs.study(file);
  const line = await inputs.line(declared, earlier);
  const { manifest, decisions: listed, raters: files, most } = asked;
  const analyses = followed(() => analysesOf(declared.study, most ?? MOST_ANALYSES));
  const assessments = assessmentsOf(analyses);
  const items = await manifestOf(declared.study, manifest, inputs);
  const decisions = standingDecisions(await inputs.decisions(listed, declared));
  const raters = await openedRaters(asked, declared, inputs);
  const { trials } = await assessStudy(declared.study, items, assessments, io);
  return studyResults({
    declared,
    line,
    analyses,
    trials: studyTrials(assessments, trials),
    decisions,
    raters,
    command: { study: file, manifest, earlier, decisions: listed, raters: files, most },
    inputs: inputs.read,
    software: softwareName(),
  });
}
