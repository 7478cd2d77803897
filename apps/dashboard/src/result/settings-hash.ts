import { canonicalJson, type Report, type Settings } from '@surae/analysis';
import { sha256Hex } from '@surae/records';

function hashOf(text: string): string {
  return sha256Hex(new TextEncoder().encode(text));
}

/** Equal only for results that were taken by the same rules: all settings, and the fingerprint of the protocol. */
export function settingsHash(settings: Settings, { protocol }: Report): string {
  // the settings are plain JSON; the round trip says so to the compiler
  const plain = JSON.parse(JSON.stringify(settings)) as Parameters<typeof canonicalJson>[0];
  return hashOf(canonicalJson({ settings: plain, protocol: protocol.fingerprint }));
}

/** Hash of the protocol with its parameters, the placement and the rule of the reference alone. */
export function protocolHash({ protocol }: Report): string {
  return hashOf(protocol.fingerprint);
}
