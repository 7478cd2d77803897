// How good a table of repetitions is, by the truth of the simulation: speed says nothing of two tables of which one is worse.
import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { Figures } from '../accuracy/figures.mjs';
import { heelSet } from './many-recordings.mjs';

/** Repetitions of a table by the name of their file. */
function byFile(path) {
  const [head, ...lines] = readFileSync(path, 'utf8').trimEnd().split(/\r?\n/);
  const names = head.split(',');
  const [file, start, top, height] = ['file', 'start_s', 'top_s', 'height_mm'].map((name) => names.indexOf(name));
  const found = new Map();
  for (const line of lines) {
    const cells = line.split(',');
    const name = basename(cells[file]);
    if (!found.has(name)) found.set(name, []);
    found.get(name).push({ startS: +cells[start], topS: +cells[top], heightM: +cells[height] / 1000 });
  }
  return found;
}

/** Figures of the first so many recordings of so many raises that end within the time, in words. */
export function qualityOf(path, files, count, lengthS) {
  const found = byFile(path);
  const figures = new Figures();
  for (let at = 0; at < files; at += 1) {
    const { repetitions } = heelSet(at + 1, count).truth;
    figures.add({
      seed: at + 1,
      raises: found.get(`${String(at).padStart(6, '0')}.csv`) ?? [],
      repetitions: repetitions.filter(({ endS }) => endS < lengthS),
      heightOf: (repetition) => repetition.heelHeightM,
    });
  }
  const { exact, topP95Ms, startP95Ms, heightRmseMm } = figures.summary();
  const [top, start] = [topP95Ms, startP95Ms].map((ms) => ms.toFixed(0));
  return `exact ${(100 * exact).toFixed(1)} %, top p95 ${top} ms, start p95 ${start} ms, height ${heightRmseMm.toFixed(2)} mm`;
}
