import type { Report, Side } from '@surae/analysis';
import type { Visit, VisitSet } from '@surae/casebook';
import type { EndReason } from '@surae/shared';
import { handMadeOutcome } from './hand-made-outcome.ts';

/** A set of a visit as it stands after it was stopped and its end was told. */
export function madeSet(side: Side, report: Report | null, changes: Partial<VisitSet> = {}): VisitSet {
  return {
    id: `set-${side}`,
    choice: {
      side,
      protocolId: 'single-leg.incline10',
      protocolFingerprint: 'as chosen',
      placement: 'heel',
      origin: 'simulated',
    },
    bytesId: `bytes-${side}`,
    begunAt: '2026-03-01T09:30:12.000+01:00',
    stoppedAt: '2026-03-01T09:31:40.000+01:00',
    liveCount: report?.count.attempted ?? 0,
    marks: [],
    end: { reason: 'fatigue', painPeak: null, exertion: null },
    report,
    setAside: false,
    setAsideWhy: null,
    ...changes,
  };
}

/** A visit with these sets and nothing else told. */
export function madeVisit(...sets: VisitSet[]): Visit {
  return {
    id: 'visit',
    personId: 'person',
    begunAt: '2026-03-01T09:25:00.000+01:00',
    sore: { left: null, right: null },
    safety: null,
    first: null,
    sets,
    restS: null,
    closed: false,
  };
}

const classes: Readonly<Record<EndReason, Report['end']['class']>> = {
  fatigue: 'capacity',
  'heel-cannot-leave': 'capacity',
  'two-prompted-faults': 'capacity',
  pain: 'tolerance',
  'other-stop': 'incomplete',
  safety: 'incomplete',
  technical: 'incomplete',
  cap: 'censored',
  'fixed-count-done': 'probe',
  'trials-done': 'capacity',
};

/** A report of a made set with these counts, ended for a reason; everything else is as the analysis made it. */
export function madeReport(
  side: Side,
  count: Partial<Report['count']>,
  reason: EndReason | null = 'fatigue',
  changes: Partial<Report> = {},
): Report {
  const { report } = handMadeOutcome([90, 90, 90]);
  return {
    ...report,
    side,
    count: { ...report.count, ...count },
    end: { ...report.end, reasonGiven: reason, class: reason === null ? 'unknown' : classes[reason] },
    gate: { usable: 'yes', reasons: [] },
    effort: { good: 'cannot_tell', signs: [], reason: 'too-little-known' },
    ...changes,
  };
}

/** Counts of which all are equally sure. */
export function sureCount(number: number): Partial<Report['count']> {
  return {
    attempted: number,
    low: number,
    high: number,
    valid: number,
    validLow: number,
    validHigh: number,
    scored: number,
    scoredLow: number,
    scoredHigh: number,
  };
}
