import { STUDY_RESULT_WORDS, STUDY_WORDS } from '@surae/shared';
import type { MemoryIo } from '../../../support/memory-io.ts';
import { FOLDER_STUDY, STUDY_ROWS, studyFolder } from '../../../support/study-folder.ts';
import { putStudy } from '../put-study.ts';
import type { Stand, State } from './state.ts';

const words = STUDY_RESULT_WORDS;

/** The comparison of a study and its choices, and what comes before it while trials are to be decided. */
export const studyResultStates: readonly State[] = [
  { name: 'study-undecided', area: 'study', reach: (at) => show(at, undecidedFolder(), words.show.text), anew: true },
  { name: 'study-groups', area: 'study', reach: (at) => show(at, comparedFolder(), words.everybody.text), anew: true },
  { name: 'study-choices', area: 'study', reach: choose },
];

/** Two groups, one person with a second trial, and two things that could have been chosen otherwise. */
export function comparedFolder(
  more: readonly (typeof STUDY_ROWS)[number][] = [],
  blinding: typeof FOLDER_STUDY.blinding = null,
): MemoryIo {
  const again = { ...STUDY_ROWS[0], file: 'again-11.csv' };
  return studyFolder([...STUDY_ROWS, again, ...more], {
    ...FOLDER_STUDY,
    blinding,
    choices: [
      { parameter: 'perPerson', values: ['greatest'], why: 'the best of two is common' },
      { parameter: 'protocol.heightFraction', values: [0.95], why: 'some ask for more' },
    ],
  });
}

/** One recording is not there, and nobody decided about it; raters have not locked their counts. */
export function undecidedFolder(): MemoryIo {
  const from = comparedFolder([{ ...STUDY_ROWS[0], file: 'gone-99.csv', person: 'cycling 99' }], FOLDER_STUDY.blinding);
  from.files.delete('gone-99.csv');
  return from;
}

/** Puts an assessed study into the store of the page and opens the comparison. */
export async function openCompared(at: Pick<Stand, 'go' | 'page'>, from: MemoryIo): Promise<void> {
  const id = await putStudy(at.page, undefined, from);
  await at.go(`#/study/${encodeURIComponent(id)}/groups`, 'study-groups');
}

async function show(at: Stand, from: MemoryIo, text: string): Promise<void> {
  await openCompared(at, from);
  await at.page.getByText(text, { exact: true }).waitFor();
}

async function choose({ page }: Stand): Promise<void> {
  await page.getByRole('link', { name: STUDY_WORDS['part-choices'].text }).click();
  await page.getByText(words['every-way'].text, { exact: true }).waitFor();
}
