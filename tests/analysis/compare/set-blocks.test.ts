import { type ComparedReport, RATIO_BLOCKS, SET_BLOCKS, setBlocks } from '@surae/analysis';
import { expect, test } from 'vitest';
import { madeReport, sureCount } from '../../support/made-visit.ts';

const full = { good: 'yes', signs: ['height-drop'], reason: 'signs-of-fatigue' } as const;
const whole: ComparedReport = { ...madeReport('left', sureCount(20)), effort: full };
const endOf = (reason: Parameters<typeof madeReport>[2]) => madeReport('left', {}, reason).end;

function handsOnce(result: 'fail' | 'pass', afterEnd: boolean): Partial<ComparedReport> {
  const [first, ...others] = whole.repetitions;
  const hands = { ...first.criteria.hands, result };
  return { repetitions: [{ ...first, afterEnd, criteria: { ...first.criteria, hands } }, ...others] };
}

test('a whole set is interpreted', () => {
  expect(setBlocks(whole)).toEqual([]);
});

test.each([
  ['ended-for-pain', { end: endOf('pain') }],
  ['ended-incomplete', { end: endOf('technical') }],
  ['end-not-recorded', { end: endOf(null) }],
  ['censored', { end: endOf('cap') }],
  ['censored', { count: { ...whole.count, censored: true } }],
  ['signal-not-usable', { gate: { usable: 'cannot_tell', reasons: ['gaps'] } }],
  ['effort-not-full', { effort: { good: 'no', signs: [], reason: 'stopped-before-signs-of-fatigue' } }],
  ['effort-unknown', { effort: { good: 'cannot_tell', signs: [], reason: 'too-little-known' } }],
  ['hands-used', handsOnce('fail', false)],
  ['no-reference', { reference: null }],
  ['fixed-test', { end: endOf('fixed-count-done') }],
] satisfies [string, Partial<ComparedReport>][])('%s alone', (block, change) => {
  expect(setBlocks({ ...whole, ...change })).toEqual([block]);
});

// a report from a file may contradict itself: the answer that stands against it counts
test.each([
  ['ended-for-pain', { end: { ...whole.end, class: 'tolerance' } }],
  ['ended-for-pain', { end: { ...endOf('pain'), class: 'capacity' } }],
  ['fixed-test', { end: { ...endOf('fixed-count-done'), class: 'capacity' } }],
  ['end-not-recorded', { end: { ...whole.end, class: 'unknown' } }],
  ['signal-not-usable', { gate: { usable: 'no', reasons: [] } }],
  ['signal-not-usable', { gate: { usable: 'cannot_tell', reasons: ['side-unknown', 'gaps'] } }],
  ['effort-not-full', { effort: { good: 'no', signs: [], reason: 'not-a-capacity-test' } }],
  ['effort-not-full', { effort: { ...full, good: 'no' } }],
] satisfies [string, Partial<ComparedReport>][])('%s, against itself', (block, change) => {
  expect(setBlocks({ ...whole, ...change })).toEqual([block]);
});

test('an effort that is not full because of how the set ended has that one reason', () => {
  const effort = { good: 'no', signs: [], reason: 'not-a-capacity-test' } as const;
  expect(setBlocks({ ...whole, effort, end: endOf('pain') })).toEqual(['ended-for-pain']);
});

test('hands after the end of the test are no reason', () => {
  expect(setBlocks({ ...whole, ...handsOnce('fail', true) })).toEqual([]);
});

test('every one of them is also a reason against a ratio, in the same order', () => {
  expect(RATIO_BLOCKS.filter((block) => (SET_BLOCKS as readonly string[]).includes(block))).toEqual([...SET_BLOCKS]);
});
