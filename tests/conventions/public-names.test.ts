import { existsSync } from 'node:fs';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { inProject, packageFolders, projectText } from '../support/project.ts';

/** Names that the front door of a package lists, types included. */
function publicNames(folder: string): string[] {
  const path = `${folder}/src/index.ts`;
  const source = ts.createSourceFile(path, projectText(path), ts.ScriptTarget.ES2023, true);
  return source.statements
    .flatMap((statement) => {
      if (!ts.isExportDeclaration(statement) || statement.exportClause === undefined)
        return [`? ${statement.getText()}`];
      if (!ts.isNamedExports(statement.exportClause)) return [`? ${statement.getText()}`];
      return statement.exportClause.elements.map((element) =>
        statement.isTypeOnly || element.isTypeOnly ? `type ${element.name.text}` : element.name.text,
      );
    })
    .sort();
}

test('the public names of every package are those of the list, which is changed by hand', () => {
  const listed = JSON.parse(projectText('tests/conventions/public-names.json')) as Record<string, string[]>;
  // the dashboard is a page and no package: it has no front door
  const folders = packageFolders().filter((folder) => folder !== 'apps/dashboard');
  expect(existsSync(inProject('apps/dashboard/src/index.ts'))).toBe(false);
  const found = Object.fromEntries(folders.map((folder) => [folder, publicNames(folder)]));
  expect(found).toEqual(listed);
});
