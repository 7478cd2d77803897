// Prints how often 95 % intervals hold the truth, with the errors of the body model drawn:
//   node tests/accuracy/coverage.mjs [--sets N] [--from SEED] [--kinds heel,trunk]
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { Figures } from './figures.mjs';
import { firstSealedSeed, kinds } from './kinds.mjs';
import { measure } from './measure.mjs';
import { modelErrors } from './model-errors.mjs';

const disturbed = ['typical', 'hard', 'field'];

/** Figures over `sets` sets of one kind, a third of them at each disturbed level. */
export function coverage({ simulation, analysis, kind, sets, from, progress = () => {} }) {
  const figures = new Figures();
  const each = Math.ceil(sets / disturbed.length);
  disturbed.forEach((level, i) => {
    const faultsOf = modelErrors;
    measure({ simulation, analysis, kind, level, sets: each, from: from + i * each, figures, faultsOf, progress });
  });
  return figures;
}

/** The same with typical sets only: the width of the interval of the count. */
export function typicalCounts({ simulation, analysis, kind, sets, from }) {
  return measure({ simulation, analysis, kind, level: 'typical', sets, from, faultsOf: modelErrors });
}

async function print() {
  const { values } = parseArgs({
    options: {
      sets: { type: 'string', default: '500' },
      from: { type: 'string', default: String(firstSealedSeed + 1000) },
      kinds: { type: 'string', default: Object.keys(kinds).join(',') },
    },
  });
  const simulation = await import('@surae/simulation');
  const analysis = await import('@surae/analysis');
  console.log(
    '| kind | sets | height in 95 % | top in 95 % | count in 95 % | width of the count interval, typical: median |',
  );
  console.log('|---|---|---|---|---|---|');
  for (const kind of values.kinds.split(',')) {
    const request = { simulation, analysis, kind, sets: Number(values.sets), from: Number(values.from) };
    const { sets, heightCoverage, topCoverage, countCoverage } = coverage(request).summary();
    const { countWidthMedian } = typicalCounts({ ...request, sets: Math.ceil(request.sets / 5) }).summary();
    const cells = [heightCoverage, topCoverage, countCoverage].map((share) => share.toFixed(3));
    console.log(`| ${[kind, sets, ...cells, countWidthMedian].join(' | ')} |`);
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await print();
