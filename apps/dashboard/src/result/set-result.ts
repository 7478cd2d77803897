import { defaultSettings, type Report } from '@surae/analysis';
import type { VisitEvent } from '@surae/casebook';
import { settingsHash } from './settings-hash.ts';
import { softwareName } from './software.ts';

/** What is kept of an assessment: the report, and by which settings and which version it was made. */
export type SetResult = Extract<VisitEvent, { readonly kind: 'set-result' }>;

/** The event that keeps the report of a set, made just now by this software with its usual settings. */
export function setResult(setId: string, report: Report): SetResult {
  const hash = settingsHash(defaultSettings(), report);
  return { kind: 'set-result', setId, report, settingsHash: hash, software: softwareName() };
}

/** How the newest report of a set came about, from the stored results of its visit; null is not kept. */
export function keptProvenance(
  bodies: readonly unknown[],
  setId: string,
): { readonly settingsHash: string | null; readonly software: string | null } {
  const kept = (bodies as readonly Partial<SetResult>[]).filter((body) => body.setId === setId).at(-1);
  return { settingsHash: kept?.settingsHash ?? null, software: kept?.software ?? null };
}
