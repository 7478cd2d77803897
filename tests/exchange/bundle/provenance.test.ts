import { createHash } from 'node:crypto';
import { canonicalJson } from '@surae/analysis';
import { parametersOf, protocolsOf, provenanceOf } from '@surae/exchange';
import { expect, test } from 'vitest';
import { madeStudy, pushTrial, raiseTrial, studyTrial } from '../../support/made-study.ts';

const study = madeStudy();
const [raises] = study.trials;
const { fingerprint } = raises.result!.report.protocol;
const settings = JSON.parse(JSON.stringify(study.settings)) as Parameters<typeof canonicalJson>[0];
const hash = createHash('sha256')
  .update(canonicalJson({ settings, protocol: fingerprint }))
  .digest('hex');

test('the settings, and which results they make again', () => {
  const trials = [raiseTrial({ settingsHash: hash }), raiseTrial({ key: 'b' }), pushTrial(), studyTrial({ key: 'c' })];
  expect(parametersOf({ ...study, trials })).toMatchObject({
    settings,
    results: [
      { trial: 'trial-1', settings_hash: hash, made_by_these_settings: true },
      { trial: 'b', made_by_these_settings: false },
      { trial: 'trial-2', settings_hash: null, made_by_these_settings: null },
    ],
  });
});

test('each protocol stands once, by its hash, with its parameters', () => {
  const protocols = protocolsOf({ ...study, trials: [raises, { ...raises, key: 'b' }, study.trials[1]] }) as {
    protocol_hash: string;
    id: string;
  }[];
  expect(protocols).toHaveLength(2);
  const own = protocols.find(({ id }) => id === raises.protocol)!;
  expect(own.protocol_hash).toBe(createHash('sha256').update(fingerprint).digest('hex'));
  expect(own).toHaveProperty('judged_by.parameters');
});

test('where each trial comes from, and what was taken out', () => {
  expect(provenanceOf(study, { names: 1 })).toMatchObject({
    kind: 'surae-study-bundle',
    version: 1,
    software: 'surae 0.1.0',
    de_identified: { names: 1 },
    inputs: [
      { trial: 'trial-1', sha256: 'a'.repeat(64), status: 'assessed' },
      { trial: 'trial-2', sha256: null },
    ],
  });
});
