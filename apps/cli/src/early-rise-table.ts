import type { AssessedEffort, Figure, PullReport } from '@surae/analysis';
import { NO_RATE_SENTENCES } from '@surae/shared';
import { withUncertainty } from './readable-number.ts';
import { within } from './report-words.ts';
import { labelled } from './text-lines.ts';

const inMs = ({ value, u }: Figure): string => withUncertainty(1000 * value, 1000 * u);

function cells({ index, early }: AssessedEffort): string[] {
  const impulse = early.impulse === null ? '' : withUncertainty(early.impulse.value, early.impulse.u);
  return [`${index}`, impulse, ...early.reached.map(({ afterS }) => (afterS === null ? '' : inMs(afterS)))];
}

/** The beginning of each effort that has one, and why the others have none; empty when all efforts were ramped up. */
export function earlyRiseTable({ efforts, unit }: PullReport, width: number): string[] {
  const given = efforts.filter(({ early }) => early.reason === null);
  const [first] = given;
  if (first === undefined) return [];
  const titles = [
    'nr',
    `0-${1000 * first.early.windowS} ms ${unit}.s`,
    ...first.early.reached.map(({ share }) => `to ${Math.round(100 * share)} % ms`),
  ];
  const rows = [titles, ...given.map(cells)];
  const widths = titles.map((_, at) => Math.max(...rows.map((row) => row[at]!.length)));
  const none = efforts.flatMap(({ index, early }) =>
    early.reason === null ? [] : labelled(`  ${index}`, within(NO_RATE_SENTENCES[early.reason].text), 6, width),
  );
  return [...rows.map((row) => `  ${row.map((text, at) => text.padStart(widths[at]!)).join('  ')}`), ...none];
}
