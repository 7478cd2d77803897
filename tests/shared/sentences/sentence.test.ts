import { expect, test } from 'vitest';
import { sentences } from '../../../shared/src/sentences/sentence.ts';

test('each code gets its own text under an id of family and code, marked as ours', () => {
  const ours = { version: '1', unit: '1', source: 'ours', mark: 'computed' };
  expect(sentences('greeting', { good: 'Hello.', 'very-good': 'Welcome.' })).toEqual({
    good: { ...ours, id: 'sentence.greeting.good', text: 'Hello.' },
    'very-good': { ...ours, id: 'sentence.greeting.very-good', text: 'Welcome.' },
  });
});

test('the order of the codes is kept', () => {
  expect(Object.keys(sentences('x', { b: '1', a: '2', c: '3' }))).toEqual(['b', 'a', 'c']);
});
