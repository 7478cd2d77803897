import { readFileSync } from 'node:fs';
import {
  type DecodedPacket,
  type OpenSensor,
  openAbout,
  openLayout,
  openSampleCount,
  openSamples,
  openService,
  packetDecoder,
  packetEncoder,
  readOpenAbout,
} from '@surae/sensors';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../support/runs.ts';

const page = readFileSync(new URL('../../../shared/sensors/open-packet.md', import.meta.url), 'utf8');

/** The text of the fenced block of the page that bears a name. */
function fence(name: string): string {
  const found = new RegExp(`\`\`\`${name}\\n([^\`]*)\`\`\``).exec(page);
  if (found === null) throw new Error(`no block ${name}`);
  return found[1];
}

/** Bytes at the start of each line, before two blanks and what they mean. */
function hex(name: string): Uint8Array {
  return Uint8Array.from(
    fence(`hex ${name}`)
      .trim()
      .split('\n')
      .flatMap((line) => line.split('  ')[0].trim().split(' '))
      .map((byte) => parseInt(byte, 16)),
  );
}

const cell: OpenSensor = {
  nominalRateHz: 500,
  channels: [{ quantity: 'force', axis: null, form: 'i24', mantissa: 1, exponent: -2 }],
};

test('the page for builders tells what this software reads', () => {
  for (const uuid of [openService, openSamples, openAbout]) expect(page).toContain(uuid);
  expect(readOpenAbout(hex('about'))).toEqual({ kind: 'sensor', sensor: cell });
  const bytes = hex('packet');
  expect(bytes.length).toBe(20);
  const decoded = packetDecoder(openLayout(cell)).decode(bytes) as DecodedPacket;
  const [{ values, missing }] = decoded.channels;
  const { counter, timeS, sampleCount } = decoded;
  expect({ counter, timeS, sampleCount, values, missing: missing.map(({ index }) => index) }).toEqual(
    JSON.parse(fence('json packet')),
  );
  expect(
    packetEncoder(openLayout(cell))({ counter: 65534, timeS: 1.234567, channels: [[0, 12.34, -0.56, null]] }),
  ).toEqual(bytes);
});

test('the table of sizes holds', () => {
  const rows = [...page.matchAll(/^\| (\d) of (i16|i24|f32) \| (\d+) \| (\w+) \| (\d+) \| (\d+) \|$/gm)];
  expect(rows.length).toBe(4);
  for (const [, count, form, bytes, ...fits] of rows) {
    const one = { quantity: 'force', axis: null, form: form as 'i16', mantissa: 1, exponent: 0 } as const;
    const sensor = { nominalRateHz: null, channels: Array<typeof one>(Number(count)).fill(one) };
    expect([20, 182, 244].map((size) => openSampleCount(sensor, size))).toEqual(
      fits.map((fit) => (fit === 'none' ? 0 : Number(fit))),
    );
    expect(openSampleCount(sensor, 8 + Number(bytes))).toBe(1);
    expect(openSampleCount(sensor, 7 + Number(bytes))).toBe(0);
  }
  expect(openSampleCount({ ...cell, channels: [{ ...cell.channels[0], form: 'i16' }] }, 1000)).toBe(255);
  expect(openSampleCount(cell, 3)).toBe(0);
});

test('a scale is the decimal that was told', () => {
  const scaled = { ...cell, channels: [{ ...cell.channels[0], mantissa: -119_711, exponent: -8 }] };
  expect(openLayout(scaled).fields.at(-1)).toMatchObject({ values: [{ scale: -0.00119711, notKnown: ['0x7fffff'] }] });
});

test('any run of samples comes back from packets of any size', () => {
  const sensor: OpenSensor = {
    nominalRateHz: 1000,
    channels: [
      { quantity: 'force', axis: null, form: 'i32', mantissa: 1, exponent: -3 },
      { quantity: 'torque', axis: null, form: 'f32', mantissa: 1, exponent: 0 },
    ],
  };
  const decoder = packetDecoder(openLayout(sensor));
  const encode = packetEncoder(openLayout(sensor));
  const value = fc.option(fc.integer({ min: -2_000_000_000, max: 2_000_000_000 }).map((code) => code / 1000));
  fc.assert(
    fc.property(
      fc.array(value, { minLength: 1, maxLength: 600 }),
      fc.integer({ min: 20, max: 512 }),
      fc.nat(),
      (force, size, start) => {
        const perPacket = openSampleCount(sensor, size);
        const back: (number | null)[] = [];
        let counter = start % 65536;
        for (let from = 0; from < force.length; from += perPacket) {
          const part = force.slice(from, from + perPacket);
          const bytes = encode({ counter, timeS: from / 1000, channels: [part, part.map(() => 1.5)] });
          expect(bytes.length).toBeLessThanOrEqual(size);
          const decoded = decoder.decode(bytes) as DecodedPacket;
          expect([decoded.counter, decoded.timeS]).toEqual([counter, from / 1000]);
          back.push(...decoded.channels[0].values);
          counter = (counter + part.length) % 65536;
        }
        expect(back).toEqual(force);
      },
    ),
    runs(100, 5000),
  );
});

test('a packet without samples is one, and one of another version is not', () => {
  const decoder = packetDecoder(openLayout(cell));
  expect(decoder.decode(Uint8Array.of(1, 5, 0, 0, 0, 0, 0, 0))).toMatchObject({
    kind: 'packet',
    counter: 5,
    sampleCount: 0,
  });
  expect(decoder.decode(Uint8Array.of(2, 5, 0, 0, 0, 0, 0, 0))).toMatchObject({
    kind: 'refused',
    code: 'other-kind',
    atByte: 0,
  });
});
