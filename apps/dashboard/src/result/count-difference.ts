import type { Report } from '@surae/analysis';
import { RELIABILITY_TABLES, type ReliabilityEntry, SUMMARY_WORDS } from '@surae/shared';
import type { Visit } from '../journey/visit.ts';
import { setOf } from '../journey/visit-events.ts';
import { fill } from '../words/fill.ts';

function entry(id: string): ReliabilityEntry {
  const found = RELIABILITY_TABLES.find((one) => one.id === id);
  if (found === undefined) throw new RangeError(`There is no table of reliability with the id ${id}.`);
  return found;
}

/** Share of the greater count that the usual wobble is at least, where nothing published matches; common practice, no source. */
const practiceShare = 0.3;

/** How much counts of this way of testing vary, and who says so. The published one of the same way of testing comes first. */
function usualVariation(
  report: Report,
  greater: number,
): { readonly change: number; readonly table: ReliabilityEntry } {
  const change = (table: ReliabilityEntry): number => table.detectableChange?.[1] ?? 0;
  const published =
    report.protocol.id === 'single-leg.incline10'
      ? entry('reliability.repetitions.incline10')
      : report.protocol.id === 'single-leg.floor'
        ? entry(report.placement === 'heel' ? 'reliability.repetitions.string' : 'reliability.repetitions.standing')
        : undefined;
  if (published !== undefined) return { change: change(published), table: published };
  const practice = entry('reliability.default.repetitions');
  return { change: Math.max(change(practice), Math.ceil(practiceShare * greater)), table: practice };
}

/** A result that may be held beside another one: the signal holds, and it ended for what the calf could do. */
function isOfCapacity({ gate, effort, end, count }: Report): boolean {
  return (
    gate.usable !== 'no' && effort.good !== 'no' && end.class === 'capacity' && count.attempted > 0 && !count.censored
  );
}

/**
 * What the difference between the two counts can mean, in sentences; empty where they may not be held beside each other,
 * because a leg is missing, stopped for pain, was tested in another way, or its signal does not hold.
 */
export function countDifference(visit: Visit): readonly string[] {
  const left = setOf(visit, 'left')?.report ?? undefined;
  const right = setOf(visit, 'right')?.report ?? undefined;
  if (left === undefined || right === undefined || !isOfCapacity(left) || !isOfCapacity(right)) return [];
  if (left.protocol.fingerprint !== right.protocol.fingerprint) return [];
  const difference = Math.abs(left.count.scored - right.count.scored);
  if (difference === 0) return [SUMMARY_WORDS.same.text];
  const { change, table } = usualVariation(left, Math.max(left.count.scored, right.count.scored));
  const code = difference <= change ? 'within-variation' : 'beyond-variation';
  const basis = table.people === null ? SUMMARY_WORDS['variation-practice'] : SUMMARY_WORDS.variation;
  return [fill(SUMMARY_WORDS[code], { difference }), fill(basis, { change, source: table.source })];
}
