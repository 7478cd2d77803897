import type { StudyFile } from '../../packages/study/src/declared/study-document.ts';
import { type Cells, rowsInMemory } from './compared-manifest.ts';
import { declaredStudy } from './declared-study.ts';
import type { MemoryIo } from './memory-io.ts';

/** People of both groups with the repetitions of their one set: each file holds so many plain raises. */
const PEOPLE: readonly (readonly [arm: string, counts: readonly number[]])[] = [
  ['cycling', [8, 10, 7, 9]],
  ['walking', [3, 5, 4, 6]],
];

/** The rows of a manifest of both groups. */
export const STUDY_ROWS: readonly Cells[] = PEOPLE.flatMap(([arm, counts]) =>
  counts.map((count) => ({
    file: `${arm}-${count}.csv`,
    person: `${arm} ${count}`,
    visit: 1,
    side: 'left',
    placement: 'heel',
    test: 'heel-raise',
    body_mass_kg: 70,
    end_reason: 'fatigue',
    arm,
    footwear: 'barefoot',
  })),
);

/** The study of those rows, as it is declared. */
export const FOLDER_STUDY: StudyFile = declaredStudy({
  choices: [{ parameter: 'protocol.heightFraction', values: [0.95], why: 'some ask for more' }],
  blinding: { seed: 'drawn from a hat', raters: ['ada', 'ben'], repeatedShare: 0.25, leastBetween: 2 },
});

/** A folder in memory with study file, manifest `m.csv` and recordings. */
export function studyFolder(
  rows: readonly Cells[] = STUDY_ROWS,
  study: StudyFile = FOLDER_STUDY,
  files: Readonly<Record<string, string>> = {},
): MemoryIo {
  return rowsInMemory(rows, { 'study.json': JSON.stringify(study, null, 2), ...files });
}
