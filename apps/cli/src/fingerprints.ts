import { createHash } from 'node:crypto';
import { canonicalJson, type Settings } from '@surae/analysis';

/** SHA-256 in lower-case hexadecimal. */
export function sha256(text: string | Uint8Array): string {
  return createHash('sha256').update(text).digest('hex');
}

/** Equal only for results that were taken by the same rules: all settings, and the fingerprint of the protocol. */
export function settingsHash(settings: Settings, protocolFingerprint: string): string {
  // the settings are plain JSON; the round trip says so to the compiler
  const plain = JSON.parse(JSON.stringify(settings)) as Parameters<typeof canonicalJson>[0];
  return sha256(canonicalJson({ settings: plain, protocol: protocolFingerprint }));
}
