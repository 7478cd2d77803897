import { FLOOR } from '@surae/shared';
import { expect, test } from 'vitest';
import { setRequest } from '../../../apps/dashboard/src/live/set-request.ts';

const choice = {
  side: 'right',
  protocolId: FLOOR.id,
  protocolFingerprint: 'abc',
  placement: 'foot',
  origin: 'simulated',
} as const;

test('what was measured and marked is asked about', () => {
  const marks = [{ atS: 3, criterion: 'knee' }] as const;
  expect(setRequest({ choice, protocol: FLOOR }, { bodyMassKg: 70, heelLeverM: 0.18 }, marks)).toEqual({
    placement: 'foot',
    side: 'right',
    protocol: FLOOR,
    subject: { bodyMassKg: 70, heelLeverM: 0.18 },
    context: { marks },
  });
});

test('what was not measured is left out', () => {
  const { subject } = setRequest({ choice, protocol: FLOOR }, { bodyMassKg: null, heelLeverM: null }, []);
  expect(subject).toEqual({});
});
