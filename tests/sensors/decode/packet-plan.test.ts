import { PacketError } from '@surae/sensors';
import { expect, test } from 'vitest';
import type { PacketLayout } from '../../../packages/sensors/src/decode/layout.ts';
import { channelBit, planPacket } from '../../../packages/sensors/src/decode/packet-plan.ts';

const layout: PacketLayout = {
  order: 'big',
  fields: [
    { kind: 'counter', form: 'u8', counts: 'packets' },
    {
      kind: 'samples',
      repeat: 2,
      values: [
        { kind: 'channel', form: 'i12', quantity: 'force', axis: null, unit: 'N', scale: 0.01, notKnown: ['0x7FF'] },
        { kind: 'skip', bits: 4 },
        { kind: 'channel', form: 'u8', quantity: 'torque', axis: null, unit: 'N.cm' },
      ],
    },
    { kind: 'constant', form: 'u16', value: 7 },
  ],
};

test('a plan knows the bits of every part', () => {
  const plan = planPacket(layout);
  expect([plan.beforeBits, plan.sampleBits, plan.afterBits]).toEqual([8, 24, 16]);
  expect(plan.channels.map(({ bitsBefore }) => bitsBefore)).toEqual([0, 16]);
  expect(plan.channels[0]).toMatchObject({ scale: { by: 100 }, toSi: { times: 1 }, notKnown: [0x7ff], order: 'big' });
  expect(plan.channels[1]).toMatchObject({ nature: { quantity: 'torque', unit: 'N.m' }, toSi: { by: 100 } });
});

test('a channel begins where its arrangement says', () => {
  const plan = planPacket(layout);
  expect([0, 1].map((i) => channelBit(plan, plan.channels[1], i, 2))).toEqual([24, 48]);
  const byChannel = { ...plan, byChannel: true };
  // two forces of 12 bits, two gaps of 4, then two torques
  expect([0, 1].map((i) => channelBit(byChannel, plan.channels[1], i, 2))).toEqual([40, 48]);
});

test('a layout that cannot be used is refused with all that is wrong', () => {
  expect(() => planPacket({ order: 'big', fields: [] })).toThrow(PacketError);
});
