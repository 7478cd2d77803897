// Where a program is: the file that a variable names if it is set, else the first of the usual names in PATH.
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

function canRun(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/**
 * Path of a program; undefined when there is none.
 *
 * @param {readonly string[]} names
 * @param {string | undefined} wanted
 * @param {string} [path]
 */
export function programPath(names, wanted, path = '') {
  if (wanted !== undefined && wanted !== '') return canRun(wanted) ? wanted : undefined;
  const folders = path.split(delimiter).filter((folder) => folder !== '');
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).find(canRun);
}
