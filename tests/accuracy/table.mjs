// Prints the table of accuracy as Markdown:
//   node tests/accuracy/table.mjs [--sets N] [--from SEED] [--kinds heel,trunk] [--levels hard,field] [--failures] [--no-build]
//   node tests/accuracy/table.mjs --yardstick      makes tests/reference/yardstick.json again (needs python3 with SciPy)
//   node tests/accuracy/table.mjs --faults         prints the size of every simulated fault at each level
// For tuning take seeds below 10001, as in --from 1 --sets 50. With --failures the seeds whose count is wrong go to stderr.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { firstSealedSeed, kinds, levels } from './kinds.mjs';
import { tableHead, tableRow } from './markdown.mjs';
import { measure } from './measure.mjs';

process.chdir(fileURLToPath(new URL('../..', import.meta.url)));
const { values } = parseArgs({
  options: {
    sets: { type: 'string', default: '300' },
    from: { type: 'string', default: String(firstSealedSeed) },
    kinds: { type: 'string', default: Object.keys(kinds).join(',') },
    levels: { type: 'string', default: levels.join(',') },
    failures: { type: 'boolean', default: false },
    'no-build': { type: 'boolean', default: false },
    yardstick: { type: 'boolean', default: false },
    faults: { type: 'boolean', default: false },
  },
});
const sets = Number(values.sets);
const from = Number(values.from);

if (!values['no-build']) {
  const built = spawnSync('npx', ['tsc', '-b', 'packages/analysis', 'packages/simulation'], { stdio: 'inherit' });
  if (built.status !== 0) process.exit(1);
}
const simulation = await import('@surae/simulation');
const yardstickPath = 'tests/reference/yardstick.json';
const wanted = values.kinds.split(',').flatMap((kind) => values.levels.split(',').map((level) => ({ kind, level })));

if (values.faults) {
  console.log(simulation.formatFaultTable());
} else if (values.yardstick) {
  const { makeYardstick } = await import('./yardstick.mjs');
  makeYardstick({ simulation, wanted, sets, from, path: yardstickPath });
} else {
  const analysis = await import('@surae/analysis');
  const committed = existsSync(yardstickPath) ? JSON.parse(readFileSync(yardstickPath, 'utf8')) : undefined;
  const comparable = committed !== undefined && committed.from === from && committed.sets === sets;
  console.log(tableHead());
  for (const { kind, level } of wanted) {
    const progress = (done) => {
      if (process.stderr.isTTY) process.stderr.write(`\r${kind} ${level} ${done}/${sets}   `);
    };
    const startMs = performance.now();
    const figures = measure({ simulation, analysis, kind, level, sets, from, progress, limits: true });
    const seconds = ((performance.now() - startMs) / 1000).toFixed(1);
    process.stderr.write(`${process.stderr.isTTY ? '\r' : ''}${kind} ${level}: ${sets} sets in ${seconds} s\n`);
    console.log(tableRow(kind, level, figures.summary(), comparable ? committed.figures[kind]?.[level] : undefined));
    if (values.failures) process.stderr.write(`  wrong counts (seed:difference): ${figures.wrongSeeds.join(' ')}\n`);
  }
}
