import { effortRow, nestedValues, pullRow } from '@surae/analysis';
import { EFFORT_COLUMNS, PULL_COLUMNS } from '@surae/shared';
import { type AssessedPulls, issueRows } from '@surae/study';

/** What one recording of isometric efforts came to, under the names of the columns. */
export function pullResult(outcome: AssessedPulls): Record<string, unknown> {
  const { report, protocol } = outcome;
  const windowS = protocol.parameters.scoreWindow.value;
  return {
    efforts: report.efforts.map((effort) => nestedValues(EFFORT_COLUMNS, effortRow(effort, windowS))),
    not_efforts: report.others.map(({ fromS, toS, reason }) => ({ from_s: fromS, to_s: toS, reason })),
    ...nestedValues(PULL_COLUMNS, pullRow(report)),
    withheld: report.withheld,
    gate_reasons: report.gate.reasons,
    issues: issueRows(outcome),
  };
}
