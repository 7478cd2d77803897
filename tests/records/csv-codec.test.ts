import { RecordError, type Recording, readRecording, writeRecordingCsv } from '@surae/records';
import { describe, expect, test } from 'vitest';

const timesS = Float64Array.from({ length: 10 }, (_, i) => i / 10);
const channel = (
  quantity: Recording['groups'][number]['channels'][number]['quantity'],
  samples: Float64Array,
  si: string,
) => ({
  quantity,
  axis: quantity === 'acceleration' ? ('x' as const) : null,
  samples,
  unit: { source: si, si },
  column: 'whatever',
});
const recording = (channels: Recording['groups'][number]['channels']): Recording => ({
  source: { sha256: '0'.repeat(64), byteLength: 0 },
  groups: [{ timesS, timeUnit: { source: 's', si: 's' }, channels, gaps: [] }],
  deviceNotes: [],
  unusedColumns: [],
});

describe('a recording written as a table', () => {
  test('has our header in SI and the shortest digits that keep the number', () => {
    const force = new Float64Array(10)
      .fill(-0, 1, 2)
      .fill(0.1 + 0.2, 2, 3)
      .fill(1e-7, 3, 4);
    const acceleration = new Float64Array(10).fill(9.80665);
    const [text] = writeRecordingCsv(
      recording([channel('force', force, 'N'), channel('acceleration', acceleration, 'm/s2')]),
    );
    expect(text.split('\n').slice(0, 5)).toEqual([
      'time [s],force [N],acc_x [m/s2]',
      '0,0,9.80665',
      '0.1,-0,9.80665',
      '0.2,0.30000000000000004,9.80665',
      '0.3,1e-7,9.80665',
    ]);
    const again = readRecording(new TextEncoder().encode(text));
    expect(again.groups[0].channels[0].samples[1]).toBe(-0);
    expect(again.groups[0].channels[0].samples).toEqual(force);
  });

  test('carries its notes as comments, one line each', () => {
    const [text] = writeRecordingCsv({ ...recording([channel('force', timesS, 'N')]), deviceNotes: ['a\nb', '', 'c'] });
    expect(text.split('\n').slice(0, 5)).toEqual(['# a', '# b', '#', '# c', 'time [s],force [N]']);
  });

  test('is one text for each group', () => {
    const one = recording([channel('force', timesS, 'N')]);
    const two = recording([channel('angle', timesS, 'rad')]);
    const texts = writeRecordingCsv({ ...one, groups: [...one.groups, ...two.groups] });
    expect(texts.map((text) => text.split('\n')[0])).toEqual(['time [s],force [N]', 'time [s],angle [rad]']);
  });

  test('is refused when two channels would have one name', () => {
    const force = channel('force', timesS, 'N');
    expect(() => writeRecordingCsv(recording([force, { ...force, side: 'left' }]))).toThrow(RecordError);
  });
});
