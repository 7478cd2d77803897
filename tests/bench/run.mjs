// npm run bench: how fast the three things are that have to be fast, each beside a named yardstick, in one run.
// Equal results are proved before anything is timed; a difference stops the run. Needs a build.
import { existsSync } from 'node:fs';
import { cpus } from 'node:os';
import { fileURLToPath } from 'node:url';

process.chdir(fileURLToPath(new URL('../..', import.meta.url)));

if (!existsSync('packages/analysis/dist/index.js') || !existsSync('packages/records/dist/index.js')) {
  console.error('The packages are not built. Run: npm run build');
  process.exit(1);
}

const { benchBlockCore } = await import('./block-core.mjs');
const { benchCsv } = await import('./csv.mjs');
const { benchFinalPass } = await import('./final-pass.mjs');

const machine = `${cpus().length} x ${cpus()[0]?.model.trim() ?? 'unknown processor'}, Node ${process.versions.node}`;
console.log(`${new Date().toISOString().slice(0, 10)}, ${machine}\n`);

const rows = [];
const add = (what, measured, yardstick, reached) => rows.push([what, measured, yardstick, reached ? 'yes' : 'NO']);

const pass = benchFinalPass();
const what = 'final pass, foot, six channels, 120 s at 1000 Hz';
if (pass.reason !== undefined) {
  console.log(`No ratio to SciPy: ${pass.reason}\n`);
  rows.push([what, `${pass.oursMs.toFixed(0)} ms`, 'SciPy could not be asked', '-']);
} else {
  const { oursMs, scipyMs, scipyVersion, ratio } = pass;
  const yardstick = `SciPy ${scipyVersion}: ${scipyMs.toFixed(0)} ms; at least 1 time as fast, aim 3`;
  add(what, `${oursMs.toFixed(0)} ms, ${ratio.toFixed(2)} times as fast`, yardstick, ratio >= 1);
}
for (const { placement, channels, microsecondsPerSample: each } of benchBlockCore()) {
  const name = `block core, ${placement}, ${channels} channel${channels > 1 ? 's' : ''}, blocks of 50`;
  add(name, `${each.toFixed(2)} us a sample`, 'at most 2 us', each <= 2);
}
const csv = benchCsv();
add(
  `reading plain numeric CSV, ${csv.megabytes.toFixed(0)} MB`,
  `${csv.oursMbPerS.toFixed(0)} MB/s, ${csv.ratio.toFixed(2)} times as fast`,
  `bare papaparse loop: ${csv.papaparseMbPerS.toFixed(0)} MB/s; at least ${csv.required} times`,
  csv.ratio >= csv.required,
);

const head = ['what', 'measured', 'yardstick', 'reached'];
const widths = head.map((title, c) => Math.max(title.length, ...rows.map((row) => row[c].length)));
const line = (cells) => cells.map((cell, c) => cell.padEnd(widths[c])).join('  ');
console.log([line(head), line(widths.map((width) => '-'.repeat(width))), ...rows.map(line)].join('\n'));
