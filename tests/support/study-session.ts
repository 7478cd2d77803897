import { countingDocuments } from '@surae/casebook';
import { sha256Hex } from '@surae/records';
import { MemoryStore } from '@surae/storage';
import { VisitBook } from '../../apps/dashboard/src/journey/visit-book.ts';
import { assessTrial } from '../../apps/dashboard/src/study/assess-trial.ts';
import type { KeptTrial } from '../../apps/dashboard/src/study/kept-trial.ts';
import { type HashedFile, type StudyContent, studyContent } from '../../apps/dashboard/src/study/study-content.ts';
import type { StudySession } from '../../apps/dashboard/src/study/study-session.ts';
import { type FoundRecording, StudyShelf } from '../../apps/dashboard/src/study/study-shelf.ts';
import type { MemoryIo } from './memory-io.ts';
import { studyFolder } from './study-folder.ts';

/** A study in a store in memory. */
export interface ShelvedStudy {
  readonly shelf: StudyShelf;
  readonly id: string;
}

const hashed = (name: string, text: string): HashedFile => {
  const bytes = new TextEncoder().encode(text);
  return { name, bytes, sha256: sha256Hex(bytes) };
};

/** A shelf on a store in memory. */
export function memoryShelf(store = new MemoryStore()): StudyShelf {
  const clock = { isoNow: () => '2026-03-01T09:30:00+01:00' };
  const book = new VisitBook(store, clock, 'test', (documents) => Promise.resolve(countingDocuments(documents)));
  return new StudyShelf(store, book.hand);
}

/** The study of a folder in memory, its recordings in the order of its manifest; one that is not there has the reason. */
export function contentOfFolder(folder: MemoryIo): {
  readonly content: StudyContent;
  readonly found: FoundRecording[];
} {
  const content = studyContent({
    study: hashed('study.json', folder.text('study.json')),
    manifest: hashed('m.csv', folder.text('m.csv')),
    earlier: [],
    recipes: [...folder.files.keys()]
      .filter((name) => name.endsWith('.recipe.json'))
      .map((name) => hashed(name, folder.text(name))),
  });
  const found = content.items.map(({ file }): FoundRecording => {
    if (!folder.files.has(file)) return { name: file, fault: 'there is no such file' };
    return hashed(file, folder.text(file));
  });
  return { content, found };
}

/** Everything that the recordings of a folder come to, by their place. */
export function assessedFolder(folder: MemoryIo): ReadonlyMap<number, KeptTrial> {
  const { content, found } = contentOfFolder(folder);
  const { items, assessments, declared } = content;
  return new Map(items.map((_, at) => [at, assessTrial({ declared, assessments, items }, at, found[at])]));
}

let plain: ReadonlyMap<number, KeptTrial> | undefined;

/** What the recordings of the plain folder come to: made once, since it takes seconds. */
export function plainTrials(): ReadonlyMap<number, KeptTrial> {
  plain ??= assessedFolder(studyFolder());
  return plain;
}

/** A folder taken into a store in memory, with what its recordings come to. */
export async function shelvedStudy(
  folder: MemoryIo = studyFolder(),
  trials: ReadonlyMap<number, KeptTrial> = assessedFolder(folder),
  store = new MemoryStore(),
): Promise<ShelvedStudy> {
  const shelf = memoryShelf(store);
  const { content, found } = contentOfFolder(folder);
  const id = await shelf.keep(content.declared.study.title, content.sources, found);
  await shelf.keepTrials(id, SOFTWARE, trials);
  return { shelf, id };
}

/** What assesses in these tests. */
export const SOFTWARE = 'surae 0.1.0';

/** The session of a study that was put on a shelf. */
export async function sessionOf({ shelf, id }: ShelvedStudy): Promise<StudySession> {
  return (await shelf.open(id, SOFTWARE))!.session;
}
