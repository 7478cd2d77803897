import { defaultSettings, type Issue } from '@surae/analysis';
import { expect, test } from 'vitest';
import { gateOf } from '../../../packages/analysis/src/assess/gate.ts';
import { detectedSet } from '../../support/detected-set.ts';

const settings = defaultSettings().judging;
const ten = Array<number>(10).fill(0.1);
const issue = (code: Issue['code'], severity: Issue['severity']): Issue => ({ code, severity, fromS: 3, toS: 4 });

test('a clean set of a known side is usable', () => {
  expect(gateOf(detectedSet({ heightsM: ten }), 'left', settings)).toEqual({ usable: 'yes', reasons: [] });
});

test('without a side, or with a sensor that moved, nobody can tell', () => {
  expect(gateOf(detectedSet({ heightsM: ten }), undefined, settings)).toEqual({
    usable: 'cannot_tell',
    reasons: ['side-unknown'],
  });
  const moved = detectedSet({ heightsM: ten, detection: { issues: [issue('sensor-moved', 'warning')] } });
  expect(gateOf(moved, 'left', settings)).toMatchObject({ usable: 'cannot_tell', reasons: ['doubtful-signal'] });
});

test('an invalid signal is not usable', () => {
  const flat = detectedSet({ heightsM: ten, detection: { issues: [issue('flat', 'invalid')] } });
  expect(gateOf(flat, 'left', settings)).toMatchObject({ usable: 'no', reasons: ['invalid-signal'] });
});

test('more than a twentieth of the set lost in gaps is too much, gaps outside the set are not', () => {
  // the set runs from 2 to 22 s
  const lost = (fromS: number, toS: number) => detectedSet({ heightsM: ten, motion: { gaps: [{ fromS, toS }] } });
  expect(gateOf(lost(5, 6), 'left', settings).usable).toBe('yes');
  expect(gateOf(lost(5, 6.1), 'left', settings).reasons).toEqual(['gaps']);
  expect(gateOf(lost(22, 25), 'left', settings).usable).toBe('yes');
});

test('a note is no reason', () => {
  const noted = detectedSet({ heightsM: ten, detection: { issues: [issue('saturated', 'note')] } });
  expect(gateOf(noted, 'left', settings).usable).toBe('yes');
});
