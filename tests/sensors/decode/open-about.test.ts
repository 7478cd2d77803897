import { type OpenSensor, PacketError, readOpenAbout, writeOpenAbout } from '@surae/sensors';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../support/runs.ts';

const foot: OpenSensor = {
  nominalRateHz: 104.167,
  channels: (['acceleration', 'angular-velocity'] as const).flatMap((quantity) =>
    (['x', 'y', 'z'] as const).map((axis) => ({
      quantity,
      axis,
      form: 'i16' as const,
      mantissa: -119_711,
      exponent: -8,
    })),
  ),
};

test('what a sensor says of itself comes back', () => {
  const bytes = writeOpenAbout(foot);
  expect(bytes.length).toBe(6 + 6 * 8);
  expect(readOpenAbout(bytes)).toEqual({ kind: 'sensor', sensor: foot });
  expect(readOpenAbout(writeOpenAbout({ ...foot, nominalRateHz: null }))).toMatchObject({
    sensor: { nominalRateHz: null },
  });
});

const refusal = (change: (bytes: number[]) => void): unknown => {
  const bytes = [...writeOpenAbout(foot)];
  change(bytes);
  return readOpenAbout(Uint8Array.from(bytes));
};
const problem = (path: string, expected: string, actual: string): unknown => ({
  kind: 'refused',
  problems: [{ path, expected, actual }],
});

test('what cannot be understood is refused with the byte', () => {
  expect(refusal((bytes) => (bytes[0] = 2))).toEqual(problem('byte 0', 'version 1', '2'));
  expect(refusal((bytes) => bytes.splice(3))).toEqual(problem('byte 3', 'at least 6 bytes', '3'));
  expect(refusal((bytes) => bytes.pop())).toEqual(problem('byte 53', '54 bytes', '53'));
  expect(refusal((bytes) => bytes.push(0))).toEqual(problem('byte 54', '54 bytes', '55'));
  expect(refusal((bytes) => (bytes[14] = 7))).toEqual(problem('byte 14', 'quantity 1 to 6', '7'));
  expect(refusal((bytes) => (bytes[14] = 0))).toEqual(problem('byte 14', 'quantity 1 to 6', '0'));
  expect(refusal((bytes) => (bytes[15] = 4))).toEqual(problem('byte 15', 'axis 0 to 3', '4'));
  expect(refusal((bytes) => (bytes[16] = 5))).toEqual(problem('byte 16', 'form 1 to 4', '5'));
  expect(refusal((bytes) => bytes.fill(0, 10, 14))).toEqual(problem('byte 10', 'a scale other than 0', '0'));
  expect(refusal((bytes) => (bytes[15] = 1))).toEqual(
    problem('byte 14', 'each quantity and axis once', 'that of channel 0 again'),
  );
  expect(refusal((bytes) => (bytes[1] = 0))).toMatchObject({ problems: [{ path: 'byte 1' }, { path: 'byte 6' }] });
});

test('what would not be understood is not written', () => {
  expect(() => writeOpenAbout({ ...foot, channels: [] })).toThrow(PacketError);
  expect(() => writeOpenAbout({ ...foot, channels: [{ ...foot.channels[0], mantissa: 0 }] })).toThrow('byte 10');
});

test('no bytes break it', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 70 }), fc.boolean(), (random, hasVersion) => {
      const bytes = hasVersion && random.length > 0 ? Uint8Array.from([1, ...random.subarray(1)]) : random;
      const answer = readOpenAbout(bytes);
      if (answer.kind === 'sensor') expect(writeOpenAbout(answer.sensor)).toEqual(bytes);
      else expect(answer.problems.length).toBeGreaterThan(0);
    }),
    runs(500, 50_000),
  );
});
