import type { Side } from '@surae/analysis';
import { endedWithPop, pullSetOf, type Visit } from '@surae/casebook';
import { type HandoutLeg, type HandoutPushes, type HandoutWeeks, weekPointsMost } from '@surae/exchange';
import type { LegOverWeeks, LegsTest } from '../legs/legs-view.ts';
import { pullFigures } from '../result/pull-figures.ts';

/** What a leg reached in its pushes, by the number, the bounds and the end that the result page tells; null without a result, and after a pop. */
function pushOf(visit: Visit, side: Side): HandoutLeg | null {
  const set = pullSetOf(visit, side);
  const report = set === undefined || endedWithPop(set) ? null : set.report;
  if (report === null) return null;
  const figure = pullFigures(visit)[0]?.[side];
  const { net } = report.score;
  if (net === null || figure?.kind !== 'measured') return { told: 'none', value: 0, low: 0, high: 0 };
  const told = report.end.class === 'tolerance' ? 'pain' : 'reached';
  return { told, value: net.value, low: figure.low, high: figure.high };
}

/** What both legs reached in pushes; null where nobody pushed, or the legs were tested in two units. */
export function handoutPushes(visit: Visit): HandoutPushes | null {
  const units = new Set((['left', 'right'] as const).flatMap((side) => pullSetOf(visit, side)?.report?.unit ?? []));
  const [unit] = units;
  if (unit === undefined || units.size > 1) return null;
  const decimals = Math.min(1, pullFigures(visit)[0]?.decimals ?? 0);
  return { unit, decimals, left: pushOf(visit, 'left'), right: pushOf(visit, 'right') };
}

function weeksOf({ test, unit }: Pick<LegsTest, 'test' | 'unit'>, leg: LegOverWeeks): readonly HandoutWeeks[] {
  const { side, line, told } = leg;
  if (line === null && told === null) return [];
  const dayOf = (at: string): string => at.slice(0, 10);
  const points = (line?.points ?? []).slice(-weekPointsMost).map(({ at, value }) => ({ day: dayOf(at), value }));
  const from = line?.points.find(({ day }) => day === line.band.fromDay) ?? line?.points[0];
  return [
    {
      test,
      side,
      unit,
      points,
      band:
        line === null || from === undefined ? null : { from: dayOf(from.at), low: line.band.low, high: line.band.high },
      change: told === null ? null : { ...told, since: dayOf(told.since) },
    },
  ];
}

/** Each leg of each test over the weeks, as the page of the clinic draws and tells it. */
export function handoutWeeks(tests: readonly LegsTest[]): readonly HandoutWeeks[] {
  return tests.flatMap((one) => one.changes.flatMap((leg) => weeksOf(one, leg)));
}
