import { expect, test } from 'vitest';
import { packageFolders, projectText, sourceFiles } from '../support/project.ts';

/** Modules that join with commas and end lines, and what each writes. */
const KNOWN: Readonly<Record<string, string>> = {
  'packages/exchange/src/tables/csv-text.ts': 'the one writer of tables',
  'packages/records/src/sample-text.ts': 'the one writer of samples under our header, which are numbers',
  'packages/exchange/src/tables/json-lines.ts': 'objects of JSON',
  'apps/cli/src/agree-command.ts': 'an option in the words of a refusal',
};

/** Commas joined in a module that also ends lines, or quotes doubled: how a table is written by hand. */
function writesTable(text: string): boolean {
  const joins = /join\((?:['"`][,;\t]['"`]|['"`]\\t['"`])\)/.test(text) && /\\n/.test(text);
  return joins || /replace(?:All)?\(\s*(?:'"'|\/"\/g),\s*['"`]""/.test(text);
}

test('a table is written in one place, where what a spreadsheet would run is disarmed', () => {
  const found = packageFolders().flatMap((folder) =>
    sourceFiles(folder).filter((path) => writesTable(projectText(path))),
  );
  expect(found.sort()).toEqual(Object.keys(KNOWN).sort());
});

test('a table written by hand is seen', () => {
  expect(writesTable("const text = rows.map((row) => `${row.join(',')}\\r\\n`)")).toBe(true);
  expect(writesTable(`const cell = value.replaceAll('"', '""');`)).toBe(true);
  expect(writesTable("const words = list.join(', ');")).toBe(false);
});
