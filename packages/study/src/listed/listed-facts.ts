import { pullRow } from '@surae/analysis';
import type { TrialFacts } from '../quality/trial-facts.ts';
import { outcomeFigures } from '../quality/trial-figures.ts';
import type { Outcome } from './assess-listed.ts';
import { issueRows } from './issue-rows.ts';

/** The cells of a row of the manifest, with the leg among them. */
export function cellsOf({ item }: Pick<Outcome, 'item'>): TrialFacts['cells'] {
  return { ...item.carried, ...(item.about.side === undefined ? {} : { side: item.about.side }) };
}

/** What a study knows of a recording that was assessed or refused; whether another has the same bytes is told apart. */
export function listedFacts(outcome: Outcome): TrialFacts {
  const common = { trial: outcome.item.file, cells: cellsOf(outcome), sha256: outcome.sha256, sameAs: null };
  if (outcome.status === 'refused') {
    const nothing = { figures: null, issues: [], usable: null, withheld: [], settingsHash: null };
    return { ...common, ...nothing, refusal: outcome.reason };
  }
  const { report, settingsHash } = outcome;
  const gate = 'gate' in report ? report.gate : null;
  return {
    ...common,
    refusal: null,
    figures: outcomeFigures(outcome.test, outcome.test === 'isometric' ? pullRow(outcome.report) : outcome.report),
    issues: issueRows(outcome).map(({ code, severity, from_s, to_s }) => ({
      code,
      severity,
      fromS: from_s,
      toS: to_s,
    })),
    usable: gate?.usable ?? null,
    withheld: [...new Set([...report.withheld, ...(gate?.reasons ?? [])])],
    settingsHash,
  };
}
