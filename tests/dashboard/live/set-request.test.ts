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

test('the length of the string that was told for a set goes into what is asked about it', () => {
  const string = { ...choice, placement: 'heel', stringRestLengthM: 0.123 } as const;
  const { subject } = setRequest({ choice: string, protocol: FLOOR }, { bodyMassKg: null, heelLeverM: 0.18 }, []);
  expect(subject).toEqual({ heelLeverM: 0.18, stringRestLengthM: 0.123 });
});

test('what was not measured is left out', () => {
  const { subject } = setRequest({ choice, protocol: FLOOR }, { bodyMassKg: null, heelLeverM: null }, []);
  expect(subject).toEqual({});
});
