import { canonicalJson, defaultSettings, type PullReport } from '@surae/analysis';
import type { PullEvent } from '@surae/casebook';
import { sha256Hex } from '@surae/records';
import { softwareName } from './software.ts';

/** What is kept of an assessment of trials: the report, and by which settings and which version it was made. */
export type PullResult = Extract<PullEvent, { readonly kind: 'pull-report' }>;

/** Equal only for results that were taken by the same rules: all settings, and the fingerprint of the protocol. */
export function pullSettingsHash({ protocol }: Pick<PullReport, 'protocol'>): string {
  // the settings are plain JSON; the round trip says so to the compiler
  const settings = JSON.parse(JSON.stringify(defaultSettings())) as Parameters<typeof canonicalJson>[0];
  return sha256Hex(new TextEncoder().encode(canonicalJson({ settings, protocol: protocol.fingerprint })));
}

/** The event that keeps the report of the trials of a leg, made just now by this software with its usual settings. */
export function pullResult(setId: string, report: PullReport): PullResult {
  return { kind: 'pull-report', setId, report, settingsHash: pullSettingsHash(report), software: softwareName() };
}
