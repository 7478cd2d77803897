import { nestedValues } from '@surae/analysis';
import { rounded } from '@surae/exchange';
import { REPETITION_COLUMNS, SET_COLUMNS } from '@surae/shared';
import { type AnyAssessed, type Assessed, issueRows, type Outcome } from '@surae/study';
import { FILE_COLUMN, type FrameColumn, ORIGIN_COLUMNS, REASON_COLUMN, TRIAL_COLUMNS } from './frame-columns.ts';
import { hopResult } from './hop-json.ts';
import { pullResult } from './pull-json.ts';

function framed(columns: readonly FrameColumn[], outcome: Outcome): Record<string, string | null> {
  return Object.fromEntries(columns.map(({ key, value }) => [key, value(outcome)]));
}

/** One recording as one line of JSON. Null means not measured, or not known; zero means zero. */
export function jsonLine(outcome: Outcome): string {
  const frame = {
    ...framed([FILE_COLUMN], outcome),
    ...outcome.item.carried,
    ...framed([...ORIGIN_COLUMNS, ...(outcome.status === 'refused' ? [REASON_COLUMN] : []), ...TRIAL_COLUMNS], outcome),
  };
  if (outcome.status === 'refused') return JSON.stringify(rounded(frame));
  return JSON.stringify(rounded({ ...frame, ...resultOf(outcome) }));
}

function resultOf(outcome: AnyAssessed): Record<string, unknown> {
  switch (outcome.test) {
    case 'heel-raise':
      return raiseResult(outcome);
    case 'isometric':
      return pullResult(outcome);
    case 'hop-series':
      return hopResult(outcome);
  }
}

function raiseResult(outcome: Assessed): Record<string, unknown> {
  const { report } = outcome;
  return {
    repetitions: report.repetitions.map((repetition) => nestedValues(REPETITION_COLUMNS, repetition)),
    ...nestedValues(SET_COLUMNS, report),
    withheld: report.withheld,
    doubtful: report.doubtful.map((movement) => ({
      start_s: movement.startS,
      top_s: movement.topS,
      end_s: movement.endS,
      probability: movement.probability,
      reason: movement.reason,
    })),
    gate_reasons: report.gate.reasons,
    block_differences: report.blockDifferences.map((difference) => ({
      kind: difference.kind,
      repetition: difference.repetition,
      final_top_s: difference.finalTopS,
      block_top_s: difference.blockTopS,
    })),
    issues: issueRows(outcome),
  };
}
