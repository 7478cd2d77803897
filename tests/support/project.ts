import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Folder of the project on this machine. */
export const projectFolder = fileURLToPath(new URL('../..', import.meta.url));

/** Path inside the project to a place on this machine. */
export function inProject(path: string): string {
  return join(projectFolder, path);
}

/** Text of a file of the project. */
export function projectText(path: string): string {
  return readFileSync(inProject(path), 'utf8');
}

const generated = new Set(['dist', 'node_modules', '.git', '__pycache__']);

/** Paths of all files under a folder of the project, generated ones left out, sorted. */
export function filesUnder(folder: string): string[] {
  const root = inProject(folder);
  if (!existsSync(root)) return [];
  const walk = (at: string): string[] =>
    readdirSync(at).flatMap((name) => {
      if (generated.has(name)) return [];
      const path = join(at, name);
      return statSync(path).isDirectory() ? walk(path) : [relative(projectFolder, path).replaceAll('\\', '/')];
    });
  return walk(root).sort();
}

/** Paths of all files that a commit would hold; all files but the generated ones where there is no git. */
export function trackedFiles(): string[] {
  try {
    const listed = execFileSync('git', ['ls-files', '-co', '--exclude-standard'], {
      cwd: projectFolder,
      encoding: 'utf8',
    });
    return listed.split('\n').filter((path) => path !== '' && existsSync(inProject(path)));
  } catch {
    return filesUnder('.').filter((path) => !path.endsWith('.tsbuildinfo'));
  }
}

/** The TypeScript source files of a package, type declarations by hand left out. */
export function sourceFiles(packageFolder: string): string[] {
  return filesUnder(`${packageFolder}/src`).filter((path) => path.endsWith('.ts') && !path.endsWith('.d.ts'));
}

/** Folders that hold a package or an app. */
export function packageFolders(): string[] {
  const inside = ['packages', 'apps'].flatMap((folder) =>
    readdirSync(inProject(folder)).map((name) => `${folder}/${name}`),
  );
  return ['shared', ...inside].filter((folder) => existsSync(inProject(`${folder}/package.json`))).sort();
}
