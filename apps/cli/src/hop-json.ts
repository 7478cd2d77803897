import { nestedValues } from '@surae/analysis';
import { HOP_COLUMNS, HOP_SERIES_COLUMNS } from '@surae/shared';
import type { AssessedHops, RefusedHops } from './hop-file.ts';
import { rounded } from './rounded.ts';
import { softwareName } from './software.ts';

/** One recording of hops as one line of JSON. Null means not measured, or not known; zero means zero. */
export function hopLine(outcome: AssessedHops | RefusedHops): string {
  const { item } = outcome;
  const frame = {
    file: item.file,
    ...item.carried,
    sha256: outcome.sha256,
    software: softwareName(),
    settings_hash: outcome.status === 'ok' ? outcome.settingsHash : null,
    protocol_hash: outcome.status === 'ok' ? outcome.protocolHash : null,
    status: outcome.status,
    ...(outcome.status === 'refused' ? { reason: outcome.reason } : {}),
    side: item.about.side ?? null,
    test: 'hop-series',
    placement: outcome.status === 'ok' ? outcome.report.placement : (item.about.placement ?? null),
    protocol: outcome.status === 'ok' ? outcome.report.protocol.id : (item.about.protocol ?? null),
  };
  if (outcome.status === 'refused') return JSON.stringify(rounded(frame));
  const { report } = outcome;
  const { found, reason, ...figures } = nestedValues(HOP_SERIES_COLUMNS, report);
  return JSON.stringify(
    rounded({
      ...frame,
      hops: report.hops.map((hop) => nestedValues(HOP_COLUMNS, hop)),
      found,
      no_series: reason,
      ...figures,
      withheld: report.withheld,
      cautions: report.cautions,
      entry_conditions: report.entry.findings,
    }),
  );
}
