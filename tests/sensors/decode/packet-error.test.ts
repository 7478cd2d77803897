import { PacketError } from '@surae/sensors';
import { expect, test } from 'vitest';

test('an error says where, what was expected and what came, for each fault', () => {
  const problems = [
    { path: 'fields[1].form', expected: 'u8', actual: '"x"' },
    { path: '', expected: 'a list', actual: 'null' },
  ];
  const error = new PacketError(problems);
  expect(error).toMatchObject({ name: 'PacketError', problems });
  expect(error.message).toBe('fields[1].form: expected u8, got "x"; expected a list, got null');
});
