import { canonicalHash } from '../canonical-hash.ts';
import { parseDocument } from '../document-fault.ts';
import { StudyError } from '../errors.ts';
import { checkStudy } from './check-study.ts';
import { STUDY_VERSION, type StudyFile, studyDocument } from './study-document.ts';

/** A study file with the hash that every result of it carries. */
export interface DeclaredStudy {
  readonly study: StudyFile;
  /** SHA-256 of its canonical JSON: neither spaces nor the order of keys count */
  readonly hash: string;
}

/**
 * A study out of a text that came from outside: every part is checked, and that the parts go together.
 *
 * @throws {@link StudyError} `bad-file` with the path of the first fault, what was expected there and what came; `newer-version`
 */
export function parseStudy(text: string, file?: string): DeclaredStudy {
  const study = parseDocument(studyDocument, text, {
    of: 'a study file',
    kind: 'surae-study',
    version: STUDY_VERSION,
    file,
  });
  try {
    checkStudy(study);
  } catch (error) {
    if (!(error instanceof StudyError) || file === undefined) throw error;
    throw new StudyError(error.code, { ...error.details, file }, { cause: error });
  }
  return { study, hash: canonicalHash(study) };
}
