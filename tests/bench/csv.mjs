// Reading plain numeric CSV: our strict byte reader against a bare papaparse loop that converts with Number().
import { readRecording, readTable } from '@surae/records';
import Papa from 'papaparse';

/** Seeded linear congruential steps: the same file on every run. */
function numbers(seed) {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

/** A file of six columns at 1000 Hz with decimals as sensors write them. */
export function makeCsv(rowCount) {
  const next = numbers(7);
  const lines = ['time [s],acc_x [m/s2],acc_y [m/s2],acc_z [m/s2],gyro_y [deg/s],force [N]'];
  for (let row = 0; row < rowCount; row += 1) {
    const acceleration = [next() - 0.5, next() - 0.5, 9.8 + next()].map((value) => value.toFixed(4));
    lines.push(
      `${(row / 1000).toFixed(3)},${acceleration.join(',')},${(60 * next() - 30).toFixed(3)},${(800 * next()).toFixed(2)}`,
    );
  }
  return `${lines.join('\n')}\n`;
}

/** The quickest of the ways to loop over papaparse that were tried: a step a row, line end and delimiter given. */
function barePapaparse(text, rowCount) {
  const columns = [];
  let row = -1;
  Papa.parse(text, {
    delimiter: ',',
    newline: '\n',
    step: ({ data }) => {
      if (row < 0) for (let column = 0; column < data.length; column += 1) columns.push(new Float64Array(rowCount));
      else if (data.length === columns.length) {
        for (let column = 0; column < columns.length; column += 1) columns[column][row] = Number(data[column]);
      }
      row += 1;
    },
  });
  return columns;
}

function bestMs(work, repeats) {
  let best = Infinity;
  for (let repeat = 0; repeat < repeats; repeat += 1) {
    const start = performance.now();
    work();
    best = Math.min(best, performance.now() - start);
  }
  return best;
}

/** Times both readers on the same file after proving that they give the same numbers. */
export function benchCsv({ rowCount = 300_000, repeats = 5 } = {}) {
  const text = makeCsv(rowCount);
  const bytes = new TextEncoder().encode(text);
  const ours = readTable(bytes).columns;
  const papa = barePapaparse(text, rowCount);
  for (const [column, values] of papa.entries()) {
    for (const [row, value] of values.entries()) {
      if (!Object.is(ours[column][row], value)) throw new Error(`row ${row}, column ${column}: the readers differ`);
    }
  }
  const megabytes = bytes.length / 1e6;
  const oursMs = bestMs(() => readTable(bytes), repeats);
  const papaMs = bestMs(() => barePapaparse(text, rowCount), repeats);
  const recordingMs = bestMs(() => readRecording(bytes), repeats);
  return {
    name: 'reading plain numeric CSV',
    megabytes,
    oursMbPerS: (1000 * megabytes) / oursMs,
    papaparseMbPerS: (1000 * megabytes) / papaMs,
    ratio: papaMs / oursMs,
    recordingMbPerS: (1000 * megabytes) / recordingMs,
    required: 2.5,
  };
}

if (import.meta.url === `file://${process.argv[1]}`) console.log(benchCsv());
