import type * as analysis from '@surae/analysis';
import type { Trace } from '@surae/analysis';
import { type Placement, type Quantity, type Recording, readRecording, type Side } from '@surae/records';
import { expect, expectTypeOf, test } from 'vitest';

test('a recording is a trace, as the compiler sees it', () => {
  expectTypeOf<Recording>().toExtend<Trace>();
  expectTypeOf<Quantity>().toEqualTypeOf<analysis.Quantity>();
  expectTypeOf<Placement>().toEqualTypeOf<analysis.Placement>();
  expectTypeOf<Side>().toEqualTypeOf<analysis.Side>();
});

test('a recording can be handed over as a trace without a copy', () => {
  const rows = Array.from({ length: 20 }, (_, index) => `${index / 100},${index}`);
  const recording = readRecording(new TextEncoder().encode(['time [s],force [N]', ...rows].join('\n')));
  const trace: Trace = recording;
  expect(trace.groups[0]?.channels[0]?.samples).toBe(recording.groups[0]?.channels[0]?.samples);
});
