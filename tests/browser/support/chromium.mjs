// Where the browser for the tests is: CHROMIUM if it is set, else the first of the usual names in PATH.
import { programPath } from './program-path.mjs';

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome', 'microsoft-edge'];

/** Path of a browser of the Chromium family; undefined when there is none. */
export function findChromium(environment = process.env) {
  return programPath(names, environment.CHROMIUM, environment.PATH);
}
