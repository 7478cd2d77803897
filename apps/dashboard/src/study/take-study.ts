import { parseStudy, StudyError } from '@surae/study';
import { type ChosenFile, NamedFiles } from './chosen-study.ts';
import { type HashedFile, type StudyContent, studyContent } from './study-content.ts';
import type { FoundRecording } from './study-shelf.ts';

/** SHA-256 of bytes. */
export type HashOf = (bytes: Uint8Array) => Promise<string>;

/** A study that can be taken in: what it says, and which of its recordings are there. */
export interface TakenStudy {
  readonly content: StudyContent;
  /** files of the manifest that are not there, or not in one place only */
  readonly missing: readonly string[];
  /** reads one recording after the other, in the order of the manifest */
  readonly recordings: () => AsyncGenerator<FoundRecording>;
}

/** Why a file cannot be had, as the command line says it of one that is not there. */
const FAULTS = {
  missing: 'there is no such file',
  several: 'several files have this name, and none lies where the manifest says',
} as const;

/**
 * A study out of chosen files.
 *
 * @param studies - the study file and those that it amends, in any order
 * @throws {@link StudyError} or {@link ListFault} where a file cannot be followed
 */
export async function takeStudy(
  studies: readonly ChosenFile[],
  manifest: ChosenFile,
  all: readonly ChosenFile[],
  hashOf: HashOf,
): Promise<TakenStudy> {
  const hashed = async (file: ChosenFile): Promise<HashedFile> => {
    const bytes = await file.bytes();
    return { name: file.path, bytes, sha256: await hashOf(bytes) };
  };
  const files = await Promise.all(studies.map(hashed));
  const { study, earlier } = newest(files);
  const sources = { study, earlier, manifest: await hashed(manifest), recipes: [] };
  const { items } = studyContent(sources);
  const asked = new Set(items.flatMap(({ recipe }) => recipe?.path ?? []));
  const recipes = await Promise.all(all.filter(({ path }) => asked.has(path)).map(hashed));
  const content = studyContent({ ...sources, recipes });
  const named = new NamedFiles(manifest.path, all);
  const places = content.items.map(({ file }) => ({ file, found: named.find(file) }));
  return {
    content,
    missing: places.flatMap(({ file, found }) => ('fault' in found ? [file] : [])),
    recordings: async function* () {
      for (const { file, found } of places) {
        if ('fault' in found) yield { name: file, fault: FAULTS[found.fault] };
        else {
          const bytes = await found.bytes();
          yield { name: file, bytes, sha256: await hashOf(bytes) };
        }
      }
    },
  };
}

/** The study file that no other one amends, and the rest. @throws {@link StudyError} where that is not one */
function newest(files: readonly HashedFile[]): { readonly study: HashedFile; readonly earlier: HashedFile[] } {
  const declared = files.map(({ name, bytes }) => parseStudy(new TextDecoder().decode(bytes), name));
  const amended = new Set(declared.flatMap(({ study }) => study.amends?.study ?? []));
  const last = files.filter((_, at) => !amended.has(declared[at]!.hash));
  const [study] = last;
  if (study === undefined || last.length > 1) {
    const actual = last.map(({ name }) => name).join(', ') || 'none';
    throw new StudyError('bad-file', { expected: 'one study file that no other amends', actual });
  }
  return { study, earlier: files.filter((one) => one !== study) };
}
