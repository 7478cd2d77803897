import { InputError } from '@surae/analysis';
import { RecordError } from '@surae/records';
import { expect, test } from 'vitest';
import { reasonOf, refused } from '../../../packages/study/src/listed/refused.ts';
import { pullItem } from '../../support/assessed-pulls.ts';

test('a refusal keeps its item, its reason and the hash of what was read', () => {
  expect(refused(pullItem(), 'no', 'ab')).toEqual({ status: 'refused', item: pullItem(), sha256: 'ab', reason: 'no' });
});

test('what a reader can mend is said, anything else is a fault of ours', () => {
  const item = pullItem();
  const record = new RecordError('header-only', { expected: 'rows', actual: 'none' });
  expect(reasonOf(item, record)).toBe(record.message);
  const input = new InputError('too-short', { argument: 'trace', expected: '8', actual: '2' });
  expect(reasonOf(item, input)).toBe(`pull.csv: ${input.message}`);
  expect(reasonOf(item, new Error('boom'))).toBe('pull.csv: internal fault, please report it: boom');
});
