import type { Settings } from '@surae/analysis';
import { sha256Hex } from '@surae/records';
import { canonicalHash } from '../canonical-hash.ts';

/** What was hashed before: a run has thousands of recordings and hardly ever more than one pair of these. */
const known = new WeakMap<Settings, Map<string, string>>();

/** Equal only for results that were taken by the same rules: all settings, and the fingerprint of the protocol. */
export function settingsHash(settings: Settings, protocolFingerprint: string): string {
  const ofSettings = known.get(settings) ?? new Map<string, string>();
  const hash = ofSettings.get(protocolFingerprint) ?? canonicalHash({ settings, protocol: protocolFingerprint });
  known.set(settings, ofSettings.set(protocolFingerprint, hash));
  return hash;
}

/** Hash of a fingerprint: the protocol with its parameters, the placement and the rule of the reference alone. */
export function fingerprintHash(fingerprint: string): string {
  return sha256Hex(new TextEncoder().encode(fingerprint));
}
