import { nestedValues } from '@surae/analysis';
import { HOP_COLUMNS, HOP_SERIES_COLUMNS } from '@surae/shared';
import { type AssessedHops, issueRows } from '@surae/study';

/** What one recording of hops came to, under the names of the columns. */
export function hopResult(outcome: AssessedHops): Record<string, unknown> {
  const { report } = outcome;
  const { found, reason, ...figures } = nestedValues(HOP_SERIES_COLUMNS, report);
  return {
    hops: report.hops.map((hop) => nestedValues(HOP_COLUMNS, hop)),
    found,
    no_series: reason,
    ...figures,
    withheld: report.withheld,
    cautions: report.cautions,
    entry_conditions: report.entry.findings,
    issues: issueRows(outcome),
  };
}
