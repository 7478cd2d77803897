import type { AssessedEffort, PullReport } from '@surae/analysis';
import type { PullTrial } from '@surae/casebook';
import { ACCEPT_NAMES, ACCEPT_SENTENCES, NO_EFFORT_SENTENCES, PULL_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';

/** What is said of one effort, or of a trial in which there was none. */
export interface TrialVerdict {
  /** number of the effort; null where there is none */
  readonly index: number | null;
  readonly accepted: 'yes' | 'no' | 'cannot_tell';
  /** net best mean, as it is read, with its unit; null where there is none */
  readonly force: string | null;
  readonly headline: string;
  /** every reason, in plain words */
  readonly reasons: readonly string[];
}

/** A net force as one reads it: whole newtons, tenths of a newton metre. */
export function forceWords(value: number, unit: PullReport['unit']): string {
  return fill(unit === 'N' ? PULL_WORDS.newton : PULL_WORDS['newton-metre'], {
    value: value.toFixed(unit === 'N' ? 0 : 1),
  });
}

/** What is said of one effort of a report. */
export function effortVerdict(effort: AssessedEffort, unit: PullReport['unit']): TrialVerdict {
  const { index, accepted, reasons, undecided, bestMean } = effort;
  return {
    index,
    accepted,
    force: bestMean === null ? null : forceWords(bestMean.net.value, unit),
    headline: PULL_WORDS[`accepted-${accepted}`].text,
    reasons: [
      ...reasons.map((code) => ACCEPT_SENTENCES[code].text),
      ...(accepted === 'cannot_tell'
        ? [fill(PULL_WORDS.undecided, { what: undecided.map((code) => ACCEPT_NAMES[code].text).join(', ') })]
        : []),
    ],
  };
}

function within(timeS: number, { fromS, toS }: Pick<PullTrial, 'fromS' | 'toS'>): boolean {
  return timeS >= fromS && timeS <= (toS ?? Number.POSITIVE_INFINITY);
}

/** Everything that was found in one trial; where that is nothing, that is said. */
export function trialVerdicts(report: PullReport, trial: Pick<PullTrial, 'fromS' | 'toS'>): TrialVerdict[] {
  const efforts = report.efforts.filter(({ peakS }) => within(peakS, trial));
  if (efforts.length > 0) return efforts.map((effort) => effortVerdict(effort, report.unit));
  const others = report.others.filter(({ fromS }) => within(fromS, trial));
  const reasons = [...new Set(others.map(({ reason }) => NO_EFFORT_SENTENCES[reason].text))];
  return [{ index: null, accepted: 'no', force: null, headline: PULL_WORDS['no-effort'].text, reasons }];
}
