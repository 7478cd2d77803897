import { createHash } from 'node:crypto';
import { defaultSettings } from '@surae/analysis';
import { expect, test } from 'vitest';
import { assessFile } from '../../../apps/cli/src/assess-file.ts';
import { usualSettings } from '../../../apps/cli/src/settings-file.ts';
import { protocolHash, settingsHash } from '../../../apps/dashboard/src/result/settings-hash.ts';
import { handMadeRefusal } from '../../support/hand-made-outcome.ts';
import { MemoryIo } from '../../support/memory-io.ts';

const GOOD = 'fixtures/recordings/made/heel-three-raises.csv';

test('the hashes equal those of the command line for the same settings and protocol', async () => {
  const item = { file: 'a.csv', path: GOOD, about: handMadeRefusal().item.about, carried: {}, refusal: undefined };
  const outcome = await assessFile(item, usualSettings(), new MemoryIo().io);
  if (outcome.status === 'refused') throw new Error(outcome.reason);
  if (outcome.test !== 'heel-raise') throw new Error('heel raises were asked for');
  expect(settingsHash(defaultSettings(), outcome.report)).toBe(outcome.settingsHash);
  expect(protocolHash(outcome.report)).toBe(outcome.protocolHash);
  expect(protocolHash(outcome.report)).toBe(
    createHash('sha256').update(outcome.report.protocol.fingerprint).digest('hex'),
  );
});

test('a change of one setting, or of the protocol, makes another hash', async () => {
  const item = { file: 'a.csv', path: GOOD, about: handMadeRefusal().item.about, carried: {}, refusal: undefined };
  const outcome = await assessFile(item, usualSettings(), new MemoryIo().io);
  if (outcome.status === 'refused') throw new Error(outcome.reason);
  if (outcome.test !== 'heel-raise') throw new Error('heel raises were asked for');
  const { report } = outcome;
  const settings = defaultSettings();
  const other = { ...settings, judging: { ...settings.judging, seed: settings.judging.seed + 1 } };
  expect(settingsHash(other, report)).not.toBe(settingsHash(settings, report));
  const moved = { ...report, protocol: { ...report.protocol, fingerprint: `${report.protocol.fingerprint} ` } };
  expect(settingsHash(settings, moved)).not.toBe(settingsHash(settings, report));
});
