function cell(value, digits) {
  return value === undefined || value === null ? '' : value.toFixed(digits);
}

/** Our figure, with the yardstick's beside it in brackets where there is one. */
function both(ours, yardstick, key, digits) {
  const beside = yardstick === undefined ? '' : cell(yardstick[key], digits);
  return beside === '' ? cell(ours[key], digits) : `${cell(ours[key], digits)} (${beside})`;
}

const columns = [
  ['exact count', (ours, other) => both(ours, other, 'exact', 3)],
  ['within one', (ours, other) => both(ours, other, 'withinOne', 3)],
  ['F1', (ours, other) => both(ours, other, 'f1', 3)],
  ['top p95 ms', (ours, other) => both(ours, other, 'topP95Ms', 0)],
  ['limit of the top', (ours) => cell(ours.topLimitMs, 0)],
  ['start p95 ms', (ours, other) => both(ours, other, 'startP95Ms', 0)],
  ['height RMSE mm', (ours, other) => both(ours, other, 'heightRmseMm', 1)],
  ['height bias mm', (ours) => cell(ours.heightBiasMm, 1)],
  ['height in 95 %', (ours) => cell(ours.heightCoverage, 3)],
  ['top in 95 %', (ours) => cell(ours.topCoverage, 3)],
  ['count in 95 %', (ours) => cell(ours.countCoverage, 3)],
  ['count width median / mean', (ours) => `${cell(ours.countWidthMedian, 0)} / ${cell(ours.countWidthMean, 1)}`],
  [
    'SNR median (below 4)',
    (ours) =>
      ours.signalToNoiseMedian === undefined
        ? ''
        : `${cell(ours.signalToNoiseMedian, 1)} (${cell(100 * ours.signalToNoiseBelow4, 0)} %)`,
  ],
];

/** The head of the table. */
export function tableHead() {
  const names = ['kind', 'level', 'sets', ...columns.map(([name]) => name)];
  return `| ${names.join(' | ')} |\n|${'---|'.repeat(names.length)}`;
}

/** One row: `ours` and `yardstick` are summaries; the yardstick may be missing. */
export function tableRow(kind, level, ours, yardstick) {
  const cells = columns.map(([, show]) => show(ours, yardstick));
  return `| ${[kind, level, ours.sets, ...cells].join(' | ')} |`;
}
