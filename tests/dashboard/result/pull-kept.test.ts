import { expect, test } from 'vitest';
import { pullResult, pullSettingsHash } from '../../../apps/dashboard/src/result/pull-kept.ts';
import { donePullSet } from '../../support/made-pull-visit.ts';

const report = donePullSet('left').report!;

test('a report is kept with the hash of its settings and the version that made it', () => {
  const kept = pullResult('set', report);
  expect(kept.software).toMatch(/^surae /);
  expect(kept).toMatchObject({
    kind: 'pull-report',
    setId: 'set',
    report,
    settingsHash: pullSettingsHash(report),
  });
});

test('another protocol has another hash', () => {
  const other = { ...report, protocol: { ...report.protocol, fingerprint: 'other' } };
  expect(pullSettingsHash(other)).not.toBe(pullSettingsHash(report));
  expect(pullSettingsHash(report)).toMatch(/^[0-9a-f]{64}$/);
});
