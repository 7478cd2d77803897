// Where the browser for the tests is: CHROMIUM if it is set, else the first of the usual names in PATH.
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome', 'microsoft-edge'];

function canRun(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** Path of a browser of the Chromium family; undefined when there is none. */
export function findChromium(environment = process.env) {
  const { CHROMIUM: wanted, PATH: path = '' } = environment;
  if (wanted !== undefined && wanted !== '') return canRun(wanted) ? wanted : undefined;
  const folders = path.split(delimiter).filter((folder) => folder !== '');
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).find(canRun);
}
