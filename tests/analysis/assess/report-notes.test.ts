import { FLOOR, LOADED } from '@surae/shared';
import { expect, test } from 'vitest';
import { ownIssues, withheldReasons } from '../../../packages/analysis/src/assess/report-notes.ts';
import { detectedSet, PLAIN_REQUEST } from '../../support/detected-set.ts';

test('every reason for a missing figure is given', () => {
  expect(withheldReasons({ ...PLAIN_REQUEST, placement: 'foot', protocol: LOADED }, false)).toEqual([
    'no-heel-lever',
    'no-body-mass',
    'no-external-mass',
    'no-ankle-geometry',
  ]);
  const subject = { bodyMassKg: 70, heelLeverM: 0.18, ankleLeverM: 0.15, ankleAngleRad: 0.4 };
  expect(withheldReasons({ ...PLAIN_REQUEST, protocol: FLOOR, subject }, true)).toEqual([]);
});

test('trunk and platform do not ask for the lever of a foot', () => {
  expect(withheldReasons({ ...PLAIN_REQUEST, placement: 'trunk', subject: { bodyMassKg: 70 } }, true)).toEqual([]);
});

test('a raised reference is noted where the repetition is, block differences over the set', () => {
  const detection = detectedSet({ heightsM: [0.1, 0.12] });
  const reference = { heightM: 0.12, heightUM: 0, fromRepetitions: [2], raised: true };
  const difference = { kind: 'only-block', repetition: null, finalTopS: null, blockTopS: 1 } as const;
  expect(ownIssues(detection, reference, [difference])).toEqual([
    { code: 'reference-raised', severity: 'note', fromS: 4, toS: 6, details: { repetition: 2 } },
    { code: 'changed-in-final-pass', severity: 'note', fromS: 2, toS: 6, details: { count: 1 } },
  ]);
});

test('an ordinary set, and an empty one, need no note', () => {
  const reference = { heightM: 0.1, heightUM: 0, fromRepetitions: [1, 2], raised: false };
  expect(ownIssues(detectedSet({ heightsM: [0.1] }), reference, [])).toEqual([]);
  expect(ownIssues(detectedSet({ heightsM: [] }), undefined, [])).toEqual([]);
});
