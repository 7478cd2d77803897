// Prints the table of accuracy of hop series as Markdown:
//   node tests/accuracy/hops-table.mjs [--series N] [--from SEED] [--no-build]
// For tuning take seeds below 10000, as in --from 1 --series 50.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { missedHopGoals } from './hops-goals.mjs';
import { firstSealedHops, hopLevels, hopPlacements, measureHops } from './hops-measure.mjs';

process.chdir(fileURLToPath(new URL('../..', import.meta.url)));
const { values } = parseArgs({
  options: {
    series: { type: 'string', default: '200' },
    from: { type: 'string', default: String(firstSealedHops) },
    'no-build': { type: 'boolean', default: false },
  },
});
if (!values['no-build']) {
  const built = spawnSync('npx', ['tsc', '-b', 'packages/analysis', 'packages/simulation'], { stdio: 'inherit' });
  if (built.status !== 0) process.exit(1);
}
const simulation = await import('@surae/simulation');
const analysis = await import('@surae/analysis');
const { HOP_SERIES } = await import('@surae/shared');

const columns = [
  ['exact count', 'exact', 3],
  ['count in bounds', 'within', 3],
  ['contact bias ms', 'contactBiasMs', 2],
  ['contact p95 ms', 'contactP95Ms', 2],
  ['flight p95 ms', 'flightP95Ms', 2],
  ['mean contact p95 ms', 'meanContactP95Ms', 2],
  ['stiffness p95 %', 'stiffnessP95Percent', 1],
  ['contact in 95 %', 'contactCoverage', 3],
  ['flight in 95 %', 'flightCoverage', 3],
  ['stiffness in 95 %', 'stiffnessCoverage', 3],
];
console.log(
  `| ${['placement', 'level', 'series', 'hops', ...columns.map(([name]) => name), 'goals missed'].join(' | ')} |`,
);
console.log(`|${'---|'.repeat(columns.length + 5)}`);
for (const placement of hopPlacements) {
  for (const level of hopLevels) {
    const figures = measureHops({
      simulation,
      analysis,
      protocol: HOP_SERIES,
      placement,
      level,
      series: Number(values.series),
      from: Number(values.from),
    });
    const summary = figures.summary();
    const cells = columns.map(([, key, digits]) => summary[key]?.toFixed(digits) ?? '');
    const missed = missedHopGoals(placement, level, summary).map((one) => one.split(' ')[2].replace(':', ''));
    console.log(`| ${[placement, level, summary.series, summary.hops, ...cells, missed.join(', ')].join(' | ')} |`);
    if (figures.wrongSeeds.length > 0) process.stderr.write(`  wrong counts: ${figures.wrongSeeds.join(' ')}\n`);
  }
}
