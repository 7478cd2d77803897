import { existsSync } from 'node:fs';
import { expect, test } from 'vitest';
import { moduleKind } from '../support/module-kind.ts';
import { filesUnder, inProject, packageFolders, projectText, sourceFiles } from '../support/project.ts';

/** Tests of a whole package or table, of the command as a user runs it, or of a shape that two packages share. */
const ofWhole = [
  'tests/cli/bin.test.ts',
  'tests/cli/cluster/several-machines.test.ts',
  'tests/cli/research-page.test.ts',
  'tests/dashboard/advice/every-why.test.ts',
  'tests/guidance/laws.test.ts',
  'tests/records/broken-files.test.ts',
  'tests/records/guess/reliability.test.ts',
  'tests/records/recipe/mutations.test.ts',
  'tests/records/shape.test.ts',
  'tests/shared/entries.test.ts',
  'tests/storage/frozen-stores.test.ts',
  'tests/storage/frozen-version-2.test.ts',
];

/** Modules that the test of another module runs through: the list is changed by hand, and each line has a reason. */
interface CoveredBy {
  readonly module: string;
  readonly test: string;
  readonly why: string;
}

const coveredBy = JSON.parse(projectText('tests/conventions/covered-by.json')) as CoveredBy[];

/** Where the test of a source module belongs. */
function testOf(folder: string, path: string): string {
  const name = folder.split('/').at(-1)!;
  return `tests/${name}/${path.slice(`${folder}/src/`.length).replace(/\.ts$/, '.test.ts')}`;
}

/** Modules that hold code and have no test of their own name. */
function withoutTest(): string[] {
  return packageFolders().flatMap((folder) =>
    sourceFiles(folder).filter(
      // few have none: the others need not be read
      (path) => !existsSync(inProject(testOf(folder, path))) && moduleKind(path, projectText(path)) === 'code',
    ),
  );
}

test('every module that computes something has a test of its own name, or a line that says which test runs it', () => {
  const listed = coveredBy.map(({ module }) => module);
  expect(withoutTest().filter((path) => !listed.includes(path))).toEqual([]);
});

test('the list of modules that another test runs has no stale line', () => {
  const needed = withoutTest();
  const stale = coveredBy.filter(
    ({ module, test: name, why }) => !needed.includes(module) || !existsSync(inProject(name)) || why.length < 10,
  );
  expect(stale).toEqual([]);
});

test('every test of a package mirrors a module or a folder of modules', () => {
  const names = packageFolders().map((folder) => ({ folder, name: folder.split('/').at(-1)! }));
  const astray = names.flatMap(({ folder, name }) =>
    filesUnder(`tests/${name}`).filter((path) => {
      const inside = path.slice(`tests/${name}/`.length).replace(/\.test\.ts$/, '');
      const places = [`${folder}/src/${inside}.ts`, `${folder}/src/${inside}`];
      return (
        !places.some((place) => existsSync(inProject(place))) &&
        !ofWhole.includes(path) &&
        !path.startsWith('tests/guidance/courses/')
      );
    }),
  );
  expect(astray).toEqual([]);
});

test('the kind of a module is told from its syntax', () => {
  const kindOf = (text: string): string => moduleKind('x.ts', text);
  expect(kindOf("import type { A } from './a.ts';\nexport interface B { a: A }\nexport type C = B;")).toBe('types');
  expect(kindOf("export const limits = { low: -1, high: [1, 2], name: 'x' } as const;")).toBe('data');
  expect(kindOf("export { a } from './a.ts';\nexport type { B } from './b.ts';")).toBe('list-of-names');
  expect(kindOf('export const start = Date.parse("2020-01-01");')).toBe('code');
  expect(kindOf('export const twice = (x: number) => 2 * x;')).toBe('code');
  expect(kindOf('export class Counter {}')).toBe('code');
  expect(kindOf('interface A {}\nexport function f(a: A) { return a; }')).toBe('code');
});
