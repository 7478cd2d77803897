// Recordings in their thousands, and one of 500 MB: the command line beside three scripts with SciPy, pandas and a pool of processes. One does
// the same work as a script would: recording by recording it fits and judges every repetition and draws the interval of the count. One shows
// how far NumPy goes: the same joint fit of shapes and repetitions, written for many recordings at once. One filters and takes peaks.
// npm run bench -- many [FILES] [MANY FILES] [MEGABYTES]; needs a build. Recordings are made once, in the temporary folder.
import { spawn, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { qualityOf } from './many-quality.mjs';
import { folderOf, heelRecording, largeFile, place } from './many-recordings.mjs';

const BIN = 'apps/cli/bin/surae.js';
const SAME_WORK = 'tests/reference/many_fits.py';
const BATCHED = 'tests/reference/batched/many_joint_fits.py';
const PLAIN = 'tests/reference/many_yardstick.py';
/** Raises and length of the recordings, and how many of them are held against their truth. */
const [RAISES, LENGTH_S, JUDGED] = [25, 60, 200];
/** So few recordings that memory may not grow by a fifth from here to many times as many. */
const FEW = 100;
/** Ticks of processor time in a second, as Linux counts them. */
const TICKS_PER_S = 100;

function bytesIn(folder) {
  return readdirSync(folder).reduce((sum, name) => sum + statSync(join(folder, name)).size, 0);
}

/** Processor time of a process and its threads so far [s]. */
function processorS(pid) {
  // after the name in brackets, which may hold anything: user and system time are fields 14 and 15 of proc(5)
  const fields = readFileSync(`/proc/${pid}/stat`, 'latin1').split(') ').at(-1).split(' ');
  return (Number(fields[11]) + Number(fields[12])) / TICKS_PER_S;
}

/** Runs a command to its end: seconds, processor time of itself [s], and the most memory that it held [MB]. */
async function run(command, args) {
  const start = performance.now();
  // one thread for each process of a script: there are as many processes as cores
  const env = { ...process.env, OMP_NUM_THREADS: '1', OPENBLAS_NUM_THREADS: '1', MKL_NUM_THREADS: '1' };
  const child = spawn(command, args, { stdio: ['ignore', 'pipe', 'pipe'], env });
  let [out, error, peakMb, cpuS] = ['', '', 0, 0];
  child.stdout.on('data', (chunk) => (out += chunk));
  child.stderr.on('data', (chunk) => (error += chunk));
  const watch = setInterval(() => {
    try {
      const found = /VmHWM:\s+(\d+) kB/.exec(readFileSync(`/proc/${child.pid}/status`, 'latin1'));
      cpuS = processorS(child.pid);
      peakMb = Math.max(peakMb, Number(found?.[1] ?? 0) / 1024);
    } catch {
      // it has ended, or this system has no such file
    }
  }, 50);
  const code = await new Promise((done) => child.on('exit', done));
  clearInterval(watch);
  if (code !== 0) throw new Error(`${command} ${args.join(' ')} ended with ${code}: ${error.slice(0, 500)}`);
  return { seconds: (performance.now() - start) / 1000, cpuS, peakMb, out };
}

/** Whoever comes first finds the recordings in the memory of the system, as the next does. */
function readOnce(folder) {
  for (const name of readdirSync(folder)) readFileSync(join(folder, name));
}

async function surae(folder, workers, placement = 'heel') {
  readOnce(folder);
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

async function script(command, path, folder, workers) {
  const { out, seconds } = await run(command, [path, folder, join(place, 'script'), String(workers)]);
  return { ...JSON.parse(out), wholeSeconds: seconds };
}

/** One of the scripts beside the command line on the same recordings; stops where they do not find the same. */
async function beside(command, path, folder, ours, workers, most) {
  const theirs = await script(command, path, folder, workers);
  if (Math.abs(theirs.repetitions - ours.rows) > most) {
    throw new Error(`${path} finds ${theirs.repetitions} repetitions, surae ${ours.rows}`);
  }
  return { theirs, ratio: theirs.wholeSeconds / ours.seconds, ofProcessor: theirs.cpuSeconds / ours.cpuS };
}

/** All of it; rows for the table of figures. */
export async function benchMany({ files = 2000, many = 10_000, megabytes = 500 } = {}) {
  mkdirSync(place, { recursive: true });
  const rows = [];
  const add = (what, measured, yardstick, reached) => rows.push([what, measured, yardstick, reached]);
  const cores = availableParallelism();
  const make = (at) => heelRecording(at + 1, RAISES, LENGTH_S, 100);
  const folder = folderOf('heel-60s', files, make);
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

  const quality = (path) => qualityOf(path, Math.min(files, JUDGED), RAISES, LENGTH_S);
  const ofOurs = quality(join(place, 'out', 'repetitions.csv'));
  const command = python();
  if (command === undefined) add(`${what}, scripts`, 'not measured', 'no Python with SciPy and pandas here', '-');
  else {
    const same = await beside(command, SAME_WORK, folder, all, cores, 0.05 * all.rows);
    const ofTheirs = quality(join(place, 'script-repetitions.csv'));
    const batched = await beside(command, BATCHED, folder, all, cores, 0.05 * all.rows);
    const ofBatched = quality(join(place, 'script-repetitions.csv'));
    const plain = await beside(command, PLAIN, folder, all, cores, 0.05 * all.rows);
    const ofPlain = quality(join(place, 'script.csv'));
    const { scipy, pandas } = same.theirs.versions;
    const told = ({ theirs }) =>
      `${rate({ seconds: theirs.wholeSeconds })}, ${((1000 * theirs.cpuSeconds) / files).toFixed(1)} ms of a processor a file, ${theirs.peakMb.toFixed(0)} MB`;
    const times = ({ ratio, ofProcessor }) =>
      `${ratio.toFixed(2)} times as fast, ${ofProcessor.toFixed(2)} times by processor time (${((1000 * all.cpuS) / files).toFixed(1)} ms a file)`;
    const with2 = `SciPy ${scipy}, pandas ${pandas}, ${cores} processes`;
    add(
      `${what}, ${cores} workers, beside the same work`,
      times(same),
      `${with2}: ${told(same)}; at least 1.5 times`,
      same.ratio >= 1.5 ? 'yes' : 'NO',
    );
    add(`${what}, ${cores} workers, beside joint fits in batches`, times(batched), `${with2}: ${told(batched)}`, '-');
    add(`${what}, ${cores} workers, beside a filter and peaks`, times(plain), `${with2}: ${told(plain)}`, '-');
    add(
      `what that gives, ${Math.min(files, JUDGED)} of them`,
      ofOurs,
      `same work: ${ofTheirs}; in batches: ${ofBatched}; peaks: ${ofPlain}`,
      '-',
    );
  }

  const few = await surae(folderOf('heel-60s', FEW, make), cores);
  const most = await surae(folderOf('heel-60s', many, make), cores);
  const growth = most.peakMb - few.peakMb;
  add(
    `memory, ${FEW} and ${many} heels of 60 s`,
    `${few.peakMb.toFixed(0)} and ${most.peakMb.toFixed(0)} MB, ${(many / most.seconds).toFixed(1)} files/s`,
    'flat: at most 20 % more',
    growth <= 0.2 * few.peakMb ? 'yes' : 'NO',
  );

  if (megabytes > 0) {
    const large = largeFile(megabytes);
    const mb = bytesIn(large) / 1e6;
    const alone = await surae(large, 1, 'foot');
    const name = `one foot of ${mb.toFixed(0)} MB, alone in its run`;
    const measured = `${alone.seconds.toFixed(1)} s, ${(mb / alone.seconds).toFixed(0)} MB/s, ${alone.peakMb.toFixed(0)} MB`;
    if (command === undefined) add(name, measured, 'no Python with SciPy and pandas here', '-');
    else {
      const { theirs, ratio } = await beside(command, SAME_WORK, large, alone, 1, 2);
      const yardstick = `the same work in a script: ${theirs.wholeSeconds.toFixed(1)} s, ${(mb / theirs.wholeSeconds).toFixed(0)} MB/s, ${theirs.peakMb.toFixed(0)} MB; at least 1.5 times`;
      add(name, `${measured}; ${ratio.toFixed(2)} times as fast`, yardstick, ratio >= 1.5 ? 'yes' : 'NO');
    }
  }
  return rows;
}
