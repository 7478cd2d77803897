import type { Report } from '@surae/analysis';
import type { VisitSet } from '@surae/casebook';
import { AXIS_WORDS, SUMMARY_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';

function places(numbers: readonly (number | null)[], decimals: number): string {
  return numbers.flatMap((number) => (number === null ? [] : number.toFixed(decimals))).join(', ');
}

function reasons({ blockDifferences }: Report): string[] {
  const extra = blockDifferences.filter(({ kind }) => kind === 'only-block');
  const missing = blockDifferences.filter(({ kind }) => kind === 'only-final');
  return [
    ...(extra.length === 0
      ? []
      : [
          fill(SUMMARY_WORDS['live-extra'], {
            places: places(
              extra.map(({ blockTopS }) => blockTopS),
              1,
            ),
          }),
        ]),
    ...(missing.length === 0
      ? []
      : [
          fill(SUMMARY_WORDS['live-missing'], {
            places: places(
              missing.map(({ repetition }) => repetition),
              0,
            ),
          }),
        ]),
  ];
}

/** What the final pass counts otherwise than the screen did; empty where both are the same or one of them is missing. */
export function liveDifference({ liveCount, report, choice }: VisitSet): readonly string[] {
  if (liveCount === null || report === null || liveCount === report.count.attempted) return [];
  const difference = fill(SUMMARY_WORDS['live-differs'], {
    leg: AXIS_WORDS[choice.side].text,
    live: liveCount,
    final: report.count.attempted,
  });
  return [difference, ...reasons(report)];
}
