import type { PlanItem } from '@surae/casebook';
import { daysFrom } from '../advice/run-log-given.ts';
import type { PlanDraft } from './plan-draft.ts';

const dayMs = 86_400_000;

function laterBy(day: string, days: number): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) + days * dayMs).toISOString().slice(0, 10);
}

/**
 * Lines that were begun and not kept, as a draft of today: those of a day before begin today, and their ends move with them.
 *
 * @param items - as they were written down [-]
 * @param today - by the calendar of the place [-]
 * @returns the draft, with nothing to undo [-]
 *
 * Source: ours
 */
export function begunDraft(items: readonly PlanItem[], today: string): PlanDraft {
  const moved = (line: PlanItem): PlanItem => {
    if (line.from >= today) return line;
    const { until } = line;
    return { ...line, from: today, until: until === null ? null : laterBy(until, daysFrom(line.from, today)) };
  };
  return { items: items.map(moved), before: [] };
}
