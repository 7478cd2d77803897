import { protocolFingerprint, pullFingerprint } from '@surae/analysis';
import { judgedProtocol, judgedPullProtocol } from '@surae/casebook';
import { FLOOR, INCLINE_10, SEATED_PULL } from '@surae/shared';
import { expect, test } from 'vitest';

const other = {
  ...FLOOR,
  version: '0',
  parameters: { ...FLOOR.parameters, heightFraction: { ...FLOOR.parameters.heightFraction, value: 0.6 } },
};
const fingerprint = protocolFingerprint(other, 'heel', 'best-two-of-first-repetitions');

test('the parameters are those that the report was judged by, not those of today', () => {
  const judged = judgedProtocol({ protocol: { id: FLOOR.id, version: '0', fingerprint } });
  expect(judged?.parameters.heightFraction.value).toBe(0.6);
  expect(judged?.version).toBe('0');
  expect(judged?.parameters.surface.value).toBe('floor');
});

test('a fingerprint that cannot be read leaves those of today, under the version of the report', () => {
  const judged = judgedProtocol({ protocol: { id: INCLINE_10.id, version: '9', fingerprint: 'board' } });
  expect(judged).toEqual({ ...INCLINE_10, version: '9' });
});

test('a protocol that is not known here is none', () => {
  expect(judgedProtocol({ protocol: { id: 'single-leg.moon', version: '1', fingerprint } })).toBeUndefined();
});

test('an isometric protocol is restored likewise, and one that is not known here is none', () => {
  const { parameters } = SEATED_PULL;
  const longer = { ...SEATED_PULL, parameters: { ...parameters, hold: { ...parameters.hold, value: 7 } } };
  const kept = { version: '1', fingerprint: pullFingerprint(longer, 'platform') };
  expect(judgedPullProtocol({ protocol: { id: SEATED_PULL.id, ...kept } })?.parameters.hold.value).toBe(7);
  expect(judgedPullProtocol({ protocol: { id: FLOOR.id, ...kept } })).toBeUndefined();
});
