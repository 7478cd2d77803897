import { ruleFaults } from '@surae/guidance';
import { GUIDANCE_FACTS, GUIDANCE_RULES, type GuidanceRule } from '@surae/shared';
import { expect, test } from 'vitest';

const rule = { ...GUIDANCE_RULES.find(({ code }) => code === 'start-learn')!, standIns: [] };
const ten = rule.numbers['ten'];

test('the rules as they are given have none', () => {
  expect(ruleFaults(GUIDANCE_RULES, GUIDANCE_FACTS)).toEqual([]);
});

const faulty: readonly (readonly [string, readonly string[], Partial<GuidanceRule>])[] = [
  ['a fact that is not there', ['unknown-fact'], { when: { fact: 'shoe-size', is: 'yes' }, numbers: {} }],
  [
    'a fact of a leg, asked of the person',
    ['fact-of-leg'],
    { of: 'person', when: { fact: 'place', is: 'no' }, numbers: {} },
  ],
  ['a code that the fact cannot have', ['unknown-code'], { when: { not: { fact: 'place', is: 'knee' } }, numbers: {} }],
  ['a number against a code', ['number-of-code'], { when: { fact: 'place', above: 'ten' }, numbers: { ten } }],
  ['a number that is not there', ['unknown-number'], { when: { fact: 'valid-raises', above: 'nine' }, numbers: {} }],
  ['a number in another unit', ['other-unit'], { when: { fact: 'days-at-level', above: 'ten' }, numbers: { ten } }],
  ['a number that nothing uses', ['unused-number'], { when: { fact: 'place', is: 'no' }, numbers: { ten } }],
  [
    'a stand-in that the fact does not have',
    ['no-stand-in'],
    { when: { fact: 'place', is: 'no' }, numbers: {}, standIns: ['place'] },
  ],
  [
    'a block that stands against nothing',
    ['block-without-what'],
    { when: { fact: 'place', is: 'no' }, numbers: {}, proposes: { kind: 'block', code: 'x', touches: [] } },
  ],
  [
    'something that follows what comes later',
    ['follows-later'],
    { when: { fact: 'place', is: 'no' }, numbers: {}, follows: { about: 'prompt', code: 'x' } },
  ],
];

test.each(faulty)('%s is found', (_, faults, change) => {
  expect(ruleFaults([{ ...rule, ...change }], GUIDANCE_FACTS).map(({ fault }) => fault)).toEqual(faults);
});

test('two rules of one code are found', () => {
  expect(ruleFaults([rule, rule], GUIDANCE_FACTS).map(({ fault }) => fault)).toEqual(['twice']);
});
