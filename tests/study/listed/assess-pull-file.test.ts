import { readFileSync } from 'node:fs';
import { PULL_PROTOCOLS } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { sha256 } from '../../../apps/cli/src/fingerprints.ts';
import { readSettings, usualSettings } from '../../../apps/cli/src/settings-file.ts';
import { assessPullFile } from '../../../packages/study/src/listed/assess-pull-file.ts';
import { assessedPulls, pullItem } from '../../support/assessed-pulls.ts';
import { madeRamps, madeRecording } from '../../support/made-recording.ts';

const text = madeRecording(madeRamps([900, 920, 910]));
const refusal = (about = {}, carried = {}): unknown => {
  const outcome = assessPullFile(pullItem(about, carried), new TextEncoder().encode(text), usualSettings());
  return outcome.status === 'refused' ? outcome.reason : 'assessed';
};

test('bytes become a report, with their hash, the first protocol and what was said of the person', () => {
  const outcome = assessedPulls(
    text,
    pullItem(
      { bodyMassKg: 70, forefootLeverMm: 130, calibrationUPercent: 1, calibrationZeroU: 0.4, polarity: 'positive' },
      { end_reason: 'pain', calibration: ' Cell 7, spring ' },
    ),
  );
  expect(outcome.sha256).toBe(sha256(text));
  expect(outcome.protocol).toBe(PULL_PROTOCOLS[0]);
  const { report } = outcome;
  expect([report.calibrationRelativeU, report.calibrationZeroU, report.calibrationId]).toEqual([
    0.01,
    0.4,
    'Cell 7, spring',
  ]);
  expect(report.score.net!.u).toBeGreaterThan(9.2);
  expect(report.derived!.bestMean!.newtonMetre!.value).toBeCloseTo(920 * 0.13, 0);
  expect(report.derived!.bestMean!.newtonPerKg!.value).toBeCloseTo(920 / 70, 2);
  expect(report.end).toEqual({ reasonGiven: 'pain', class: 'tolerance' });
});

test('warm-up pushes: told in the manifest, else on the command line, else the sizes tell', () => {
  const warm = madeRecording(madeRamps([500, 900, 920, 910]));
  const trials = (about = {}): readonly number[] => assessedPulls(warm, pullItem(about)).report.trials!.accepted;
  expect(trials()).toEqual([2, 3, 4]);
  expect(trials({ warmUpPushes: 2 })).toEqual([3, 4]);
  expect(trials({ warmUpPushes: 0 })).toEqual([1, 2, 3, 4]);
});

test('a settings file reaches method and protocol, each under its own name', () => {
  const by = (json: string) => assessedPulls(text, pullItem(), readSettings('s.json', new TextEncoder().encode(json)));
  const usual = assessedPulls(text);
  const method = by('{"efforts": {"pull": {"leastN": 1500}}}');
  expect(method.report.efforts).toEqual([]);
  expect([method.protocolHash === usual.protocolHash, method.settingsHash === usual.settingsHash]).toEqual([
    true,
    false,
  ]);
  const rules = by('{"pullProtocol": {"plateauLeast": 9}}');
  expect(rules.report.efforts.map(({ reasons }) => reasons)).toEqual(Array(3).fill(['short-plateau']));
  expect(rules.protocolHash).not.toBe(usual.protocolHash);
  expect(() => by('{"pullProtocol": {"plateauLeast": 99}}')).toThrow('pullProtocol.plateauLeast');
});

describe('what contradicts itself is refused', () => {
  test.each([
    ['a protocol of heel raises', { protocol: 'single-leg.floor' }, {}, 'belongs to the test heel-raise'],
    ['an unknown protocol', { protocol: 'isometric.lying' }, {}, 'there is no protocol "isometric.lying"'],
    ['a placement on a person', { placement: 'foot' as const }, {}, 'not at the placement foot'],
    ['an unknown placement of a force', { placement: undefined }, {}, '--placement inline or platform'],
    ['a straight knee in a test with a bent one', {}, { knee: 'straight' }, 'is done with bent, got straight'],
    ['an end of heel raises', {}, { end_reason: 'heel-cannot-leave' }, 'ends by trials-done, pain'],
  ] as const)('%s', (_, about, carried, words) => {
    expect(refusal(about, carried)).toContain(words);
  });

  test('a recording of nothing that pulls', () => {
    const heel = readFileSync('fixtures/recordings/made/heel-three-raises.csv');
    expect(assessPullFile(pullItem(), heel, usualSettings())).toMatchObject({
      status: 'refused',
      sha256: sha256(heel),
      reason: 'pull.csv: the test isometric needs a column force or torque; the file holds heel-height',
    });
  });
});

describe('an ankle dynamometer: one contraction in an active trial, none in a passive one', () => {
  test.each([
    ['hold', 1, 26],
    ['turned-hold', 1, 45],
    ['passive', 0, null],
    ['passive-turn', 0, null],
  ] as const)('%s', (name, count, peakNm) => {
    const file = readFileSync(`fixtures/recordings/ankle-torque/${name}.csv`, 'utf8');
    const { report } = assessedPulls(file, pullItem({ placement: undefined }));
    expect([report.unit, report.placement, report.efforts.length]).toEqual(['N.m', 'inline', count]);
    if (peakNm !== null) expect(Math.abs(report.efforts[0].peak.net.value - peakNm)).toBeLessThan(2);
  });
});
