// A small page of the tests, bundled from the sources as the dashboard is.
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

/**
 * One script, whatever is loaded later elsewhere.
 *
 * @param {URL} entry - the module that it begins with
 * @returns {Promise<string>}
 */
export async function bundled(entry) {
  const result = await build({
    configFile: false,
    logLevel: 'silent',
    root: fileURLToPath(new URL('.', entry)),
    resolve: { conditions: ['surae-source', 'module', 'browser', 'development|production'] },
    build: {
      write: false,
      minify: false,
      target: 'es2023',
      rolldownOptions: { output: { codeSplitting: false } },
      lib: { entry: fileURLToPath(entry), formats: ['es'], fileName: 'page' },
    },
  });
  const [first] = Array.isArray(result) ? result : [result];
  if (!('output' in first)) throw new Error('The page of the tests was watched and not built.');
  return first.output[0].code;
}
