// Prints the tables of accuracy of isometric efforts as Markdown, the SciPy script in brackets:
//   node tests/accuracy/pulls-table.mjs [--traces N of each kind] [--from SEED] [--levels hard] [--rates 80,1000]
//                                       [--no-yardstick] [--no-build]
// For tuning take seeds below 10000, as in --from 1 --traces 50.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { missedPullGoals } from './pulls-goals.mjs';
import { byAnalysis, firstSealedPull, measurePulls, pullLevels, pullRatesHz } from './pulls-measure.mjs';
import { coverageTable, familyTable } from './pulls-pooled.mjs';
import { byScript, scipyVersion } from './pulls-yardstick.mjs';

process.chdir(fileURLToPath(new URL('../..', import.meta.url)));
const { values } = parseArgs({
  options: {
    traces: { type: 'string', default: '250' },
    from: { type: 'string', default: String(firstSealedPull) },
    levels: { type: 'string', default: pullLevels.join(',') },
    rates: { type: 'string', default: pullRatesHz.join(',') },
    'no-yardstick': { type: 'boolean', default: false },
    'no-build': { type: 'boolean', default: false },
  },
});

if (!values['no-build']) {
  const built = spawnSync('npx', ['tsc', '-b', 'packages/analysis', 'packages/simulation'], { stdio: 'inherit' });
  if (built.status !== 0) process.exit(1);
}
const simulation = await import('@surae/simulation');
const analysis = await import('@surae/analysis');
const shared = await import('@surae/shared');

const columns = [
  ['exact count', 'exact', 3],
  ['onset p95 ms', 'onsetP95Ms', 1],
  ['distinct start p95 ms', 'distinctP95Ms', 1],
  ['share distinct', 'distinctShare', 2],
  ['ramp onset p95 ms', 'rampOnsetP95Ms', 0],
  ['peak RMS %', 'peakRmsPercent', 3],
  ['0.5 s mean RMS %', 'meanRmsPercent', 3],
  ['rate 0-200 ms RMS %', 'riseRmsPercent', 2],
  ['share with rate', 'rateShare', 2],
];
const shares = [
  ['onset', 'onsetCoverage'],
  ['distinct', 'distinctCoverage'],
  ['ramp onset', 'rampOnsetCoverage'],
  ['peak', 'peakCoverage'],
  ['mean', 'meanCoverage'],
  ['rate', 'riseCoverage'],
];

function cell(value, digits) {
  return value === undefined || Number.isNaN(value) ? '' : value.toFixed(digits);
}

if (!values['no-yardstick']) console.log(`In brackets: tests/reference/pulls_yardstick.py, SciPy ${scipyVersion()}.\n`);
const names = ['level', 'rate Hz', 'traces', 'peaks judged', ...columns.map(([name]) => name)];
console.log(`| ${[...names, ...shares.map(([name]) => `${name} in 95 %`), 'goals missed'].join(' | ')} |`);
console.log(`|${'---|'.repeat(names.length + shares.length + 1)}`);
const rows = [];
for (const level of values.levels.split(',')) {
  for (const sampleRateHz of values.rates.split(',').map(Number)) {
    const request = { simulation, level, sampleRateHz, traces: Number(values.traces), from: Number(values.from) };
    const figures = measurePulls({ ...request, find: byAnalysis(analysis, shared) });
    const ours = figures.summary();
    rows.push({ level, sampleRateHz, summary: ours });
    const other = values['no-yardstick'] ? {} : measurePulls({ ...request, find: byScript }).summary();
    const cells = columns.map(([, key, digits]) => {
      const beside = cell(other[key], digits);
      return beside === '' ? cell(ours[key], digits) : `${cell(ours[key], digits)} (${beside})`;
    });
    const missed = missedPullGoals(level, sampleRateHz, ours).map((one) => one.split(' ')[3].replace(':', ''));
    console.log(
      `| ${[
        level,
        sampleRateHz,
        ours.traces,
        cell(ours.judged, 3),
        ...cells,
        ...shares.map(([, key]) => cell(ours[key], 3)),
        missed.join(', '),
      ].join(' | ')} |`,
    );
    if (figures.wrongSeeds.length > 0) process.stderr.write(`  wrong counts: ${figures.wrongSeeds.join(' ')}\n`);
  }
}
console.log(`\n${familyTable(rows)}\n\n${coverageTable(rows)}`);
