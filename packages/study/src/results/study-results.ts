import { agreementTable } from '../blind/agreement-table.ts';
import { agreementOfPairs, type PairOfCounts } from '../blind/blind-agreement.ts';
import { blindDefaults } from '../blind/blind-defaults.ts';
import { pairedLists } from '../blind/paired-lists.ts';
import type { OpenedRater } from '../blind/told-counts.ts';
import type { ArmComparison } from '../compare/compare-arms.ts';
import { comparisonTable, peopleTable } from '../compare/comparison-table.ts';
import type { StudyLine } from '../declared/amendments.ts';
import type { DeclaredStudy } from '../declared/parse-study.ts';
import { settingsWith } from '../declared/study-protocol.ts';
import { type Analysis, type Assessment, assessmentsOf } from '../multiverse/analyses.ts';
import { type Multiverse, multiverse } from '../multiverse/multiverse.ts';
import { choicesTable, multiverseTable, outcomesTable } from '../multiverse/multiverse-tables.ts';
import { type OutcomeShift, outcomeShifts, shiftsTable } from '../multiverse/outcome-shifts.ts';
import { agreementPicture } from '../picture/agreement-picture.ts';
import { estimatesPicture } from '../picture/estimates-picture.ts';
import { peoplePicture } from '../picture/people-picture.ts';
import { shiftsPicture } from '../picture/shifts-picture.ts';
import type { Decision } from '../quality/decisions.ts';
import { type QualityRow, qualityRows } from '../quality/quality-rows.ts';
import { qualityTable } from '../quality/quality-table.ts';
import type { StudyTable } from '../study-table.ts';
import {
  commandOf,
  madeLine,
  type ReadInput,
  type ResultCommand,
  type StudyOrigin,
  type StudyOutput,
  studyOutputs,
} from './study-files.ts';
import type { StudyTrials } from './study-trials.ts';

/** All that a result is made of. */
export interface StudyMaking {
  readonly declared: DeclaredStudy;
  /** the study with the versions before it; undefined where it amends one that is not at hand */
  readonly line: StudyLine | undefined;
  readonly analyses: readonly Analysis[];
  readonly trials: StudyTrials;
  readonly decisions: ReadonlyMap<string, Decision>;
  readonly raters: readonly OpenedRater[];
  readonly command: ResultCommand;
  /** files that were read, in order */
  readonly inputs: readonly ReadInput[];
  /** name and version of what makes it */
  readonly software: string;
}

/** What a study comes to. */
export interface StudyResults {
  readonly declared: DeclaredStudy;
  readonly origin: StudyOrigin;
  readonly rows: readonly QualityRow[];
  readonly comparison: ArmComparison;
  readonly multiverse: Multiverse;
  /** how the primary outcome of all trials moves with what they are judged by, the declared way first */
  readonly shifts: readonly OutcomeShift[];
  readonly agreement: readonly PairOfCounts[];
  readonly outputs: readonly StudyOutput[];
}

function originOf(making: StudyMaking, assessments: readonly Assessment[]): StudyOrigin {
  const { declared, line, trials, inputs, software, command } = making;
  return {
    software,
    command: commandOf(command),
    study: declared.hash,
    amendments: line?.amendments ?? null,
    inputs,
    recordings: trials.of.get(assessments[0]!.key)!.map(({ trial, sha256 }) => ({ file: trial, sha256 })),
    settings: settingsWith(declared.study),
    assessed: assessments.map(({ key }) => ({
      as: key,
      settings_hashes: [...new Set(trials.of.get(key)!.flatMap((one) => one.settingsHash ?? []))].sort(),
    })),
  };
}

/** Everything from assessed trials to the files of the result, the same bytes wherever they are made. */
export function studyResults(making: StudyMaking): StudyResults {
  const { declared, analyses, trials, decisions, raters } = making;
  const { study } = declared;
  const assessments = assessmentsOf(analyses);
  const rows = qualityRows(study, trials.of.get(assessments[0]!.key)!, decisions);
  const found = multiverse(study, analyses, trials.of, decisions);
  const { comparison } = found.declared;
  const lists = pairedLists(raters, trials.automatic, blindDefaults);
  const agreement = agreementOfPairs(lists, blindDefaults);
  const shifts = outcomeShifts(study, assessments, trials.of);
  const origin = originOf(making, assessments);
  const tables: StudyTable[] = [
    qualityTable(study, rows),
    outcomesTable(study, assessments, trials.of),
    peopleTable(study, comparison),
    comparisonTable(study, comparison),
    multiverseTable(study, found),
    choicesTable(study, found),
    shiftsTable(study, shifts),
    ...(raters.length === 0 ? [] : [agreementTable(agreement)]),
  ];
  const made = madeLine(origin);
  const pictures = [
    { name: 'estimates.svg', text: estimatesPicture(study, found, made) },
    { name: 'people.svg', text: peoplePicture(study, comparison, made) },
    ...(raters.length === 0 ? [] : [{ name: 'agreement.svg', text: agreementPicture(study, lists, agreement, made) }]),
    { name: 'shifts.svg', text: shiftsPicture(study, shifts, made) },
  ];
  const outputs = studyOutputs(tables, pictures, origin);
  return { declared, origin, rows, comparison, multiverse: found, shifts, agreement, outputs };
}
