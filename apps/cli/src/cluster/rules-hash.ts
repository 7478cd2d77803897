import { canonicalJson, defaultSettings } from '@surae/analysis';
import { HOP_PROTOCOLS, PROTOCOLS, PULL_PROTOCOLS } from '@surae/shared';
import { sha256 } from '../fingerprints.ts';
import { REVISION } from '../revision.ts';

type Plain = Parameters<typeof canonicalJson>[0];

/**
 * SHA-256 of the usual settings, all protocols that this software knows and the revision of its results: machines that differ in it
 * do not judge alike.
 */
export function rulesHash(revision = REVISION): string {
  const protocols = [PROTOCOLS, PULL_PROTOCOLS, HOP_PROTOCOLS];
  const rules = { revision, settings: defaultSettings(), protocols };
  return sha256(canonicalJson(JSON.parse(JSON.stringify(rules)) as Plain));
}
