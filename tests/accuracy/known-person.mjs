// How well a trunk or platform set could be counted by an observer who knows the person and hears nothing but the set:
//   node tests/accuracy/known-person.mjs [--sets N] [--from SEED] [--kinds trunk,platform] [--levels typical,hard]
//       [--fine] [--no-build]
// It knows of each simulated person what no method can: tempo, height, shapes, shares of the cycle, fatigue, all spreads, how
// often there are rests, pauses, half repetitions and incomplete returns, the spectrum of the wobble, and how long people stand
// quietly before and after. Which repetition happens when it has to infer, and it weighs every possible series at once. Rise,
// hold and fall are taken to keep their shares of each repetition, which they do within 2 or 3 %. In brackets: the chance that it
// gave to its own count, and to its own range; where both agree with what happens, the inference is sound.
// --fine halves the steps of time and tempo, to see that the figures do not hang on them.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { firstSealedSeed, kinds } from './kinds.mjs';
import { observe, usualGrid } from './known-person/observe.mjs';
import { ObserverFigures } from './known-person/observer-figures.mjs';
import { observedLevels, quietSet } from './known-person/quiet-set.mjs';

const withClaim = (share, claimed) => `${share.toFixed(3)} (${claimed.toFixed(3)})`;

const columns = [
  ['sets', ({ sets }) => `${sets}`],
  ['exact count (claimed)', ({ exact, claimedExact }) => withClaim(exact, claimedExact)],
  ['within one', ({ withinOne }) => withinOne.toFixed(3)],
  ['F1', ({ f1 }) => f1.toFixed(3)],
  ['top, p95 ms', ({ topP95Ms }) => topP95Ms.toFixed(0)],
  ['count in 95 % (claimed)', ({ countCoverage, claimedCoverage }) => withClaim(countCoverage, claimedCoverage)],
  ['width of the count interval, mean', ({ countWidthMean }) => countWidthMean.toFixed(1)],
];

/** Figures of the observer over sets of one kind and level. */
export function measureObserver({ simulation, kind, level, sets, from, grid = usualGrid, progress = () => {} }) {
  const figures = new ObserverFigures();
  const { placement } = kinds[kind];
  for (let seed = from; seed < from + sets; seed++) {
    const { set, quiet } = quietSet(simulation, kind, level, seed);
    const answer = observe({ placement, set, quiet, seed, wayGone: simulation.wayGone, grid });
    figures.add(answer, set.truth.repetitions);
    progress(seed, answer, set);
  }
  return figures;
}

async function print() {
  process.chdir(fileURLToPath(new URL('../..', import.meta.url)));
  const { values } = parseArgs({
    options: {
      sets: { type: 'string', default: '300' },
      from: { type: 'string', default: String(firstSealedSeed) },
      kinds: { type: 'string', default: 'trunk,platform' },
      levels: { type: 'string', default: observedLevels.join(',') },
      fine: { type: 'boolean', default: false },
      'no-build': { type: 'boolean', default: false },
    },
  });
  if (!values['no-build']) {
    const built = spawnSync('npx', ['tsc', '-b', 'packages/simulation'], { stdio: 'inherit' });
    if (built.status !== 0) process.exit(1);
  }
  const simulation = await import('@surae/simulation');
  const share = values.fine ? 0.5 : 1;
  const grid = { stepS: share * usualGrid.stepS, paceStep: share * usualGrid.paceStep };
  console.log(
    `| kind | level | ${columns.map(([name]) => name).join(' | ')} |\n|${' --- |'.repeat(columns.length + 2)}`,
  );
  for (const kind of values.kinds.split(',')) {
    for (const level of values.levels.split(',')) {
      const startMs = performance.now();
      const request = { simulation, kind, level, sets: Number(values.sets), from: Number(values.from), grid };
      const summary = measureObserver(request).summary();
      process.stderr.write(`${kind} ${level}: ${((performance.now() - startMs) / 1000).toFixed(0)} s\n`);
      console.log(`| ${[kind, level, ...columns.map(([, show]) => show(summary))].join(' | ')} |`);
    }
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await print();
