import { expect, test } from 'vitest';
import { earlyRiseTable } from '../../apps/cli/src/early-rise-table.ts';
import { pullText } from '../../apps/cli/src/pull-text.ts';
import { assessedPulls, pullItem } from '../support/assessed-pulls.ts';
import { exponentialEffort } from '../support/made-pull.ts';
import { madeRamps, madeRecording } from '../support/made-recording.ts';

const efforts = [3, 9].map((atS) => exponentialEffort(atS, 1000, 0.1, 1.5));
const text = madeRecording({ efforts, lengthS: 14, sampleRateHz: 1000, noise: 0.5, rest: () => 85 });
const fast = assessedPulls(text, pullItem({ protocol: 'isometric.seated-fast' }));

test('impulse and times of each fast effort with their uncertainties: 113.5 N.s, 35.7 ms, 69.3 ms', () => {
  const [head, first, second, ...more] = earlyRiseTable(fast.report, 80);
  expect(head).toMatch(/^ +nr +0-200 ms N\.s +to 30 % ms +to 50 % ms$/);
  expect(first).toMatch(/^ +1 +11[34](\.\d+)? ± \d\S* +3[56](\.\d+)? ± \d\S* +(69|70)(\.\d+)? ± \d\S*$/);
  expect(second).toMatch(/^ +2 /);
  expect(more).toEqual([]);
});

test('an effort without them says why; where none has them there is no table', () => {
  const [one, two] = fast.report.efforts;
  const none = { windowS: 0.2, impulse: null, reached: [], reason: 'countermovement' } as const;
  const mixed = { ...fast.report, efforts: [one, { ...two, early: none }] };
  expect(earlyRiseTable(mixed, 80).at(-1)).toBe('  2   the force dipped before it rose');
  expect(earlyRiseTable(assessedPulls(madeRecording(madeRamps([1400]))).report, 80)).toEqual([]);
});

test('it stands in the report, in no line wider than the screen', () => {
  const lines = pullText(fast, { width: 80, drawsBlocks: true });
  expect(lines.filter((line) => line.includes('to 50 % ms'))).toHaveLength(1);
  for (const line of earlyRiseTable(fast.report, 60)) expect(line.length).toBeLessThanOrEqual(60);
});
