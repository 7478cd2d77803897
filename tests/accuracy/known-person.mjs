// How well a trunk or platform set could be counted by an observer who knows the person and hears nothing but the set:
//   node tests/accuracy/known-person.mjs [--sets N] [--from SEED] [--kinds trunk,platform] [--levels typical,hard]
//       [--lacking stillness,rest,moves+shapes] [--analysis] [--coarse | --fine] [--no-build]
// It knows of each simulated person what no method can: tempo, height, shapes, shares of the cycle, fatigue, all spreads, how
// often there are rests, pauses, half repetitions and incomplete returns, the spectrum of the wobble, and how long people stand
// quietly before and after. Which repetition happens when it has to infer, and it weighs every possible series at once. Rise,
// hold and fall are taken to keep their shares of each repetition, which they do within 2 or 3 %. In brackets: the chance that it
// gave to its own count, and to its own range; where both agree with what happens, the inference is sound.
// --fine halves the steps of time and tempo, to see that the figures do not hang on them; --coarse doubles them, which is quicker.
// --lacking takes parts of what it knows as they are in people in general, see in-general.mjs: one row for all that it knows and
// one for each of the list, several parts at once joined by +. How many sets are right only with the part, or only without it, is
// told beside. --analysis adds a row for what the analysis counts in the very same sets.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { firstSealedSeed, kinds } from './kinds.mjs';
import { takenInGeneral } from './known-person/in-general.mjs';
import { observe, usualGrid } from './known-person/observe.mjs';
import { ObserverFigures } from './known-person/observer-figures.mjs';
import { observedLevels, quietSet } from './known-person/quiet-set.mjs';
import { detect } from './measure.mjs';

const withClaim = (share, claimed) => share.toFixed(3) + (Number.isNaN(claimed) ? '' : ` (${claimed.toFixed(3)})`);

const changes = ({ gained, lost }) => `+${gained} −${lost}`;

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
export function measureObserver({
  simulation,
  kind,
  level,
  sets,
  from,
  lacking = [],
  grid = usualGrid,
  progress = () => {},
}) {
  const figures = new ObserverFigures();
  const { placement } = kinds[kind];
  for (let seed = from; seed < from + sets; seed++) {
    const heard = quietSet(simulation, kind, level, seed);
    const { set, quiet } = takenInGeneral(heard, lacking, simulation.faultTable, level);
    const answer = observe({ placement, set, quiet, seed, wayGone: simulation.wayGone, grid });
    figures.add(answer, set.truth.repetitions);
    progress(seed, answer, set);
  }
  return figures;
}

/** Figures of the analysis over the very same sets; it claims no chance for a single count. */
function measureAnalysis({ simulation, analysis, kind, level, sets, from }) {
  const figures = new ObserverFigures();
  const chances = { count: Number.NaN, range: Number.NaN };
  for (let seed = from; seed < from + sets; seed++) {
    const { set } = quietSet(simulation, kind, level, seed);
    const { raises, countLow, countHigh } = detect(analysis, kinds[kind].placement, set);
    const range = { low: countLow, high: countHigh };
    const topsS = raises.map(({ topS }) => topS);
    figures.add({ count: raises.length, safest: raises.length, range, topsS, chances }, set.truth.repetitions);
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
      lacking: { type: 'string', default: '' },
      analysis: { type: 'boolean', default: false },
      coarse: { type: 'boolean', default: false },
      fine: { type: 'boolean', default: false },
      'no-build': { type: 'boolean', default: false },
    },
  });
  if (!values['no-build']) {
    const built = spawnSync('npx', ['tsc', '-b', 'packages/simulation', 'packages/analysis'], { stdio: 'inherit' });
    if (built.status !== 0) process.exit(1);
  }
  const simulation = await import('@surae/simulation');
  const analysis = values.analysis ? await import('@surae/analysis') : undefined;
  const share = values.fine ? 0.5 : values.coarse ? 2 : 1;
  const grid = { stepS: share * usualGrid.stepS, paceStep: share * usualGrid.paceStep };
  const lacks = values.lacking === '' ? [] : values.lacking.split(',').map((parts) => parts.split('+'));
  console.log(
    `| kind | level | lacks | ${columns.map(([name]) => name).join(' | ')} |\n|${' --- |'.repeat(columns.length + 3)}`,
  );
  for (const kind of values.kinds.split(',')) {
    for (const level of values.levels.split(',')) {
      const request = { simulation, kind, level, sets: Number(values.sets), from: Number(values.from), grid };
      const row = (lack, figures) => {
        console.log(`| ${[kind, level, lack, ...columns.map(([, show]) => show(figures.summary()))].join(' | ')} |`);
      };
      const startMs = performance.now();
      const knowing = measureObserver(request);
      process.stderr.write(`${kind} ${level}: ${((performance.now() - startMs) / 1000).toFixed(0)} s\n`);
      row('nothing', knowing);
      for (const lacking of lacks) {
        const figures = measureObserver({ ...request, lacking });
        row(`${lacking.join(', ')}: ${changes(figures.against(knowing))}`, figures);
      }
      if (analysis !== undefined) {
        const figures = measureAnalysis({ ...request, analysis });
        row(`all, as the analysis does: ${changes(figures.against(knowing))}`, figures);
      }
    }
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await print();
