import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Figures } from './figures.mjs';
import { kinds, setRequest } from './kinds.mjs';

const script = 'tests/reference/yardstick.py';
const columnNames = {
  force: 'force [N]',
  'heel-height': 'heel_height [m]',
  acceleration: 'acc_# [m/s2]',
  'angular-velocity': 'gyro_# [rad/s]',
};

/** A simulated trace, which has one group, as comma-separated text. */
function csvOf(trace) {
  const [{ timesS, channels }] = trace.groups;
  const names = channels.map(({ quantity, axis }) => columnNames[quantity].replace('#', axis));
  const lines = [['time [s]', ...names].join(',')];
  for (let i = 0; i < timesS.length; i++) {
    lines.push([timesS[i], ...channels.map(({ samples }) => samples[i].toPrecision(9))].join(','));
  }
  return `${lines.join('\n')}\n`;
}

/** Figures of the SciPy script for one kind and level: the traces go through CSV files in a temporary folder. */
function yardstickFigures({ simulation, kind, level, sets, from }) {
  const { placement, heightOf } = kinds[kind];
  const folder = mkdtempSync(join(tmpdir(), 'yardstick-'));
  try {
    const list = ['file,placement,heel_lever_m'];
    const truths = new Map();
    for (let seed = from; seed < from + sets; seed++) {
      const { trace, subject, truth } = simulation.simulateSet(setRequest(kind, level, seed));
      const file = `${seed}.csv`;
      writeFileSync(join(folder, file), csvOf(trace));
      list.push(`${file},${placement},${subject.heelLeverM}`);
      truths.set(seed, truth.repetitions);
    }
    writeFileSync(join(folder, 'list.csv'), `${list.join('\n')}\n`);
    execFileSync('python3', [script, folder], { stdio: ['ignore', 'inherit', 'inherit'] });
    const found = JSON.parse(readFileSync(join(folder, 'found.json'), 'utf8'));
    const figures = new Figures();
    for (const [seed, repetitions] of truths) {
      figures.add({ seed, raises: found[`${seed}.csv`].raises, repetitions, heightOf });
    }
    return figures.summary();
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const keptKeys = ['sets', 'exact', 'withinOne', 'f1', 'topP95Ms', 'startP95Ms', 'heightRmseMm'];

/** Runs the SciPy script over every wanted kind and level and writes its figures with the command that made them. */
export function makeYardstick({ simulation, wanted, sets, from, path }) {
  const scipy = execFileSync('python3', ['-c', 'import scipy; print(scipy.__version__)'], { encoding: 'utf8' }).trim();
  const before = existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : undefined;
  const figures = before !== undefined && before.from === from && before.sets === sets ? before.figures : {};
  for (const { kind, level } of wanted) {
    const summary = yardstickFigures({ simulation, kind, level, sets, from });
    figures[kind] ??= {};
    figures[kind][level] = Object.fromEntries(keptKeys.map((key) => [key, summary[key] ?? null]));
    process.stderr.write(`yardstick ${kind} ${level}: exact ${summary.exact.toFixed(3)}\n`);
    mkdirSync('tests/reference', { recursive: true });
    const tool = `SciPy ${scipy}`;
    const command = `node tests/accuracy/table.mjs --yardstick --sets ${sets} --from ${from}`;
    writeFileSync(path, `${JSON.stringify({ tool, script, command, sets, from, figures }, null, 2)}\n`);
  }
}
