import { readFileSync } from 'node:fs';
import {
  findUnit,
  type Mapping,
  RecordError,
  readRecording,
  sha256Hex,
  units,
  writeRecordingCsv,
} from '@surae/records';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fixturePath } from '../support/fixture.ts';
import { runs } from '../support/runs.ts';
import '../support/close.ts';

const encode = (text: string) => new TextEncoder().encode(text);
const rows = (count: number, row: (index: number) => string) => Array.from({ length: count }, (_, index) => row(index));

describe('a recording', () => {
  test('holds SI on its own times, the units it came in, and the hash of its bytes', () => {
    const text = `# cell 12\ntime [ms],force [kgf],gyro_y [deg/s]\n${rows(12, (i) => `${10 * i + (i > 5 ? 40 : 0)},${i},${18 * i}`).join('\n')}\n`;
    const recording = readRecording(encode(text), { file: 'a.csv', side: 'left', placement: 'platform' });
    const [group] = recording.groups;
    expect(recording.source).toEqual({ sha256: sha256Hex(encode(text)), byteLength: text.length });
    expect(recording.deviceNotes).toEqual(['cell 12']);
    expect(recording.unusedColumns).toEqual([]);
    expect(group?.timesS[5]).toBe(0.05);
    expect(group?.timeUnit).toEqual({ source: 'ms', si: 's' });
    expect(group?.gaps).toEqual([{ fromS: 0.05, toS: 0.1, missingCount: 4 }]);
    const [force, gyro] = group.channels;
    expect(force).toMatchObject({
      quantity: 'force',
      axis: null,
      column: 'force [kgf]',
      side: 'left',
      placementDeclared: 'platform',
    });
    expect(force?.unit).toEqual({ source: 'kgf', si: 'N' });
    expect(force?.samples[2]).toBe(2 * 9.80665);
    expect(gyro).toMatchObject({ quantity: 'angular-velocity', axis: 'y', unit: { source: 'deg/s', si: 'rad/s' } });
    expect(gyro?.samples[10]).toBeCloseTo(Math.PI, 14);
  });

  test('says nothing of side and placement when nobody did', () => {
    const text = `time [s],force [N]\n${rows(10, (i) => `${i / 100},0`).join('\n')}`;
    const channel = readRecording(encode(text)).groups[0].channels[0];
    expect(Object.keys(channel).sort()).toEqual(['axis', 'column', 'quantity', 'samples', 'unit']);
  });

  test('lists the columns it does not use, whatever is in them', () => {
    const text = `time [s],note,force [N]\n${rows(10, (i) => `${i / 100},"a, b",${i}`).join('\n')}`;
    const recording = readRecording(encode(text));
    expect(recording.unusedColumns).toEqual([{ column: 'note', reason: 'unknown-name' }]);
    expect(recording.groups[0]?.channels[0]?.samples).toEqual(Float64Array.from({ length: 10 }, (_, i) => i));
  });

  test('cannot be changed', () => {
    const recording = readRecording(readFileSync(fixturePath('recordings/made/heel-three-raises.csv')));
    expect(() => Object.assign(recording, { groups: [] })).toThrow(TypeError);
    expect(() => Object.assign(recording.groups[0].channels[0], { quantity: 'force' })).toThrow(TypeError);
    expect(() => Object.assign(recording.source, { sha256: '' })).toThrow(TypeError);
  });

  test('keeps a copy of its bytes when asked, of a Buffer too, whose slices share memory', () => {
    const text = `time [s],force [N]\n${rows(10, (i) => `${i / 100},0`).join('\n')}`;
    for (const bytes of [encode(text), Buffer.from(text)]) {
      const recording = readRecording(bytes, { keepBytes: true });
      bytes.fill(0);
      expect(recording.source.bytes).toEqual(encode(text));
    }
  });

  test('may come by another mapping: the reader does not know the header', () => {
    const mapping = (names: readonly string[]): Mapping => ({
      time: { columnIndex: names.indexOf('t'), unit: findUnit('time', 's')! },
      samples: [
        { columnIndex: 1, quantity: 'force', axis: null, unit: findUnit('force', 'N')!, side: 'left' },
        {
          columnIndex: 2,
          quantity: 'force',
          axis: null,
          unit: findUnit('force', 'N')!,
          side: 'right',
          placement: 'platform',
        },
      ],
      ignored: [],
    });
    const text = `t,l,r\n${rows(10, (i) => `${i / 100},${i},${-i}`).join('\n')}`;
    const channels = readRecording(encode(text), { mapping, side: 'right' }).groups[0].channels;
    expect(channels.map(({ side, placementDeclared, column }) => [side, placementDeclared, column])).toEqual([
      ['left', undefined, 'l'],
      ['right', 'platform', 'r'],
    ]);
  });

  test('of the small good files has the numbers that made them', () => {
    const heel = readRecording(readFileSync(fixturePath('recordings/made/heel-three-raises.csv'))).groups[0];
    expect(Math.max(...heel.channels[0].samples)).toBe(0.08);
    expect(heel.timesS[399]).toBe(7.98);
    const platform = readRecording(readFileSync(fixturePath('recordings/made/platform-quiet-stance.csv')));
    expect(platform.deviceNotes).toEqual(['vertical force under a person of 70 kg who stands still']);
    const force = platform.groups[0].channels[0].samples;
    expect(force.reduce((sum, value) => sum + value, 0) / force.length / 9.80665).toBeCloseTo(70, 1);
  });

  test('is refused by the line of a time that does not rise, comments and blank lines counted', () => {
    const text = `# a\ntime [s],force [N]\n${rows(12, (i) => `${i === 7 ? 0.06 : i / 100},0\n${i === 3 ? '\n# b\n' : ''}`).join('')}`;
    expect(() => readRecording(encode(text), { file: 'f' })).toThrow(
      'f, row 12, column "time [s]": expected a time after 0.06 s',
    );
  });

  test.each(['1e308', '-1e300', '1e9'])('is refused where a sample is as large as no sensor gives: %s kN', (large) => {
    const text = `time [s],force [kN]\n${rows(12, (i) => `${i / 100},${i === 5 ? large : 0}`).join('\n')}`;
    expect(() => readRecording(encode(text))).toThrow(
      'row 7, column "force [kN]": expected a number below 1e+12 N, got one too large for any sensor',
    );
    const largest = text.replace(large, '0.9e9');
    expect(readRecording(encode(largest)).groups[0].channels[0].samples[5]).toBe(0.9e12);
  });
});

describe('laws', () => {
  test('any unit of a quantity gives the same recording', () => {
    const heights = fc.array(fc.integer({ min: -500, max: 2000 }), { minLength: 10, maxLength: 60 });
    fc.assert(
      fc.property(
        heights,
        fc.constantFrom(...units['heel-height']),
        fc.constantFrom(...units.time),
        (values, length, time) => {
          const perMetre = { m: 1, cm: 100, mm: 1000, um: 1e6, '[in_i]': 1 / 0.0254 }[length.ucum]!;
          const perSecond = { s: 1, ms: 1000, us: 1e6, ns: 1e9, min: 1 / 60 }[time.ucum]!;
          const spelled = (unit: { spellings: readonly string[] }) => unit.spellings[unit.spellings.length - 1];
          const text = [
            `time [${spelled(time)}],heel_height [${spelled(length)}]`,
            ...values.map((value, i) => `${(i / 50) * perSecond},${(value / 10_000) * perMetre}`),
          ].join('\n');
          const group = readRecording(encode(text)).groups[0];
          expect(group.channels[0].samples).toBeCloseToEach(
            values.map((value) => value / 10_000),
            { rtol: 1e-14, atol: 0 },
          );
          expect(group.timesS).toBeCloseToEach(
            values.map((_, i) => i / 50),
            { rtol: 1e-14, atol: 0 },
          );
        },
      ),
      runs(60, 800),
    );
  });

  test('a damaged file is read or refused by a RecordError, and never breaks the reader', () => {
    const good = [
      readFileSync(fixturePath('recordings/made/heel-three-raises.csv')),
      readFileSync(fixturePath('recordings/made/platform-quiet-stance.csv')),
      encode(`time [s],"note",acc_x [m/s2]\n${rows(30, (i) => `${i / 100},"x ""${i}""",${i * 0.1}`).join('\n')}\n`),
    ];
    const damage = fc.record({
      file: fc.constantFrom(...good),
      keep: fc.oneof(fc.constant(1), fc.double({ min: 0, max: 1, noNaN: true })),
      digit: fc.boolean(),
      hits: fc.array(fc.tuple(fc.double({ min: 0, max: 0.999, noNaN: true }), fc.integer({ min: 0, max: 255 })), {
        maxLength: 6,
      }),
      near: fc.boolean(),
    });
    const outcomes = { read: 0, refused: 0 };
    fc.assert(
      fc.property(damage, ({ file, keep, hits, near, digit }) => {
        const bytes = Uint8Array.from(file.subarray(0, Math.ceil(file.length * keep)));
        for (const [where, value] of hits) {
          const end = near ? Math.min(60, bytes.length) : bytes.length;
          bytes[Math.floor(where * end)] = digit ? 48 + (value % 10) : value;
        }
        try {
          const { groups } = readRecording(bytes, { file: 'damaged.csv' });
          for (const { timesS, channels } of groups) {
            for (const { samples } of channels) {
              expect(samples).toHaveLength(timesS.length);
              expect(samples.every(Number.isFinite)).toBe(true);
            }
          }
          outcomes.read += 1;
        } catch (error) {
          if (!(error instanceof RecordError)) throw error;
          expect(error.message).toContain('damaged.csv');
          outcomes.refused += 1;
        }
      }),
      runs(500, 10_000),
    );
    expect(outcomes.read).toBeGreaterThan(20);
    expect(outcomes.refused).toBeGreaterThan(100);
  });

  test('a file cut anywhere loses no sample silently: it is refused, or every number but the last is that of the whole', () => {
    const file = readFileSync(fixturePath('recordings/made/heel-three-raises.csv'));
    const whole = readRecording(file).groups[0];
    let wholeRows = 0;
    for (let length = 27; length < 1000; length += 1) {
      try {
        const part = readRecording(file.subarray(0, length)).groups[0];
        const count = part.timesS.length;
        expect(part.timesS).toEqual(whole.timesS.subarray(0, count));
        expect(part.channels[0].samples.subarray(0, count - 1)).toEqual(
          whole.channels[0].samples.subarray(0, count - 1),
        );
        if (file[length - 1] === 10) wholeRows += 1;
      } catch (error) {
        if (!(error instanceof RecordError)) throw error;
        expect(['header-only', 'cut-off', 'too-few-samples']).toContain(error.code);
      }
    }
    expect(wholeRows).toBeGreaterThan(50);
  });

  test('written in our header and read again, it is the same to the last bit', () => {
    const channel = fc.constantFrom(
      'force [lbf]',
      'heel_height [mm]',
      'acc_z [g]',
      'gyro_x [°/s]',
      'torque [N m]',
      'angle_y [deg]',
    );
    const table = fc.record({
      names: fc.uniqueArray(channel, { minLength: 1, maxLength: 6 }),
      intervals: fc.array(fc.integer({ min: 1, max: 90 }), { minLength: 10, maxLength: 40 }),
      values: fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 60 }),
    });
    fc.assert(
      fc.property(table, ({ names, intervals, values }) => {
        let time = 0;
        const lines = intervals.map((interval, i) => {
          time += interval;
          return [time, ...names.map((_, column) => values[(i * 7 + column) % values.length])].join(';');
        });
        const first = readRecording(encode(['# note', ['time [ms]', ...names].join(';'), ...lines].join('\r\n')));
        const again = readRecording(encode(writeRecordingCsv(first)[0]));
        expect(again.deviceNotes).toEqual(first.deviceNotes);
        expect(again.groups[0].timesS).toEqual(first.groups[0].timesS);
        expect(again.groups[0].gaps).toEqual(first.groups[0].gaps);
        expect(again.groups[0].channels.map(({ quantity, axis, samples }) => [quantity, axis, samples])).toEqual(
          first.groups[0].channels.map(({ quantity, axis, samples }) => [quantity, axis, samples]),
        );
      }),
      runs(100, 1500),
    );
  });
});
