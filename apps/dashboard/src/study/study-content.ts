import {
  type Analysis,
  type Assessment,
  analysesOf,
  assessmentsOf,
  type DeclaredStudy,
  parseStudy,
  type ReadInput,
  type ReadRecipe,
  type StudyLine,
  studyItems,
  studyLine,
  type WorkItem,
  withKnownRecipes,
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
  /** recipes that rows of the manifest name, by the path that they have beside the study file */
  readonly recipes: readonly HashedFile[];
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
  /** study file, manifest and recipes as a result names them, in the order of the command line */
  readonly inputs: readonly ReadInput[];
}

/** Where a file lies that a manifest names: beside it, as on a command line in the folder of the study. */
export function placeBeside(manifest: string): (file: string) => string {
  const folder = manifest.split('/').slice(0, -1);
  return (file) => {
    if (file.startsWith('/')) return file;
    const parts: string[] = [];
    for (const part of [...folder, ...file.split('/')]) {
      if (part === '' || part === '.') continue;
      const last = parts.at(-1);
      if (part === '..' && last !== undefined && last !== '..') parts.pop();
      else parts.push(part);
    }
    return parts.join('/');
  };
}

const text = ({ bytes }: HashedFile): string => new TextDecoder().decode(bytes);

/**
 * What files of a study say.
 *
 * @throws {@link StudyError} where a study file cannot be followed, or asks for too many analyses; {@link ListFault} for the manifest
 */
export function studyContent(sources: StudySources): StudyContent {
  const { study, manifest, earlier, recipes } = sources;
  const declared = parseStudy(text(study), study.name);
  const others = earlier.map((one) => parseStudy(text(one), one.name));
  const isWhole = others.length > 0 || declared.study.amends === null;
  const analyses = analysesOf(declared.study);
  // those that rows are read by, in the order in which they are asked for
  const used: HashedFile[] = [];
  const recipeOf = (path: string): ReadRecipe => {
    const found = recipes.find(({ name }) => name === path);
    if (found === undefined) return { fault: 'there is no such file' };
    used.push(found);
    return found.bytes;
  };
  const items = withKnownRecipes(
    studyItems(declared.study, manifest.name, manifest.bytes, placeBeside(manifest.name)),
    recipeOf,
  );
  return {
    sources,
    declared,
    line: isWhole ? studyLine(declared, others) : undefined,
    items,
    analyses,
    assessments: assessmentsOf(analyses),
    inputs: [study, ...earlier, manifest, ...used].map(({ name: file, sha256 }) => ({ file, sha256 })),
  };
}
