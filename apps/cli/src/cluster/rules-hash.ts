import { canonicalJson, defaultSettings } from '@surae/analysis';
import { HOP_PROTOCOLS, PROTOCOLS, PULL_PROTOCOLS } from '@surae/shared';
import { sha256 } from '../fingerprints.ts';

type Plain = Parameters<typeof canonicalJson>[0];

/** SHA-256 of the usual settings and all protocols that this software knows: machines that differ in it do not judge alike. */
export function rulesHash(): string {
  const rules = { settings: defaultSettings(), protocols: [PROTOCOLS, PULL_PROTOCOLS, HOP_PROTOCOLS] };
  return sha256(canonicalJson(JSON.parse(JSON.stringify(rules)) as Plain));
}
