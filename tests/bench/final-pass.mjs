// The final pass over two minutes of a six-axis foot sensor at 1000 Hz, against the same job in SciPy.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defaultSettings, detectHeelRaises } from '@surae/analysis';
import { makeFootSet } from './foot-set.mjs';

/** Middle of the times that a piece of work takes [ms]. */
export function medianMs(work, repeats) {
  const spent = [];
  for (let repeat = 0; repeat < repeats; repeat += 1) {
    const start = performance.now();
    work();
    spent.push(performance.now() - start);
  }
  return spent.sort((a, b) => a - b)[spent.length >> 1];
}

/** Refuses to time anything that does not find the same repetitions: equal number, tops and heights close. */
function requireSame(name, found, truth, { topS, heightM }) {
  if (found.length !== truth.length) throw new Error(`${name}: ${found.length} repetitions for ${truth.length}`);
  found.forEach((one, k) => {
    const late = Math.abs(one.topS - truth[k].topS);
    const off = Math.abs(one.heightM - truth[k].heightM);
    if (late > topS || off > heightM) throw new Error(`${name}: repetition ${k + 1} is ${late} s and ${off} m off`);
  });
}

/** What SciPy needs for the same set, or a sentence that says why it could not be asked. */
function askSciPy(set, repeats) {
  const folder = mkdtempSync(join(tmpdir(), 'surae-bench-'));
  try {
    const [{ timesS, channels }] = set.trace.groups;
    const table = new Float64Array(7 * timesS.length);
    for (let i = 0; i < timesS.length; i += 1) {
      table[7 * i] = timesS[i];
      channels.forEach(({ samples }, c) => {
        table[7 * i + 1 + c] = samples[i];
      });
    }
    writeFileSync(join(folder, 'columns.bin'), new Uint8Array(table.buffer));
    writeFileSync(join(folder, 'set.json'), JSON.stringify({ heelLeverM: set.heelLeverM }));
    const script = fileURLToPath(new URL('pipeline.py', import.meta.url));
    // one thread each: the final pass has one, too
    const env = { ...process.env, OMP_NUM_THREADS: '1', OPENBLAS_NUM_THREADS: '1', MKL_NUM_THREADS: '1' };
    const asked = spawnSync('python3', [script, folder, String(repeats)], { encoding: 'utf8', env });
    const { status, stdout, stderr, error } = asked;
    if (error) return { reason: `python3 cannot be started: ${error.message}` };
    if (status !== 0) return { reason: `the SciPy pipeline stopped: ${stderr.trim().split('\n').at(-1)}` };
    return JSON.parse(stdout);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Runs before those that are timed. */
const warmUp = 10;

/** Times both after proving that both find the true repetitions. */
export function benchFinalPass({ repeats = 15 } = {}) {
  const set = makeFootSet();
  const { heel } = defaultSettings();
  const run = () => detectHeelRaises(set.trace, 'foot', { heelLeverM: set.heelLeverM }, heel);
  requireSame('surae', run().raises, set.truth, { topS: 0.05, heightM: 0.004 });
  // the engine compiles while it runs: a folder of files is read by compiled code, and so is this
  for (let round = 0; round < warmUp; round += 1) run();
  const oursMs = medianMs(run, repeats);
  const scipy = askSciPy(set, repeats);
  if (scipy.reason !== undefined) return { oursMs, reason: scipy.reason };
  requireSame('SciPy', scipy.raises, set.truth, { topS: 0.05, heightM: 0.004 });
  return { oursMs, scipyMs: scipy.medianMs, scipyVersion: scipy.version, ratio: scipy.medianMs / oursMs };
}

if (import.meta.url === `file://${process.argv[1]}`) console.log(benchFinalPass());
