import {
  type Analysis,
  type Assessment,
  analysesOf,
  assessmentsOf,
  type DeclaredStudy,
  parseStudy,
  type ReadInput,
  type StudyLine,
  studyItems,
  studyLine,
  type WorkItem,
} from '@surae/study';

/** A file that was read, with its hash. */
export interface HashedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly sha256: string;
}

/** The files that say what a study is. */
export interface StudySources {
  readonly study: HashedFile;
  readonly manifest: HashedFile;
  /** versions that this one amends, in any order */
  readonly earlier: readonly HashedFile[];
}

/** What was declared, and the recordings that it asks for: follows from the sources alone. */
export interface StudyContent {
  readonly sources: StudySources;
  readonly declared: DeclaredStudy;
  /** with the versions before it; undefined where it amends one that is not at hand */
  readonly line: StudyLine | undefined;
  /** rows of the manifest that belong to it */
  readonly items: readonly WorkItem[];
  readonly analyses: readonly Analysis[];
  /** what recordings are assessed by, the declared one first */
  readonly assessments: readonly Assessment[];
  /** study file and manifest as a result names them, in the order of the command line */
  readonly inputs: readonly ReadInput[];
}

const text = ({ bytes }: HashedFile): string => new TextDecoder().decode(bytes);

/**
 * What files of a study say.
 *
 * @throws {@link StudyError} where a study file cannot be followed, or asks for too many analyses; {@link ListFault} for the manifest
 */
export function studyContent(sources: StudySources): StudyContent {
  const { study, manifest, earlier } = sources;
  const declared = parseStudy(text(study), study.name);
  const others = earlier.map((one) => parseStudy(text(one), one.name));
  const isWhole = others.length > 0 || declared.study.amends === null;
  const analyses = analysesOf(declared.study);
  return {
    sources,
    declared,
    line: isWhole ? studyLine(declared, others) : undefined,
    items: studyItems(declared.study, manifest.name, manifest.bytes, (file) => file),
    analyses,
    assessments: assessmentsOf(analyses),
    inputs: [study, ...earlier, manifest].map(({ name: file, sha256 }) => ({ file, sha256 })),
  };
}
