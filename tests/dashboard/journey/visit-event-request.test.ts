import { expect, test } from 'vitest';
import { visitEvent } from '../../../apps/dashboard/src/journey/visit-event-request.ts';

test('a request carries its event, and leaves the element that asks', () => {
  const request = visitEvent({ kind: 'rest-over', restS: 120 });
  expect(request.type).toBe('visit-event');
  expect(request.detail).toEqual({ kind: 'rest-over', restS: 120 });
  expect([request.bubbles, request.composed]).toEqual([true, true]);
});
