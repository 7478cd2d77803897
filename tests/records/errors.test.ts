import { expect, test } from 'vitest';
import { RecordError } from '../../packages/records/src/errors.ts';

test('a refusal says file, row, column, what was expected and what came', () => {
  const error = new RecordError('not-a-number', {
    file: 'a.csv',
    row: 7,
    column: 'force [N]',
    expected: 'a number',
    actual: '"x"',
  });
  expect(error.message).toBe('a.csv, row 7, column "force [N]": expected a number, got "x"');
  expect(error.name).toBe('RecordError');
  expect(error).toBeInstanceOf(Error);
});

test('a refusal leaves out the places it does not have', () => {
  expect(new RecordError('empty-file', { expected: 'rows', actual: 'none' }).message).toBe('expected rows, got none');
  const inDocument = new RecordError('invalid-document', { path: 'groups[0]', expected: 'a list', actual: 'null' });
  expect(inDocument.message).toBe('groups[0]: expected a list, got null');
});

test('a refusal keeps the error that caused it', () => {
  const cause = new Error('inner');
  expect(new RecordError('invalid-document', { expected: 'JSON', actual: 'text' }, { cause }).cause).toBe(cause);
});
