import {
  joinedRecording,
  partTable,
  type ReadBytes,
  RecordError,
  type Recording,
  readPart,
  readRecording,
} from '@surae/records';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../support/runs.ts';

const encode = (text: string) => new TextEncoder().encode(text);

/** Gives the bytes of a file, at most so many at a time. */
const reading =
  (file: Uint8Array, atMost = Infinity): ReadBytes =>
  (into, at) => {
    const bytes = file.subarray(at, at + Math.min(into.length, atMost));
    into.set(bytes);
    return bytes.length;
  };

const parted = (file: Uint8Array) => partTable(file.length, reading(file), (rows) => new Float64Array(rows));

/** The recording that two readers make of a file; undefined where they leave it to one. */
function inParts(file: Uint8Array, atMost?: number): Recording | undefined {
  const table = parted(file);
  const read = reading(file, atMost);
  // what two threads read does not hang on which is first
  const second = table && readPart(table.parts[1], read);
  const first = table && readPart(table.parts[0], read);
  if (table === undefined || first === undefined || second === undefined) return undefined;
  return joinedRecording(table, [first, second], { sha256: 'x', byteLength: file.length });
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

test('two parts are the recording that one reader makes, wherever they meet, whatever stands in the lines and however few bytes come at once', () => {
  let joined = 0;
  fc.assert(
    fc.property(fc.oneof(table(0), table(1), table(4)), fc.constantFrom(1, 7, 50, 1000), (file, atMost) => {
      const found = inParts(file, atMost);
      if (found === undefined) return;
      joined += 1;
      expect(found).toEqual(inOnePiece(file));
    }),
    runs(600, 8000),
  );
  // most of those without an odd line
  expect(joined).toBeGreaterThan(100);
});

test('what one reader takes as plain numbers is read in two parts', () => {
  const row = (i: number, end: string) => `${(i / 100).toFixed(2)},${100 - i},${i}${end}`;
  fc.assert(
    fc.property(fc.integer({ min: 20, max: 200 }), fc.constantFrom('\n', '\r\n'), fc.boolean(), (count, end, open) => {
      const text = `time [s],force [N],other${end}${Array.from({ length: count }, (_, i) => row(i, end)).join('')}`;
      const file = encode(open ? text.trimEnd() : text);
      const one = inOnePiece(file);
      expect(one).toHaveProperty('groups');
      expect(inParts(file)).toEqual(one);
    }),
    runs(50, 500),
  );
});

test('columns that are in another unit become SI where they stand', () => {
  const lines = Array.from({ length: 40 }, (_, i) => `${10 * i},${i}`).join('\n');
  const file = encode(`time [ms],heel_height [mm]\n${lines}\n`);
  const { timesS, channels } = inParts(file)!.groups[0];
  expect([timesS[39], channels[0].samples[39]]).toEqual([0.39, 0.039]);
});

test('a table of several pieces whose lines get longer is read in two parts, to the last row', () => {
  const rows = Array.from({ length: 300_000 }, (_, i) => `${i},${i % 7}\n`);
  const file = encode(`time [ms],force [N]\n${rows.join('')}`);
  expect(inParts(file)).toEqual(inOnePiece(file));
});

test('more rows than there is room for, lines longer than a piece and no line end to divide at are left to one reader', () => {
  const rows = Array.from({ length: 40_000 }, (_, i) => `${i},1`);
  const short = rows.slice(0, 20_000);
  const file = encode(['time [ms],force [N]', ...short].join('\n'));
  const [first] = parted(file)!.parts;
  expect(readPart(first, reading(file))).toBeGreaterThan(10_000);
  const tight = { ...first, columns: first.columns.map((column) => column.subarray(0, 10_000)) };
  expect(readPart(tight, reading(file))).toBeUndefined();
  const noted = encode(['time [ms],force [N]', ...short, `# ${'x'.repeat(1 << 20)}`, ...rows.slice(20_000)].join('\n'));
  const returns = encode(['time [ms],force [N]', ...short].join('\r'));
  for (const other of [noted, returns]) {
    expect(inParts(other)).toBeUndefined();
    expect(inOnePiece(other)).toHaveProperty('groups');
  }
});
