import type { PullSet, SetUpKept } from '@surae/casebook';
import { expect, test } from 'vitest';
import { pullCautions } from '../../../apps/dashboard/src/result/pull-sentences.ts';
import { restAgreement, restAgreementWords } from '../../../apps/dashboard/src/result/rest-agreement.ts';
import { donePullSet, madePullVisit } from '../../support/made-pull-visit.ts';

const done = donePullSet('left');
const zero = { level: 3, u: 0.1, noise: 0.2, quantity: 'force', emptyBy: 'quantity', at: '' } as const;

/** A leg that pressed so much beside its pushes, weighed before at so much above a zero of 3 N. */
function leg(restN: number, weighedN: number, setUp: Partial<SetUpKept> = {}, u = 0.5): PullSet {
  const restLoad = { loadN: weighedN, uN: 0.4, spanS: 2, at: '2026-03-01T09:20:00.000+01:00' };
  const kept = { lights: [], zero, certificate: null, restLoad, ...setUp };
  const polarity = { sign: 1, clear: true } as const;
  return {
    ...done,
    choice: { ...done.choice, setUp: kept },
    report: { ...done.report!, unit: 'N', polarity, restLoad: { value: restN, u } },
  };
}

test('both agree within what a leg at rest moves, the zero of the empty plate taken off', () => {
  const near = restAgreement(leg(67, 60));
  expect(near).toMatchObject({ agree: 'yes', restN: 64, weighedN: 60, byN: 4 });
  expect(near!.byUN).toBeCloseTo(Math.hypot(0.5, 0.4), 12);
  expect(restAgreement(leg(103, 60))?.agree).toBe('no');
  expect(restAgreement(leg(23, 60))?.agree).toBe('no');
  expect(restAgreement(leg(73, 60, {}, 4))?.agree).toBe('cannot-tell');
});

test('a plate that reads downwards, one that was answered about, and one without a zero are reckoned alike', () => {
  const down = leg(57, 60);
  const polarity = { sign: -1, clear: true } as const;
  expect(restAgreement({ ...down, report: { ...down.report!, polarity } })?.restN).toBe(60);
  expect(restAgreement(leg(90, 60, { readAs: { force: 10 } }))?.restN).toBe(60);
  expect(restAgreement(leg(60, 60, { zero: null }))?.restN).toBe(60);
});

test('where one of the two is not known nothing is said', () => {
  expect(restAgreement(done)).toBeNull();
  expect(restAgreementWords(done)).toBeNull();
  const weighed = leg(67, 60);
  expect(restAgreement({ ...weighed, report: null })).toBeNull();
  expect(restAgreement({ ...weighed, report: { ...weighed.report!, restLoad: null } })).toBeNull();
  expect(restAgreement({ ...weighed, report: { ...weighed.report!, unit: 'N.m' } })).toBeNull();
});

test('each verdict has its sentence, and a difference is one of the cautions', () => {
  expect(restAgreementWords(leg(67, 60))).toMatch(/weighed at 60 N, to 0\.4 N; .* pressed 64 N .*: both agree\.$/);
  expect(restAgreementWords(leg(23, 60))).toMatch(/pressed 20 N above the zero, 40 N apart \(to 0\.6 N\)/);
  expect(restAgreementWords(leg(73, 60, {}, 4))).toMatch(/cannot be told\.$/);
  const texts = (set: PullSet) => pullCautions(madePullVisit(set), 120).map(({ text }) => text);
  expect(texts(leg(23, 60))).toContain(restAgreementWords(leg(23, 60)));
  expect(texts(leg(67, 60))).not.toContain(restAgreementWords(leg(67, 60)));
});
