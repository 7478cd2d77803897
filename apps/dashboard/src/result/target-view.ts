import type { Side, TestedPull } from '@surae/analysis';
import { OPTIONAL_TARGETS, type OptionalTarget, SUMMARY_WORDS, TARGET_WORDS } from '@surae/shared';
import { decimal } from '../words/decimal.ts';
import { entryWords } from '../words/entry-words.ts';
import { fill } from '../words/fill.ts';
import { capital } from './value-words.ts';

/** A figure that is shown once somebody asks for it: whom it is quoted for, and the legs in its unit beside it. */
export interface TargetView {
  readonly lines: readonly string[];
}

const reach = 1.96;
const sides = ['left', 'right'] as const satisfies readonly Side[];

/** Protocols that a target was quoted for; any other way of testing has none. */
const positions: Readonly<Record<string, string>> = { 'seated, knee bent': 'isometric.seated' };

/**
 * What a leg pushed in multiples of body weight, with 95 % bounds from one test to the next; null where it is not known, or
 * the push does not show what the calf could do.
 */
export function timesBodyWeight(
  report: TestedPull['report'],
  u: number | null,
): { readonly value: number; readonly low: number; readonly high: number } | null {
  const { net, rule } = report.score;
  const times = report.derived?.bestMean?.timesBodyWeight ?? null;
  // what pain ended, or is not interpreted, is not held against a target
  if (net === null || times === null || u === null || rule !== 'best-mean' || report.end.class !== 'capacity')
    return null;
  const half = (reach * u * times.value) / net.value;
  return { value: times.value, low: times.value - half, high: times.value + half };
}

function legLine(side: Side, { report }: TestedPull, u: number | null): string | null {
  const times = timesBodyWeight(report, u);
  if (times === null) return null;
  return fill(TARGET_WORDS.leg, {
    leg: capital(SUMMARY_WORDS[side].text),
    value: decimal(times.value, 2),
    low: decimal(times.low, 2),
    high: decimal(times.high, 2),
  });
}

function targetLines(target: OptionalTarget): readonly string[] {
  const [low, high] = target.range;
  const [group, position] = [entryWords(target, 'group'), entryWords(target, 'position')];
  return [
    fill(TARGET_WORDS.range, { low: decimal(low, 1), high: decimal(high, 1), group }),
    fill(TARGET_WORDS.position, { position }),
    entryWords(target, 'remark'),
    fill(TARGET_WORDS.source, { source: target.source }),
  ];
}

/**
 * The target that is quoted for the way in which these legs were tested, with what each leg came to and its standard
 * uncertainty from one test to the next [unit of the score]; null where there is no target, or no leg in its unit.
 */
export function targetView(
  legs: Readonly<Record<Side, TestedPull | null>>,
  u: Readonly<Record<Side, number | null>>,
): TargetView | null {
  const tested = sides.flatMap((side) => legs[side] ?? []);
  const target = OPTIONAL_TARGETS.find(({ position }) =>
    tested.some(({ protocol }) => protocol.id === positions[position]),
  );
  if (target === undefined) return null;
  const fits = tested.filter(({ protocol }) => protocol.id === positions[target.position]);
  const lines = fits.flatMap((pull) => legLine(pull.side, pull, u[pull.side]) ?? []);
  return lines.length === 0 ? null : { lines: [...lines, ...targetLines(target)] };
}
