import type { CodeReader, CodeWriter } from './code-bytes.ts';
import { dayOf, daysOf } from './code-day.ts';

const tests = ['heel-raise', 'isometric'] as const;
const sides = ['left', 'right'] as const;
const units = ['count', 'N', 'N.m'] as const;
const cautions = ['first-retest', 'baseline-in-flare'] as const;
const zones = ['likely-real', 'possible', 'cannot-tell', 'open'] as const;

/** Tests of one line that a code holds at most: the newest; ours. */
export const weekPointsMost = 8;

/** One leg in one test over the weeks before a visit, as the page of the clinic draws it; values to a tenth. */
export interface HandoutWeeks {
  readonly test: (typeof tests)[number];
  readonly side: (typeof sides)[number];
  readonly unit: (typeof units)[number];
  /** tests that were done alike, the oldest first; fewer than two are no line */
  readonly points: readonly { readonly day: string; readonly value: number }[];
  /** what could be chance, from a day on; null where it is not known */
  readonly band: { readonly from: string; readonly low: number; readonly high: number } | null;
  /** what is said of the change since a day; null where nothing is */
  readonly change: {
    readonly since: string;
    readonly zone: (typeof zones)[number];
    /** later less earlier */
    readonly difference: number;
    /** another study of the test would say otherwise */
    readonly hangs: boolean;
    /** what makes the change less sure */
    readonly cautions: readonly (typeof cautions)[number][];
  } | null;
}

const tenths = (value: number): number => Math.round(10 * value);

/** Writes one line of weeks: test, leg, unit, its tests as days after one another with their values, band, change. */
export function writeWeeks(writer: CodeWriter, { test, side, unit, points, band, change }: HandoutWeeks): void {
  writer.number(tests.indexOf(test)).number(sides.indexOf(side)).number(units.indexOf(unit));
  let before = 0;
  writer.list(points, ({ day, value }) => {
    writer.number(daysOf(day) - before).number(tenths(value));
    before = daysOf(day);
  });
  writer.number(band === null ? 0 : 1);
  if (band !== null) writer.number(daysOf(band.from)).number(tenths(band.low)).number(tenths(band.high));
  writer.number(change === null ? 0 : 1);
  if (change === null) return;
  writer.number(daysOf(change.since)).number(zones.indexOf(change.zone));
  writer.number(tenths(Math.abs(change.difference))).number(change.difference < 0 ? 1 : 0);
  writer.number(change.hangs ? 1 : 0).list(change.cautions, (one) => writer.number(cautions.indexOf(one)));
}

/** Reads what {@link writeWeeks} wrote. */
export function readWeeks(reader: CodeReader): HandoutWeeks {
  const [test, side, unit] = [reader.oneOf(tests), reader.oneOf(sides), reader.oneOf(units)];
  let before = 0;
  const points = reader.list(() => {
    before += reader.number();
    return { day: dayOf(before), value: reader.number() / 10 };
  });
  const hasBand = reader.number() > 0;
  const band = hasBand ? { from: dayOf(reader.number()), low: reader.number() / 10, high: reader.number() / 10 } : null;
  if (reader.number() === 0) return { test, side, unit, points, band, change: null };
  const [since, zone, size] = [dayOf(reader.number()), reader.oneOf(zones), reader.number() / 10];
  const isLess = reader.number() > 0;
  const hangs = reader.number() > 0;
  const told = reader.list(() => reader.oneOf(cautions));
  const change = { since, zone, difference: isLess ? -size : size, hangs, cautions: told };
  return { test, side, unit, points, band, change };
}
