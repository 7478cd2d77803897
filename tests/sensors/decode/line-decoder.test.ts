import { type Decoded, type LineLayout, lineDecoder, PacketError } from '@surae/sensors';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../support/runs.ts';

const layout: LineLayout = {
  delimiter: ';',
  decimal: ',',
  greeting: 'Hello, cell 4',
  columns: [
    { kind: 'counter', modulus: 1000 },
    { kind: 'time', unit: 'ms', scale: 2, modulus: 100_000 },
    { kind: 'channel', quantity: 'force', axis: null, unit: 'kN', scale: 0.1, offset: -1 },
    { kind: 'skip' },
    { kind: 'channel', quantity: 'torque', axis: 'x', unit: 'N.m' },
  ],
};
const decoder = lineDecoder(layout);
const read = (text: string): Decoded => decoder.decode(Uint8Array.from(text, (letter) => letter.charCodeAt(0)));

test('says what its lines hold', () => {
  expect(decoder.channels.map(({ quantity, axis, unit }) => [quantity, axis, unit])).toEqual([
    ['force', null, 'N'],
    ['torque', 'x', 'N.m'],
  ]);
  expect(decoder.sentUnits).toEqual(['kN', 'N.m']);
  expect(decoder.counter).toEqual({ counts: 'samples', modulus: 1000 });
  expect(decoder.time).toEqual({ marks: 'first', stepS: null, periodS: 200 });
  expect(lineDecoder({ ...layout, columns: [layout.columns[2] as never] })).toMatchObject({
    counter: null,
    time: null,
  });
});

test('a line becomes one sample in SI', () => {
  // 12.5 * 0.1 - 1 = 0.25 kN; 250 * 2 ms
  expect(read('17; 250;12,5;x;-3,5e1\r')).toEqual({
    kind: 'packet',
    counter: 17,
    timeS: 0.5,
    sampleCount: 1,
    channels: [
      { values: [250], missing: [] },
      { values: [-35], missing: [] },
    ],
  });
});

test('a value that is missing has its cause and its place', () => {
  const missing = (text: string): unknown => {
    const decoded = read(text);
    return decoded.kind === 'packet' ? decoded.channels.flatMap((channel) => channel.missing) : decoded;
  };
  expect(missing('1;2;;0;4')).toEqual([{ index: 0, cause: 'empty', atByte: 4 }]);
  expect(missing('1;2; OVL;0;4')).toEqual([{ index: 0, cause: 'not-a-number', atByte: 5 }]);
  expect(missing('1;2;3.5;0;4')).toEqual([{ index: 0, cause: 'not-a-number', atByte: 4 }]);
  expect(missing('1;2;1 000;0;0x4')).toMatchObject([{ cause: 'not-a-number' }, { cause: 'not-a-number', atByte: 12 }]);
  expect(missing('1;2;NaN;0;1e999')).toMatchObject([{ cause: 'not-finite' }, { cause: 'not-finite' }]);
});

test('a counter or a clock that cannot be read is null, and the sample stays', () => {
  expect(read('-1;x;1;0;1')).toMatchObject({ kind: 'packet', counter: null, timeS: null, sampleCount: 1 });
  expect(read('1,5;1;1;0;1')).toMatchObject({ counter: null, timeS: 0.002 });
});

test('a line of other fields is refused with the place', () => {
  expect(read('1;2;3')).toMatchObject({
    kind: 'refused',
    code: 'wrong-fields',
    atByte: 5,
    expected: '5 fields',
    actual: '3 fields',
  });
  expect(read('1;2;3;4;5;6')).toMatchObject({ atByte: 10, actual: '6 fields' });
});

test('what is no sample is a note', () => {
  for (const text of ['', '  ', '# battery 80 %', 'Hello, cell 4', 'counter;time [ms];force [N];a;torque_x [N.m]']) {
    expect(read(text)).toEqual({ kind: 'note', text });
  }
});

test('a header that differs from the one that named the columns is refused', () => {
  const columns = [{ kind: 'channel', quantity: 'force', axis: null, unit: 'N' }] as const;
  const own = lineDecoder({ delimiter: ',', decimal: '.', columns: 'header' }, columns);
  const bytes = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
  expect(own.decode(bytes('force [N]'))).toMatchObject({ kind: 'note' });
  expect(own.decode(bytes('force [kN]'))).toMatchObject({ kind: 'refused', code: 'other-kind' });
  expect(() => lineDecoder({ delimiter: ',', decimal: '.', columns: 'header' })).toThrow(PacketError);
});

test('no line breaks it, and no sample is without a cause', () => {
  const letter = fc.constantFrom(...'0123456789;;;;,.-+eE #nan'.split(''), '\u00ff', '\0');
  fc.assert(
    fc.property(fc.array(letter, { maxLength: 30 }), (letters) => {
      const decoded = read(letters.join(''));
      if (decoded.kind !== 'packet') return;
      for (const { values, missing } of decoded.channels) {
        expect(values.length).toBe(1);
        expect(values[0] === null).toBe(missing.length === 1);
        if (values[0] !== null) expect(Number.isFinite(values[0])).toBe(true);
      }
    }),
    runs(1000, 100_000),
  );
});
