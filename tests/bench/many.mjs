// Recordings in their thousands, and one of 500 MB: the command line beside a script with SciPy, pandas and a pool of processes.
// npm run bench -- many [FILES] [SMALL FILES] [MEGABYTES]; needs a build. Recordings are made once, in the temporary folder.
import { spawn, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  closeSync,
  existsSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { simulateSet } from '@surae/simulation';

const BIN = 'apps/cli/bin/surae.js';
const SCRIPT = 'tests/reference/many_yardstick.py';
const place = join(tmpdir(), 'surae-bench-many');

/** A heel that is simulated, at an even rate for so long; after the set the person stands. */
function recording(seed, count, lengthS, rateHz) {
  const { groups } = simulateSet({ placement: 'heel', level: 'typical', seed, count, cycleS: 2 }).trace;
  const [{ timesS, channels }] = groups;
  const heights = channels[0].samples;
  const last = timesS.length - 1;
  const lines = ['time [s],heel_height [mm]'];
  for (let row = 0, at = 0; row < lengthS * rateHz; row += 1) {
    const timeS = row / rateHz;
    while (at < last && timesS[at + 1] <= timeS) at += 1;
    // beyond its end a standing heel that wavers by a tenth of a millimetre
    const height =
      at < last
        ? heights[at] + ((timeS - timesS[at]) / (timesS[at + 1] - timesS[at])) * (heights[at + 1] - heights[at])
        : heights[last] + 1e-4 * Math.sin(row);
    lines.push(`${timeS.toFixed(3)},${(1000 * height).toFixed(4)}`);
  }
  return `${lines.join('\n')}\n`;
}

/** A folder of so many recordings, made once. */
function folderOf(name, files, make) {
  const folder = join(place, `${name}-${files}`);
  if (existsSync(folder)) return folder;
  const part = `${folder}.part`;
  rmSync(part, { recursive: true, force: true });
  mkdirSync(part, { recursive: true });
  for (let at = 0; at < files; at += 1) writeFileSync(join(part, `${String(at).padStart(6, '0')}.csv`), make(at));
  renameSync(part, folder);
  return folder;
}

/** One recording of an hour at 2000 Hz, with a set of 25 raises in it: the six channels of a foot, and as many megabytes as asked. */
function largeFile(megabytes) {
  const folder = join(place, `large-${megabytes}`);
  const path = join(folder, 'foot.csv');
  if (existsSync(path)) return folder;
  mkdirSync(folder, { recursive: true });
  const { groups } = simulateSet({ placement: 'foot', level: 'typical', seed: 3, count: 25, cycleS: 2 }).trace;
  const [{ timesS, channels }] = groups;
  const last = timesS.length - 1;
  const file = openSync(`${path}.part`, 'w');
  writeSync(file, 'time [s],acc_x [m/s2],acc_y [m/s2],acc_z [m/s2],gyro_x [rad/s],gyro_y [rad/s],gyro_z [rad/s]\n');
  let text = '';
  for (let row = 0, at = 0, size = 0; size < megabytes * 1e6 && row < 7_200_000; row += 1) {
    const timeS = row / 2000;
    while (at < last && timesS[at + 1] <= timeS) at += 1;
    const cells = channels.map(({ samples }, c) =>
      (at < last
        ? samples[at] + ((timeS - timesS[at]) / (timesS[at + 1] - timesS[at])) * (samples[at + 1] - samples[at])
        : samples[last] + 1e-3 * Math.sin(row * (c + 1))
      ).toFixed(7),
    );
    text += `${timeS.toFixed(4)},${cells.join(',')}\n`;
    if (text.length > 1 << 20) {
      size += writeSync(file, text);
      text = '';
    }
  }
  writeSync(file, text);
  closeSync(file);
  renameSync(`${path}.part`, path);
  return folder;
}

function bytesIn(folder) {
  return readdirSync(folder).reduce((sum, name) => sum + statSync(join(folder, name)).size, 0);
}

/** Runs a command to its end: seconds, and the most memory that it held [MB]. */
async function run(command, args) {
  const start = performance.now();
  const child = spawn(command, args, { stdio: ['ignore', 'pipe', 'pipe'] });
  let [out, error, peakMb] = ['', '', 0];
  child.stdout.on('data', (chunk) => (out += chunk));
  child.stderr.on('data', (chunk) => (error += chunk));
  const watch = setInterval(() => {
    try {
      const found = /VmHWM:\s+(\d+) kB/.exec(readFileSync(`/proc/${child.pid}/status`, 'latin1'));
      peakMb = Math.max(peakMb, Number(found?.[1] ?? 0) / 1024);
    } catch {
      // it has ended, or this system has no such file
    }
  }, 50);
  const code = await new Promise((done) => child.on('exit', done));
  clearInterval(watch);
  if (code !== 0) throw new Error(`${command} ${args.join(' ')} ended with ${code}: ${error.slice(0, 500)}`);
  return { seconds: (performance.now() - start) / 1000, peakMb, out };
}

async function surae(folder, workers, placement = 'heel') {
  const out = join(place, 'out');
  rmSync(out, { recursive: true, force: true });
  const more = placement === 'foot' ? ['--heel-lever-mm', '186'] : [];
  const found = await run(process.execPath, [
    BIN,
    'assess',
    folder,
    '--placement',
    placement,
    ...more,
    '--csv',
    out,
    '--no-journal',
    '--workers',
    String(workers),
  ]);
  const table = readFileSync(join(out, 'repetitions.csv'));
  return {
    ...found,
    hash: createHash('sha256').update(table).digest('hex'),
    rows: table.toString().split('\r\n').length - 2,
  };
}

/** A Python that has what the script needs; undefined where there is none. */
function python() {
  return ['python3', '/usr/bin/python3'].find((one) => spawnSync(one, ['-c', 'import scipy, pandas']).status === 0);
}

async function script(command, folder, workers) {
  const { out, seconds } = await run(command, [SCRIPT, folder, join(place, 'script.csv'), String(workers)]);
  return { ...JSON.parse(out), wholeSeconds: seconds };
}

/** All of it; rows for the table of figures. */
export async function benchMany({ files = 2000, small = 10_000, megabytes = 500 } = {}) {
  mkdirSync(place, { recursive: true });
  const rows = [];
  const add = (what, measured, yardstick, reached) => rows.push([what, measured, yardstick, reached]);
  const cores = availableParallelism();
  const folder = folderOf('heel-60s', files, (at) => recording(at + 1, 25, 60, 100));
  const size = bytesIn(folder) / 1e6;
  const rate = ({ seconds }) => `${(files / seconds).toFixed(1)} files/s, ${(size / seconds).toFixed(1)} MB/s`;

  const one = await surae(folder, 1);
  const two = await surae(folder, 2);
  if (one.hash !== two.hash) throw new Error('one and two workers wrote different tables');
  const all = cores === 2 ? two : await surae(folder, cores);
  const what = `${files} heels of 60 s at 100 Hz`;
  add(`${what}, one worker`, `${rate(one)}, ${one.peakMb.toFixed(0)} MB`, '', '-');
  const gain = one.seconds / two.seconds;
  add(
    `${what}, two workers`,
    `${rate(two)}, ${two.peakMb.toFixed(0)} MB; ${gain.toFixed(2)} times one`,
    'at least 1.7 times one',
    gain >= 1.7 ? 'yes' : 'NO',
  );

  const command = python();
  if (command === undefined) add(`${what}, script`, 'not measured', 'no Python with SciPy and pandas here', '-');
  else {
    const theirs = await script(command, folder, cores);
    const agree = Math.abs(theirs.repetitions - all.rows) / all.rows;
    if (agree > 0.05) throw new Error(`the script finds ${theirs.repetitions} repetitions, surae ${all.rows}`);
    const ratio = theirs.wholeSeconds / all.seconds;
    const { scipy, pandas } = theirs.versions;
    const yardstick = `SciPy ${scipy}, pandas ${pandas}, ${cores} processes: ${rate({ seconds: theirs.wholeSeconds })}, ${theirs.peakMb.toFixed(0)} MB; at least 1.5 times`;
    add(`${what}, ${cores} workers`, `${ratio.toFixed(2)} times as fast`, yardstick, ratio >= 1.5 ? 'yes' : 'NO');
  }

  const few = await surae(
    folderOf('heel-10s', 100, (at) => recording(at + 1, 3, 10, 100)),
    cores,
  );
  const many = await surae(
    folderOf('heel-10s', small, (at) => recording((at % 100) + 1, 3, 10, 100)),
    cores,
  );
  const growth = many.peakMb - few.peakMb;
  add(
    `memory, 100 and ${small} files of 10 s`,
    `${few.peakMb.toFixed(0)} and ${many.peakMb.toFixed(0)} MB, ${(small / many.seconds).toFixed(1)} files/s`,
    'flat: at most 20 % more',
    growth <= 0.2 * few.peakMb ? 'yes' : 'NO',
  );

  if (megabytes > 0) {
    const large = largeFile(megabytes);
    const mb = bytesIn(large) / 1e6;
    const alone = await surae(large, 1, 'foot');
    const name = `one foot of ${mb.toFixed(0)} MB, one worker`;
    const measured = `${alone.seconds.toFixed(1)} s, ${(mb / alone.seconds).toFixed(0)} MB/s, ${alone.peakMb.toFixed(0)} MB`;
    if (command === undefined) add(name, measured, 'no Python with SciPy and pandas here', '-');
    else {
      const theirs = await script(command, large, 1);
      if (Math.abs(theirs.repetitions - alone.rows) > 2)
        throw new Error(`the script finds ${theirs.repetitions} repetitions, surae ${alone.rows}`);
      const ratio = theirs.wholeSeconds / alone.seconds;
      const yardstick = `the script: ${theirs.wholeSeconds.toFixed(1)} s, ${(mb / theirs.wholeSeconds).toFixed(0)} MB/s, ${theirs.peakMb.toFixed(0)} MB; at least 1.5 times`;
      add(name, `${measured}; ${ratio.toFixed(2)} times as fast`, yardstick, ratio >= 1.5 ? 'yes' : 'NO');
    }
  }
  return rows;
}
