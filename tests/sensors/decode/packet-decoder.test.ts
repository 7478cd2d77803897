import { type Decoded, type DecodedPacket, type PacketLayout, packetDecoder, packetEncoder } from '@surae/sensors';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readBits, writeBits } from '../../../packages/sensors/src/decode/bits.ts';
import { type FormParts, integerRange } from '../../../packages/sensors/src/decode/form.ts';
import { type PacketPlan, planPacket } from '../../../packages/sensors/src/decode/packet-plan.ts';
import type { Factor } from '../../../packages/sensors/src/decode/units.ts';
import { arbitraryLayout } from '../../support/arbitrary-layouts.ts';
import { isLong, runs } from '../../support/runs.ts';

const layout: PacketLayout = {
  order: 'little',
  fields: [
    { kind: 'constant', form: 'u8', value: 3 },
    { kind: 'counter', form: 'u8', counts: 'packets' },
    { kind: 'time', form: 'u16', unit: 'ms', marks: 'last' },
    { kind: 'count', form: 'u8' },
    {
      kind: 'samples',
      repeat: 'count',
      values: [
        {
          kind: 'channel',
          form: 'i16',
          quantity: 'force',
          axis: null,
          unit: 'N',
          scale: 0.1,
          offset: -5,
          notKnown: ['0x7FFF'],
        },
        { kind: 'channel', form: 'f32', quantity: 'angle', axis: 'y', unit: 'deg', order: 'big' },
      ],
    },
  ],
};
const sample = [0x31, 0x01, 0x43, 0x34, 0x00, 0x00];

describe('a packet of whole bytes', () => {
  const decoder = packetDecoder(layout);

  test('says what its packets hold', () => {
    expect(decoder.channels).toEqual([
      { quantity: 'force', axis: null, unit: 'N' },
      { quantity: 'angle', axis: 'y', unit: 'rad' },
    ]);
    expect(decoder.sentUnits).toEqual(['N', 'deg']);
    expect(decoder.counter).toEqual({ counts: 'packets', modulus: 256 });
    expect(decoder.time).toEqual({ marks: 'last', stepS: 0.001, periodS: 65.536 });
  });

  test('becomes SI', () => {
    // 0x0131 = 305: 30.5 - 5 N; 0x43340000 is 180 as a float
    expect(decoder.decode(Uint8Array.of(3, 9, 0x10, 0x27, 1, ...sample))).toEqual({
      kind: 'packet',
      counter: 9,
      timeS: 10,
      sampleCount: 1,
      channels: [
        { values: [25.5], missing: [] },
        { values: [Math.PI], missing: [] },
      ],
    });
  });

  test('has a cause for every value that is missing', () => {
    const bytes = Uint8Array.of(3, 9, 0, 0, 2, ...sample, 0xff, 0x7f, 0x7f, 0xc0, 0, 0);
    const { channels } = decoder.decode(bytes) as DecodedPacket;
    expect(channels).toEqual([
      { values: [25.5, null], missing: [{ index: 1, cause: 'not-known', atByte: 11 }] },
      { values: [Math.PI, null], missing: [{ index: 1, cause: 'not-finite', atByte: 13 }] },
    ]);
  });

  test('that is too short, too long or of another kind is refused with the byte, and with what could be read', () => {
    const refused = (...bytes: number[]): unknown => decoder.decode(Uint8Array.from(bytes));
    expect(refused(3, 9, 0x10, 0x27, 2, ...sample)).toEqual({
      kind: 'refused',
      code: 'too-short',
      atByte: 11,
      expected: '17 bytes',
      actual: '11 bytes',
      counter: 9,
      timeS: 10,
    });
    expect(refused(3, 9, 0)).toMatchObject({
      code: 'too-short',
      atByte: 3,
      expected: 'at least 5 bytes',
      actual: '3 bytes',
      counter: 9,
      timeS: null,
    });
    expect(refused(3, 9, 0, 0, 1, ...sample, 7)).toMatchObject({
      code: 'too-long',
      atByte: 11,
      expected: '11 bytes',
      actual: '12 bytes',
    });
    expect(refused(4, 9, 0, 0, 1, ...sample)).toMatchObject({
      code: 'other-kind',
      atByte: 0,
      expected: 'constant 3',
      actual: '4',
      counter: null,
    });
    expect(refused()).toMatchObject({ code: 'too-short', atByte: 0, actual: '0 bytes' });
  });
});

test('samples that fill a packet are as many as fit, one at least', () => {
  const decoder = packetDecoder({
    order: 'big',
    fields: [
      {
        kind: 'samples',
        repeat: 'fill',
        arrangement: 'by-channel',
        values: [
          { kind: 'channel', form: 'u12', quantity: 'force', axis: null, unit: 'N' },
          { kind: 'channel', form: 'u12', quantity: 'torque', axis: null, unit: 'N.m' },
        ],
      },
      { kind: 'time', form: 'f32', unit: 's' },
    ],
  });
  expect(decoder.time).toEqual({ marks: 'first', stepS: null, periodS: null });
  const bytes = Uint8Array.of(0x00, 0x10, 0x02, 0x00, 0x30, 0x04, 0x3f, 0xc0, 0, 0);
  expect(decoder.decode(bytes)).toMatchObject({
    sampleCount: 2,
    timeS: 1.5,
    channels: [{ values: [1, 2] }, { values: [3, 4] }],
  });
  expect(decoder.decode(bytes.subarray(3))).toMatchObject({ sampleCount: 1 });
  expect(decoder.decode(bytes.subarray(1))).toMatchObject({
    code: 'too-long',
    atByte: 7,
    expected: 'whole samples, such as 7 bytes',
  });
  expect(decoder.decode(bytes.subarray(6))).toMatchObject({
    code: 'too-short',
    expected: 'at least 7 bytes',
    actual: '4 bytes',
  });
  // a clock that is no number is no time, and the samples stay
  const lost = decoder.decode(Uint8Array.of(0, 0x10, 0x02, 0x7f, 0xc0, 0, 0));
  expect(lost).toMatchObject({ kind: 'packet', timeS: null, sampleCount: 1 });
});

/** Any code of a channel, of up to 46 bits so that rounding in SI cannot reach the next code. */
function arbitraryCode(form: FormParts, share: number): number {
  const { least, greatest } = form.kind === 'float' ? { least: -1000, greatest: 1000 } : integerRange(form);
  const wide = 2 ** 46;
  return Math.round(Math.max(least, -wide) + share * (Math.min(greatest, wide) - Math.max(least, -wide)));
}

const times = (factor: Factor): number => ('by' in factor ? 1 / factor.by : factor.times);

test('what is written comes back, in any layout, and becomes the same bytes again', () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(
      arbitraryLayout,
      fc.array(share, { minLength: 60, maxLength: 60 }),
      fc.nat(),
      (any, shares, counter) => {
        const plan = planPacket(any);
        const count = typeof plan.repeat === 'number' ? plan.repeat : 1 + (counter % 6);
        const codes = plan.channels.map(({ form }, c) =>
          Array.from({ length: count }, (_, i) => arbitraryCode(form, shares[(7 * i + c) % 60])),
        );
        // the definition of a layout, written out
        const channels = plan.channels.map(({ scale, offset, toSi, notKnown }, c) =>
          codes[c].map((code) => (notKnown.includes(code) ? null : (code * times(scale) + offset) * times(toSi))),
        );
        const bytes = packetEncoder(any)({ counter, timeS: 1.25, channels });
        const decoder = packetDecoder(any);
        const decoded = decoder.decode(bytes) as DecodedPacket;
        expect(decoded).toMatchObject({ kind: 'packet', sampleCount: count });
        expect(decoded.counter).toBe(decoder.counter === null ? null : counter % decoder.counter.modulus!);
        for (const [c, { form, scale, offset, toSi }] of plan.channels.entries()) {
          const { values, missing } = decoded.channels[c];
          expect(missing.map(({ index }) => index)).toEqual(channels[c].flatMap((one, i) => (one === null ? [i] : [])));
          for (const [i, value] of values.entries()) {
            if (value === null) continue;
            const code = (value / times(toSi) - offset) / times(scale);
            // a double carries 53 bits; a float of 16 bits steps by a half at 1000, and one of 32 is far finer
            const coarse = form.kind === 'float' ? (form.bits === 16 ? 0.5 : 1e-3) : 0;
            const rounding = 4 * Number.EPSILON * (Math.abs(codes[c][i]) + Math.abs(offset / times(scale)));
            expect(Math.abs(code - codes[c][i])).toBeLessThanOrEqual(coarse + rounding);
          }
        }
        const { timeS } = decoded;
        const content = {
          channels: decoded.channels.map(({ values }) => values),
          counter,
          ...(timeS === null ? {} : { timeS }),
        };
        const again = packetEncoder(any)(content);
        const hasFloats = plan.channels.some(({ form }) => form.kind === 'float');
        if (!hasFloats) expect(again).toEqual(bytes);
      },
    ),
    runs(200, 20_000),
  );
});

/** Random bytes as long as a packet of the plan, with the constants and the count that it needs. */
function wellMade(plan: PacketPlan, random: Uint8Array): Uint8Array {
  const count = typeof plan.repeat === 'number' ? plan.repeat : 1 + (random.length % 6);
  const samplesEnd = plan.beforeBits + count * plan.sampleBits;
  const bytes = new Uint8Array(Math.ceil((samplesEnd + plan.afterBits) / 8)).map(
    (_, i) => random[i % random.length] ?? i,
  );
  let atBit = 0;
  for (const field of [...plan.before, null, ...plan.after]) {
    if (field === null) atBit = samplesEnd;
    else {
      if (field.kind === 'constant' || field.kind === 'count') {
        const wanted = field.kind === 'count' ? count : field.value;
        const turned = readBits(bytes, atBit, field.parts.bits, field.bitOrder) ^ wanted;
        const mask = new Uint8Array(bytes.length);
        writeBits(mask, atBit, field.parts.bits, field.bitOrder, turned);
        for (const [i, bit] of mask.entries()) bytes[i] ^= bit;
      }
      atBit += field.parts.bits;
    }
  }
  return bytes;
}

/** What is wrong with an answer, whatever the bytes were. */
function faultOf(decoded: Decoded, bytes: Uint8Array, channelCount: number): string | null {
  if (decoded.kind === 'note') return 'a note';
  if (decoded.kind === 'refused') {
    const isReason = decoded.expected !== '' && decoded.actual !== '' && decoded.expected !== decoded.actual;
    return isReason && decoded.atByte >= 0 && decoded.atByte <= bytes.length ? null : 'no reason';
  }
  if (decoded.channels.length !== channelCount) return 'no channels';
  for (const { values, missing } of decoded.channels) {
    const open = values.flatMap((value, i) => (value === null ? [i] : []));
    if (values.length !== decoded.sampleCount) return 'no value and no cause';
    if (open.join() !== missing.map(({ index }) => index).join()) return 'no cause';
    if (values.some((value) => value !== null && !Number.isFinite(value))) return 'not finite';
  }
  return null;
}

/** Making a layout takes longer than reading many blocks by it. */
const blocksOfALayout = 50;

test('random blocks never break a decoder, and no sample is without a cause', () => {
  const block = fc.tuple(fc.uint8Array({ maxLength: 64 }), fc.boolean());
  const blocks = fc.array(block, { minLength: blocksOfALayout, maxLength: blocksOfALayout, size: 'max' });
  const ends: Record<string, number> = {};
  let blockCount = 0;
  let sampleCount = 0;
  fc.assert(
    fc.property(arbitraryLayout, blocks, (any, many) => {
      const plan = planPacket(any);
      const decoder = packetDecoder(any);
      for (const [random, isWellMade] of many) {
        const bytes = isWellMade ? wellMade(plan, random) : random;
        const decoded = decoder.decode(bytes);
        const fault = faultOf(decoded, bytes, plan.channels.length);
        if (fault !== null) throw new Error(fault);
        blockCount += 1;
        const end = decoded.kind === 'refused' ? decoded.code : decoded.kind;
        ends[end] = (ends[end] ?? 0) + 1;
        if (decoded.kind === 'packet') sampleCount += decoded.sampleCount * plan.channels.length;
        else if (isWellMade) throw new Error(`refused: ${JSON.stringify(decoded)}`);
      }
    }),
    runs(200, 20_000),
  );
  const said = Object.entries(ends).map(([end, count]) => `${count} ${end}`);
  process.stdout.write(
    `Random blocks: ${blockCount}, no crash; ${said.join(', ')}; ${sampleCount} samples, each with value or cause.\n`,
  );
  expect(blockCount).toBeGreaterThanOrEqual(isLong ? 1_000_000 : 10_000);
  expect(ends['packet'] / blockCount).toBeGreaterThan(0.45);
});

test('a code for not known is compared with the bits as they stand', () => {
  const decoder = packetDecoder({
    order: 'little',
    fields: [
      {
        kind: 'samples',
        repeat: 'fill',
        values: [
          { kind: 'channel', form: 'i16', quantity: 'force', axis: null, unit: 'N', notKnown: ['0x8000', '0x7fff'] },
        ],
      },
    ],
  });
  const bytes = Uint8Array.of(0, 0x80, 0xff, 0x7f, 0xff, 0xff);
  expect(readBits(bytes, 0, 16, 'little')).toBe(0x8000);
  expect(decoder.decode(bytes)).toMatchObject({ channels: [{ values: [null, null, -1] }] });
});
