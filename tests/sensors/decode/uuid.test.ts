import { expect, test } from 'vitest';
import { assignedUuid, uuidPattern } from '../../../packages/sensors/src/decode/uuid.ts';

test('an assigned number stands at the head of the base UUID', () => {
  // as Web Bluetooth spells the heart rate service, from memory
  expect(assignedUuid(0x180d)).toBe('0000180d-0000-1000-8000-00805f9b34fb');
  expect(assignedUuid(0x2c07)).toMatch(uuidPattern);
  expect('0000180D-0000-1000-8000-00805F9B34FB').not.toMatch(uuidPattern);
  expect('180d').not.toMatch(uuidPattern);
});
