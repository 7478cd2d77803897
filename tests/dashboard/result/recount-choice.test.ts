import { protocolFingerprint, withParameters } from '@surae/analysis';
import { FLOOR, INCLINE_10, PROTOCOLS } from '@surae/shared';
import { expect, test } from 'vitest';
import {
  baseProtocol,
  offered,
  otherProtocols,
  recountProtocol,
} from '../../../apps/dashboard/src/result/recount-choice.ts';
import { toldReport } from '../../support/told-visit.ts';

const first = toldReport('left', { count: 20 });

test('another height, another tempo and another protocol make another protocol; the rest stays', () => {
  const changed = recountProtocol(first, { heightFraction: 0.6, cycleTolerance: 0.3 })!;
  expect([changed.id, changed.parameters.heightFraction.value, changed.parameters.cycleTolerance.value]).toEqual([
    INCLINE_10.id,
    0.6,
    0.3,
  ]);
  expect(changed.parameters.surface).toEqual(INCLINE_10.parameters.surface);
  expect(recountProtocol(first, { protocolId: FLOOR.id })!.parameters.surface.value).toBe('floor');
  expect(recountProtocol(first, { protocolId: FLOOR.id, heightFraction: 0.9 })!.parameters.heightFraction.value).toBe(
    0.9,
  );
});

test('what is chosen as it was counted is no other criterion', () => {
  const { heightFraction, cycleTolerance } = INCLINE_10.parameters;
  expect(recountProtocol(first, {})).toBeUndefined();
  expect(
    recountProtocol(first, { heightFraction: heightFraction.value!, cycleTolerance: cycleTolerance.value! }),
  ).toBeUndefined();
  expect(recountProtocol(first, { protocolId: INCLINE_10.id })).toBeUndefined();
  expect(recountProtocol(first, { protocolId: 'of-tomorrow' })).toBeUndefined();
});

test('it begins from the parameters that the set was counted by, and not from those of today', () => {
  const then = withParameters(INCLINE_10, { heightFraction: 0.6 });
  if (!then.ok) throw new Error('the parameter is in its range');
  const fingerprint = protocolFingerprint(then.value, 'heel', 'best-two-of-first-repetitions');
  const kept = { ...first, protocol: { ...first.protocol, fingerprint } };
  expect(baseProtocol(kept, {})!.parameters.heightFraction.value).toBe(0.6);
  expect(recountProtocol(kept, { heightFraction: 0.6 })).toBeUndefined();
  expect(recountProtocol(kept, { heightFraction: 0.75 })!.parameters.heightFraction.value).toBe(0.75);
});

test('the value of the protocol stands among those that are offered, once and in its place', () => {
  expect(offered([0.5, 0.7], 0.6)).toEqual([0.5, 0.6, 0.7]);
  expect(offered([0.5, 0.7], 0.7)).toEqual([0.5, 0.7]);
  expect(offered([0.5, 0.7], null)).toEqual([]);
});

test('a standing set is judged by no seated protocol, nor by its own once more', () => {
  const ids = otherProtocols(first).map(({ id }) => id);
  expect(ids).toContain(FLOOR.id);
  expect(ids).not.toContain(INCLINE_10.id);
  expect(ids.filter((id) => id.startsWith('seated'))).toEqual([]);
  const [seated] = PROTOCOLS.filter(({ id }) => id.startsWith('seated'));
  const others = otherProtocols(toldReport('left', { count: 20, protocol: seated }));
  expect(others.length).toBeGreaterThan(0);
  expect(others.every(({ id }) => id.startsWith('seated') && id !== seated.id)).toBe(true);
});
