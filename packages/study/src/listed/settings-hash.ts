import type { Settings } from '@surae/analysis';
import { sha256Hex } from '@surae/records';
import { canonicalHash } from '../canonical-hash.ts';

/** Equal only for results that were taken by the same rules: all settings, and the fingerprint of the protocol. */
export function settingsHash(settings: Settings, protocolFingerprint: string): string {
  return canonicalHash({ settings, protocol: protocolFingerprint });
}

/** Hash of a fingerprint: the protocol with its parameters, the placement and the rule of the reference alone. */
export function fingerprintHash(fingerprint: string): string {
  return sha256Hex(new TextEncoder().encode(fingerprint));
}
