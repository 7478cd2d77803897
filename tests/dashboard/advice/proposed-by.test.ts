import { GUIDANCE_RULES } from '@surae/shared';
import { expect, test } from 'vitest';
import { proposedByOf, proposedByText } from '../../../apps/dashboard/src/advice/proposed-by.ts';

const rule = GUIDANCE_RULES.find(({ code }) => code === 'start-single')!;

test('what proposed a line is read back as it was kept, with the least supported mark of the rule and its numbers', () => {
  const text = proposedByText(rule, 'right', 'single');
  expect(text).toBe('guidance.start-single/1/common-practice/right/single');
  expect(proposedByOf(text)).toEqual({
    rule: 'guidance.start-single',
    version: '1',
    mark: 'common-practice',
    leg: 'right',
    level: 'single',
  });
  expect(proposedByOf(proposedByText(rule, 'left', null))?.level).toBeNull();
});

test.each([
  null,
  '',
  'a rule of another program',
  'a/1/read/both/single',
  'a/1/certain/left/single',
  'a/1/read/left/b/c',
])('what is not in this form says nothing: %s', (text) => expect(proposedByOf(text)).toBeNull());

test('no id of a rule holds the stroke that parts', () => {
  for (const { id, version } of GUIDANCE_RULES) expect(`${id}${version}`).not.toContain('/');
});
