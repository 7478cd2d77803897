import { expect, test } from 'vitest';
import type { ExclusionRule } from '../../../packages/study/src/declared/study-document.ts';
import { meetsRule, reasonsByRule } from '../../../packages/study/src/quality/exclusion-rules.ts';
import { declaredStudy } from '../../support/declared-study.ts';
import { studyTrial } from '../../support/study-trials.ts';

const meets = (rule: ExclusionRule, trial = studyTrial('a.csv', {}, 12)): boolean =>
  meetsRule('heel-raise', rule, trial);

test('a rule on a figure leaves out what lies outside, not what lies on the limit', () => {
  expect(meets({ column: 'count.scored', below: 12 })).toBe(false);
  expect(meets({ column: 'count.scored', below: 12.5 })).toBe(true);
  expect(meets({ column: 'count.scored', above: 12 })).toBe(false);
  expect(meets({ column: 'count.scored', above: 11.5 })).toBe(true);
  expect(meets({ column: 'count.scored', below: 5, above: 11 })).toBe(true);
});

test('a figure is asked in the unit of its column', () => {
  // 0.1 m is 100 mm
  expect(meets({ column: 'measures.peak_height_mm', below: 101 })).toBe(true);
  expect(meets({ column: 'measures.peak_height_mm', below: 99 })).toBe(false);
});

test('what was not measured or not told meets no rule', () => {
  const nothing = studyTrial('a.csv', {}, null, { figures: null, refusal: 'no table' });
  expect(meets({ column: 'count.scored', below: 1e9 }, nothing)).toBe(false);
  expect(meets({ column: 'gate.usable', is: ['no', 'yes'] }, nothing)).toBe(false);
  expect(meets({ manifest: 'footwear', is: ['shoe'] }, nothing)).toBe(false);
  expect(meets({ column: 'count.scored', below: 1 }, studyTrial('a.csv', {}, null))).toBe(false);
});

test('words, flags, cells and issues', () => {
  const trial = studyTrial('a.csv', { footwear: 'shoe' }, 12, {
    issues: [{ code: 'saturated', severity: 'note', fromS: 1, toS: 2 }],
  });
  expect(meets({ column: 'gate.usable', is: ['yes'] }, trial)).toBe(true);
  expect(meets({ column: 'gate.usable', is: ['no'] }, trial)).toBe(false);
  expect(meets({ column: 'count.censored', is: [false] }, trial)).toBe(true);
  expect(meets({ column: 'count.censored', is: ['false'] }, trial)).toBe(false);
  expect(meets({ manifest: 'footwear', is: ['shoe', 'sock'] }, trial)).toBe(true);
  expect(meets({ issue: 'saturated' }, trial)).toBe(true);
  expect(meets({ issue: 'gap' }, trial)).toBe(false);
});

test('all reasons that a trial meets, without those that an analysis does without', () => {
  const trial = studyTrial('a.csv', { footwear: 'shoe' }, 1, { figures: { count: { attempted: 2, scored: 1 } } });
  expect(reasonsByRule(declaredStudy(), trial)).toEqual(['few', 'shod']);
  expect(reasonsByRule(declaredStudy(), trial, ['few'])).toEqual(['shod']);
});
