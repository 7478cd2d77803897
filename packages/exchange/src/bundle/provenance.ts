import { canonicalJson } from '@surae/analysis';
import { sha256Hex } from '@surae/records';
import type { Study, StudyTrial } from '../study.ts';
import { utf8 } from '../utf8.ts';

type Canonical = Parameters<typeof canonicalJson>[0];

/** Version of the shape of a bundle, from 1. */
export const BUNDLE_VERSION = 1;

/** A value as plain JSON: the round trip says so to the compiler. */
function plain(value: unknown): Canonical {
  return JSON.parse(JSON.stringify(value)) as Canonical;
}

/** Whether the settings that are handed over are those that a result was made with; null where its hash is not known. */
function madeBy(settings: Canonical, { result, settingsHash }: StudyTrial): boolean | null {
  if (result === null || settingsHash === null) return null;
  const { fingerprint } = result.report.protocol;
  return sha256Hex(utf8(canonicalJson({ settings, protocol: fingerprint }))) === settingsHash;
}

/** The settings by which results can be made again, and of which results that holds. */
export function parametersOf({ settings, trials }: Study): Canonical {
  const own = plain(settings);
  return {
    settings: own,
    results: trials.flatMap((trial) =>
      trial.result === null
        ? []
        : [{ trial: trial.key, settings_hash: trial.settingsHash, made_by_these_settings: madeBy(own, trial) }],
    ),
  };
}

/** Every protocol that a result was judged by, with its parameters, once. */
export function protocolsOf({ trials }: Study): Canonical {
  const found = new Map<string, Canonical>();
  const judged = trials.flatMap(({ result, recounts = [] }) => [
    ...(result === null ? [] : [result]),
    ...recounts.map((one) => one.result),
  ]);
  for (const result of judged) {
    const { id, version, fingerprint } = result.report.protocol;
    const hash = sha256Hex(utf8(fingerprint));
    found.set(hash, {
      protocol_hash: hash,
      id,
      version,
      test: result.test,
      judged_by: JSON.parse(fingerprint) as Canonical,
    });
  }
  return [...found.keys()].sort().map((hash) => found.get(hash)!);
}

/** Where everything comes from: what was read, by what, and what was taken out. */
export function provenanceOf(study: Study, taken: Readonly<Record<string, number>> | null): Canonical {
  return {
    kind: 'surae-study-bundle',
    version: BUNDLE_VERSION,
    software: study.software,
    de_identified: taken === null ? null : { ...taken },
    inputs: study.trials.map(({ key, sha256, settingsHash, protocolHash, software, status }) => ({
      trial: key,
      sha256,
      settings_hash: settingsHash,
      protocol_hash: protocolHash,
      software,
      status,
    })),
  };
}
