import { expect, test } from 'vitest';
import { effortTable, effortWords } from '../../apps/cli/src/effort-table.ts';
import { assessedPulls, pullItem } from '../support/assessed-pulls.ts';
import { exponentialEffort } from '../support/made-pull.ts';
import { madeRamps, madeRecording } from '../support/made-recording.ts';

const { report } = assessedPulls(madeRecording(madeRamps([1400, 1425])));

test('one line an effort, net, no rate of a ramp', () => {
  const [head, first, second, ...more] = effortTable(report, 80);
  expect(head).toMatch(/^ +nr +onset s +mean N +peak N +held s +counts$/);
  expect(first).toMatch(/^ +1 +(?:3\.9|4\.0)\d\d +1400\.\d+ ± 0\.\d+ +140\d\.\d ± 0\.\d +4\.\d +yes$/);
  expect(second).toMatch(/ 1425\.\d/);
  expect(more).toEqual([]);
});

test('rates of fast efforts stand in columns of their own', () => {
  const efforts = [3, 9].map((atS) => exponentialEffort(atS, 1000, 0.1, 1.5));
  const text = madeRecording({ efforts, lengthS: 14, sampleRateHz: 1000, noise: 0.5, rest: () => 85 });
  const fast = assessedPulls(text, pullItem({ protocol: 'isometric.seated-fast' }));
  const [head, first] = effortTable(fast.report, 100);
  expect(head).toMatch(/onset ± ms +0-100 ms N\/s +0-200 ms N\/s/);
  // 1000 N (1 - exp(-1)) in 0.1 s
  expect(first).toMatch(/ [01]\.\d +63\d\d ± \d+ /);
});

test('every reason is said, what is open as a question', () => {
  const [effort] = report.efforts;
  expect(effortWords({ ...effort, accepted: 'no', reasons: ['clipped', 'lifted'] })).toBe(
    'no: the sensor was at the end of its range: the true force is higher; heel or hip lifted',
  );
  expect(effortWords({ ...effort, accepted: 'cannot_tell', undecided: ['tare-error'] })).toBe(
    'cannot tell: load at rest unchanged?',
  );
});
