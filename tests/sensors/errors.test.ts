import { SensorError } from '@surae/sensors';
import { expect, test } from 'vitest';

test('an error of a sensor carries a code, what it says and what caused it', () => {
  const cause = new Error('the radio is off');
  const error = new SensorError('lost', 'The connection broke.', { cause });
  expect(error).toMatchObject({ name: 'SensorError', code: 'lost', message: 'The connection broke.', cause });
});
