// Prints how people are counted that the project's own simulation knows nothing of, as Markdown:
//   node tests/accuracy/other-people.mjs [--sets N] [--from SEED] [--wrong]
// Their recordings are made by tests/reference/other_people.py (needs python3 with NumPy and SciPy) and read by the command line as
// any others. With --wrong the recordings that are counted wrong go to stderr.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';

process.chdir(fileURLToPath(new URL('../..', import.meta.url)));
const { values } = parseArgs({
  options: {
    sets: { type: 'string', default: '20' },
    from: { type: 'string', default: '1' },
    wrong: { type: 'boolean', default: false },
  },
});

/** Runs a program to its end; what it wrote. */
function output(program, args) {
  const { status, stdout, stderr, error } = spawnSync(program, args, { encoding: 'utf8', maxBuffer: 2 ** 30 });
  if (error !== undefined) throw error;
  if (status !== 0) throw new Error(`${program} ended with ${status}: ${stderr}`);
  return stdout;
}

/** Truth and answer of every recording, made in a folder of its own. */
function recordings(folder) {
  output('python3', ['tests/reference/other_people.py', folder, values.sets, values.from]);
  const answers = output(process.execPath, [
    'apps/cli/bin/surae.js',
    'assess',
    '--manifest',
    join(folder, 'manifest.csv'),
    '--json',
  ])
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line));
  const byFile = new Map(answers.map((answer) => [answer.file, answer]));
  return JSON.parse(readFileSync(join(folder, 'truth.json'), 'utf8')).map((truth) => ({
    ...truth,
    answer: byFile.get(truth.file),
  }));
}

/** How many recordings of one situation by one sensor are counted exactly, and in brackets how many ranges hold the truth. */
function cellOf(some) {
  const exact = some.filter(({ topsS, answer }) => answer.count.attempted === topsS.length);
  const held = some.filter(({ topsS, answer: { count } }) => count.low <= topsS.length && topsS.length <= count.high);
  return `${exact.length} (${held.length})`;
}

const folder = mkdtempSync(join(tmpdir(), 'other-people-'));
try {
  const all = recordings(folder);
  const sensors = [...new Set(all.map(({ sensor }) => sensor))];
  console.log(`| of ${values.sets} each | ${sensors.join(' | ')} |`);
  console.log(`| --- | ${sensors.map(() => '---').join(' | ')} |`);
  for (const situation of new Set(all.map((one) => one.situation))) {
    const cells = sensors.map((sensor) => {
      const some = all.filter((one) => one.situation === situation && one.sensor === sensor);
      return some.length === 0 ? '' : cellOf(some);
    });
    console.log(`| ${situation} | ${cells.join(' | ')} |`);
  }
  if (values.wrong) {
    for (const { file, sensor, situation, topsS, answer } of all) {
      const { attempted, low, high } = answer.count;
      if (attempted !== topsS.length) {
        console.error(`${file} ${sensor}, ${situation}: ${attempted} of ${topsS.length}, ${low} to ${high}`);
      }
    }
  }
} finally {
  rmSync(folder, { recursive: true });
}
