import { assess, type Beside, defaultSettings, findBeside } from '@surae/analysis';
import { PROTOCOLS } from '@surae/shared';
import { simulateSet } from '@surae/simulation';
import { expect, test } from 'vitest';
import { provisionalRaises } from '../../../packages/analysis/src/assess/block-differences.ts';
import { detectionSettings } from '../../../packages/analysis/src/assess/detection-settings.ts';
import { signalIssues } from '../../../packages/analysis/src/assess/signal-issues.ts';

const settings = defaultSettings();
const { block } = detectionSettings(settings, PROTOCOLS[0].parameters);
const { gravityMps2 } = settings.judging;
const { trace } = simulateSet({ placement: 'foot', level: 'hard', seed: 4, count: 6 });
const request = { placement: 'foot', protocol: PROTOCOLS[0], subject: { heelLeverM: 0.18 }, context: {} } as const;

test('the report is the same wherever what stands beside the detection is worked out, from a copy as well', () => {
  const steps: string[] = [];
  const elsewhere: Beside = (work) => {
    steps.push('begun');
    const found = structuredClone(findBeside(structuredClone(work)));
    return () => {
      steps.push('asked for');
      return found;
    };
  };
  expect(assess(trace, request, settings, elsewhere)).toEqual(assess(trace, request, settings));
  expect(steps).toEqual(['begun', 'asked for']);
});

test('issues of the signal and raises of the block pass reach the report from there', () => {
  const work = { trace, placement: 'foot', heelLeverM: 0.18, block, gravityMps2, limits: settings.signal } as const;
  expect(findBeside(work)).toEqual({
    ofSignal: signalIssues(trace, 'foot', gravityMps2, settings.signal),
    provisional: provisionalRaises(trace, 'foot', 0.18, block),
  });
  const flat = { code: 'flat', severity: 'warning', fromS: 0, toS: 1 } as const;
  const report = assess(trace, request, settings, () => () => ({ ofSignal: [flat], provisional: [] }));
  expect(report.issues).toContainEqual(flat);
  expect(report.blockDifferences.map(({ kind }) => kind)).toEqual(report.repetitions.map(() => 'only-final'));
});
