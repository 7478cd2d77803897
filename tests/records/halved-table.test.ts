import { halveTable, joinedRecording, RecordError, type Recording, readHalf, readRecording } from '@surae/records';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../support/runs.ts';

const encode = (text: string) => new TextEncoder().encode(text);

/** The recording that two readers make of a file; undefined where they leave it to one. */
function inHalves(file: Uint8Array): Recording | undefined {
  const padded = new Uint8Array(file.length + 1);
  padded.set(file);
  const halved = halveTable(padded, (rows) => new Float64Array(rows));
  // what two threads read does not hang on which is first
  const second = halved && readHalf(halved.halves[1]);
  const first = halved && readHalf(halved.halves[0]);
  if (halved === undefined || first === undefined || second === undefined) return undefined;
  return joinedRecording(halved, [first, second], { sha256: 'x', byteLength: file.length });
}

/** The recording that one reader makes of it, or the words in which it refuses it. */
function inOnePiece(file: Uint8Array): Recording | string {
  try {
    return readRecording(file, { sha256: 'x' });
  } catch (error) {
    if (error instanceof RecordError) return error.message;
    throw error;
  }
}

/** What a line of a file may be beside a row of plain numbers. */
const oddLine = fc.constantFrom(
  '',
  ' ',
  '# a note',
  '# "a note, in quotes',
  '#'.repeat(90),
  '1,2',
  '1,2,3,4',
  '5,NaN,1',
  '5,,1',
  '5,1e400,1',
  '5,9e15,1',
  '5,12345678901234567890,1',
  '5,"7",1',
  '5,7mm,1',
  '0.001,1,2',
  '5, 0x10,1',
  '5,1\u00e9,1',
);

interface Shape {
  readonly lines: readonly string[];
  readonly ends: readonly string[];
  readonly mark: boolean;
  readonly lastEnd: boolean;
  readonly cut: number;
}

function fileOf({ lines, ends, mark, lastEnd, cut }: Shape): Uint8Array {
  const joined = lines.map((line, i) => line + ends[i % ends.length]).join('');
  const text = `${mark ? '\uFEFF' : ''}${lastEnd ? joined : joined.replace(/[\r\n]+$/, '')}`;
  const bytes = encode(text);
  return bytes.subarray(0, bytes.length - Math.min(cut, bytes.length));
}

const HEADERS = [
  'time [s],heel_height [mm],force [N]',
  'time [s],torque [N.m],note',
  '# from a sensor\n\ntime [s],acc_x [m/s2],force [N]',
];

const numbers = fc.constantFrom('0.25', '-3.5e1', '+7', '0.12345678901234567890', ' 1 ', '1E-3');

/** A table with lines of any length, the odd ones among them `odd` in twenty. */
const table = (odd: number): fc.Arbitrary<Uint8Array> =>
  fc
    .record({
      header: fc.constantFrom(...HEADERS),
      rows: fc.array(fc.tuple(fc.nat(20), oddLine, numbers, numbers), { minLength: 8, maxLength: 60 }),
      ends: fc.array(fc.constantFrom('\n', '\n', '\r\n', '\r'), { minLength: 1, maxLength: 4 }),
      mark: fc.boolean(),
      lastEnd: fc.boolean(),
      cut: fc.constantFrom(0, 0, 0, 1, 2, 5),
    })
    .map(({ header, rows, ends, ...rest }) => {
      const lines = rows.map(([chance, line, a, b], i) => (chance < odd ? line : `${0.5 + 0.02 * i},${a},${b}`));
      return fileOf({ lines: [header, ...lines], ends: header.startsWith('#') ? ['\n'] : ends, ...rest });
    });

test('two halves are the recording that one reader makes, wherever the middle lies and whatever stands in the lines', () => {
  let joined = 0;
  fc.assert(
    fc.property(fc.oneof(table(0), table(1), table(4)), (file) => {
      const found = inHalves(file);
      if (found === undefined) return;
      joined += 1;
      expect(found).toEqual(inOnePiece(file));
    }),
    runs(600, 8000),
  );
  // most of those without an odd line
  expect(joined).toBeGreaterThan(100);
});

test('what one reader takes as plain numbers is read in halves', () => {
  const row = (i: number, end: string) => `${(i / 100).toFixed(2)},${100 - i},${i}${end}`;
  fc.assert(
    fc.property(fc.integer({ min: 20, max: 200 }), fc.constantFrom('\n', '\r\n'), fc.boolean(), (count, end, open) => {
      const text = `time [s],force [N],other${end}${Array.from({ length: count }, (_, i) => row(i, end)).join('')}`;
      const file = encode(open ? text.trimEnd() : text);
      const one = inOnePiece(file);
      expect(one).toHaveProperty('groups');
      expect(inHalves(file)).toEqual(one);
    }),
    runs(50, 500),
  );
});

test('columns that are in another unit become SI where they stand', () => {
  const lines = Array.from({ length: 40 }, (_, i) => `${10 * i},${i}`).join('\n');
  const file = encode(`time [ms],heel_height [mm]\n${lines}\n`);
  const { timesS, channels } = inHalves(file)!.groups[0];
  expect([timesS[39], channels[0].samples[39]]).toEqual([0.39, 0.039]);
});

test('more rows than the first lines let expect, and no line end to divide at, are left to one reader', () => {
  const short = Array.from({ length: 20_000 }, (_, i) => `${i},1`);
  const grown = encode(['time [ms],force [N]', `# ${'x'.repeat(1 << 16)}`, ...short].join('\n'));
  expect(inOnePiece(grown)).toHaveProperty('groups');
  expect(inHalves(grown)).toBeUndefined();
  const [first] = halveTable(Uint8Array.from([...grown, 0]), (rows) => new Float64Array(rows))!.halves;
  expect(readHalf(first)).toBeUndefined();
  const returns = encode(['time [ms],force [N]', ...short].join('\r'));
  expect(inOnePiece(returns)).toHaveProperty('groups');
  expect(inHalves(returns)).toBeUndefined();
});
