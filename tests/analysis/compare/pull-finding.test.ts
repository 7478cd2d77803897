import { pullFinding } from '@surae/analysis';
import { SEATED_FAST_PULL } from '@surae/shared';
import { expect, test } from 'vitest';
import { testedPull } from '../../support/tested-pull.ts';

test('a full recording: the net score with the published error, trials that show a maximum, no published group', () => {
  const found = pullFinding(testedPull('left', 1425), {});
  expect(Math.abs(found.value.value! - 1425)).toBeLessThan(0.5);
  expect(found.value).toMatchObject({ unit: 'N', convention: 'net best-mean, plate under the forefoot' });
  // the error from one test to the next, and a little of the measurement itself
  expect(found.value.u).toBeGreaterThanOrEqual(42.6);
  expect(found.value.u).toBeLessThan(42.7);
  expect(found).toMatchObject({ blocks: [], effort: { good: 'yes' }, pain: { countShows: 'capacity' } });
  expect(found.reference).toEqual({ kind: 'none', reasons: ['not-for-this-measure'] });
});

test('a cell in line is another convention than a plate', () => {
  expect(pullFinding(testedPull('left', 1425, {}, { placement: 'inline' }), {}).value.convention).toBe(
    'net best-mean, cell in line',
  );
});

test('what stands against a recording: pain, an end that was not told, trials that show no maximum', () => {
  const ended = (endReason?: 'pain' | 'safety') =>
    pullFinding(testedPull('left', 1425, {}, { context: endReason === undefined ? {} : { endReason } }), {}).blocks;
  expect(ended('pain')).toEqual(['ended-for-pain']);
  expect(ended('safety')).toEqual(['ended-incomplete']);
  expect(ended()).toEqual(['end-not-recorded']);
  const pull = testedPull('left', 1425);
  const effort = { good: 'no', reasons: ['trials-differ'], used: [], missing: [] } as const;
  expect(pullFinding({ ...pull, report: { ...pull.report, effort } }, {}).blocks).toEqual(['no-maximum']);
});

test('of a rate of rise no error is known, and its effort is not judged', () => {
  const pull = testedPull('left', 1425, {}, { protocol: SEATED_FAST_PULL });
  const found = pullFinding(pull, {});
  expect(found.reliability).toBeNull();
  expect(found.value.u).toBeNull();
  expect(found.blocks).toContain('effort-unknown');
});

test('an own error of the protocol comes first; on the log scale it grows with the force', () => {
  const own = {
    standardError: 0.05,
    standardErrorUpper80: 0.06,
    scale: 'log',
    unit: 'N',
    pairs: 30,
    source: { id: 'own', citation: 'own repeated tests', group: 'own people' },
  } as const;
  const found = pullFinding(testedPull('left', 1425), { 'isometric.seated': own });
  expect(found.reliability?.source.kind).toBe('own-clinic');
  expect(Math.abs(found.value.u! - 0.05 * 1425)).toBeLessThan(0.2);
});
