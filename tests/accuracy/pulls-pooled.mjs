import { pullGoals } from './pulls-goals.mjs';

function table(head, rows) {
  return [head, head.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
}

function cell(value, digits) {
  return value === undefined ? '' : value.toFixed(digits);
}

/** Figures of fast efforts by the form of their rise, in names of the summary of one form. */
const familyFigures = [
  ['onset p95 ms (in 95 %)', 'onsetP95Ms', 'onsetCoverage', 1],
  ['rate 0-200 ms RMS % (in 95 %)', 'riseRmsPercent', 'riseCoverage', 2],
];

/** Onset and rate of fast efforts by the form of their rise, and by how it begins, with the share of intervals that hold the truth; * misses the goal. */
export function familyTable(rows) {
  const forms = [...new Set(rows.flatMap(({ summary }) => Object.keys(summary.families)))].sort();
  const names = [...forms, ...new Set(rows.flatMap(({ summary }) => Object.keys(summary.groups)))];
  return familyFigures
    .map(([title, figure, coverage, digits]) => {
      const lines = rows
        .filter(({ summary }) => forms.some((name) => summary.families[name]?.[figure] !== undefined))
        .map(({ level, sampleRateHz, summary }) => [
          level,
          sampleRateHz,
          ...names.map((name) => {
            const one = summary.families[name] ?? summary.groups[name];
            if (one?.[figure] === undefined) return '';
            const short = one[figure] > (pullGoals(level, sampleRateHz)[figure] ?? Infinity) ? ' *' : '';
            return `${cell(one[figure], digits)} (${cell(one[coverage], 3)})${short}`;
          }),
        ]);
      return table([title, 'rate Hz', ...names], lines);
    })
    .join('\n\n');
}

/** Intervals of every level but the clean one together, by rate: share that holds the truth, and of how many. */
export function coverageTable(rows) {
  const disturbed = rows.filter(({ level }) => level !== 'clean');
  const rates = [...new Set(disturbed.map(({ sampleRateHz }) => sampleRateHz))];
  const kinds = ['onset', 'distinctOnset', 'rampOnset', 'peak', 'mean', 'rise'];
  const line = (name, some) => [
    name,
    ...kinds.map((kind) => {
      const held = some.reduce((sum, { summary }) => sum + summary.counts[kind].held, 0);
      const of = some.reduce((sum, { summary }) => sum + summary.counts[kind].of, 0);
      return of === 0 ? '' : `${cell(held / of, 3)} (${of})`;
    }),
  ];
  const lines = rates.map((hz) =>
    line(
      `${hz} Hz`,
      disturbed.filter(({ sampleRateHz }) => sampleRateHz === hz),
    ),
  );
  if (rates.length > 1) lines.push(line('together', disturbed));
  return table(['in 95 % (of)', 'onset', 'distinct', 'ramp onset', 'peak', '0.5 s mean', 'rate 0-200 ms'], lines);
}
