// npm run bench: how fast the things are that have to be fast, each beside a named yardstick, in one run; -- page measures the
// page alone, -- many recordings in their thousands.
// Equal results are proved before anything is timed; a difference stops the run. Needs a build.
import { existsSync } from 'node:fs';
import { cpus } from 'node:os';
import { fileURLToPath } from 'node:url';

process.chdir(fileURLToPath(new URL('../..', import.meta.url)));

if (!existsSync('packages/analysis/dist/index.js') || !existsSync('packages/records/dist/index.js')) {
  console.error('The packages are not built. Run: npm run build');
  process.exit(1);
}

if (process.argv[2] === 'page') {
  await (await import('./page.mjs')).benchPage();
  process.exit();
}

const head = ['what', 'measured', 'yardstick', 'reached'];

/** The figures as a table. */
function print(rows) {
  const widths = head.map((title, c) => Math.max(title.length, ...rows.map((row) => row[c].length)));
  const line = (cells) => cells.map((cell, c) => cell.padEnd(widths[c])).join('  ');
  console.log([line(head), line(widths.map((width) => '-'.repeat(width))), ...rows.map(line)].join('\n'));
}

if (process.argv[2] === 'many') {
  const [files, many, megabytes] = process.argv.slice(3).map(Number);
  const { benchMany } = await import('./many.mjs');
  print(await benchMany({ files, many, megabytes }));
  process.exit();
}

const { benchBlockCore } = await import('./block-core.mjs');
const { benchCsv } = await import('./csv.mjs');
const { benchDashboard } = await import('./dashboard.mjs');
const { benchFinalPass } = await import('./final-pass.mjs');
const { benchLargeClinic } = await import('./large-clinic.mjs');
const { startBundleKib } = await import('../browser/support/start-weight.mjs');

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

const live = await benchDashboard();
if (live === undefined) {
  console.log('Nothing is measured in a browser: Chromium is missing, or the dashboard is not built.\n');
} else {
  const { counts, latencyP95Ms, latencyMedianMs, framesPerS, longestGapMs } = live;
  add(
    `count on the screen after its samples came, foot, six channels at 1000 Hz, ${counts} counts`,
    `p95 ${latencyP95Ms.toFixed(0)} ms, median ${latencyMedianMs.toFixed(0)} ms`,
    'p95 at most 50 ms',
    latencyP95Ms <= 50,
  );
  add(
    'frames a second while these stream, device pixel ratio 1',
    `${framesPerS.toFixed(1)}, longest wait ${longestGapMs.toFixed(0)} ms`,
    'the display: 60',
    framesPerS >= 59,
  );
  for (const { trials, people, firstMs, keyMs, openMs, listMs, personMs } of await benchLargeClinic()) {
    const clinic = `encrypted clinic of ${people} people, ${trials} trials with traces`;
    const [list, key] = [openMs, keyMs].map((ms) => `${ms.toFixed(0)} ms`);
    add(`${clinic}: list after the passphrase`, `${list}, of these Argon2id ${key}`, 'at most 1000 ms', openMs <= 1000);
    rows.push([
      `${clinic}: the same, nothing kept of the list`,
      `${firstMs.toFixed(0)} ms`,
      'once, as after a backup',
      '-',
    ]);
    add(`${clinic}: list again`, `${listMs.toFixed(0)} ms`, 'at most 1000 ms', listMs <= 1000);
    add(`${clinic}: result of one person, the first`, `${personMs.toFixed(0)} ms`, 'at most 300 ms', personMs <= 300);
  }
  const { kib, files } = startBundleKib();
  add(`start of the dashboard, ${files} files gzipped`, `${kib.toFixed(0)} KiB`, 'below 150 KiB', kib < 150);
}

print(rows);
