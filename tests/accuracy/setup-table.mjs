// Prints how well a sensor is found out while it is set up, as Markdown:
//   node tests/accuracy/setup-table.mjs [--seeds N] [--from SEED] [--no-build]
// For tuning take seeds below 10000, as in --from 1 --seeds 60.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { firstSealedSetup, measureSetup, setupQuestions } from './setup-measure.mjs';

process.chdir(fileURLToPath(new URL('../..', import.meta.url)));
const { values } = parseArgs({
  options: {
    seeds: { type: 'string', default: '200' },
    from: { type: 'string', default: String(firstSealedSetup) },
    only: { type: 'string' },
    'no-build': { type: 'boolean', default: false },
  },
});
if (!values['no-build']) {
  const built = spawnSync('npx', ['tsc', '-b', 'packages/analysis', 'packages/simulation'], { stdio: 'inherit' });
  if (built.status !== 0) process.exit(1);
}
const simulation = await import('@surae/simulation');
const analysis = await import('@surae/analysis');

const cell = (value) => (value === null ? '-' : Number.isInteger(value) ? String(value) : value.toFixed(3));
console.log(
  '| question | seeds | right | asked | sure and right | its confidence | unsure and right | its confidence | sure and wrong |',
);
console.log('|---|---|---|---|---|---|---|---|---|');
for (const name of setupQuestions({ simulation, analysis })) {
  if (values.only !== undefined && !name.includes(values.only)) continue;
  const { count, right, asked, sureRight, sureConfidence, unsureRight, unsureConfidence, wrongThoughSure } =
    measureSetup({ simulation, analysis }, name, Number(values.from), Number(values.seeds));
  const cells = [count, right, asked, sureRight, sureConfidence, unsureRight, unsureConfidence, wrongThoughSure];
  console.log(`| ${[name, ...cells.map(cell)].join(' | ')} |`);
}
