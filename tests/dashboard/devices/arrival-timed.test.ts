import type { SampleBlock, SensorEvent } from '@surae/sensors';
import { expect, test } from 'vitest';
import { ArrivalTimed } from '../../../apps/dashboard/src/devices/arrival-timed.ts';
import { forceBlock } from '../../support/force-block.ts';

function rig() {
  let tell: (event: SensorEvent) => void = () => {};
  const source = {
    description: { origin: 'live', placement: 'trunk', nominalRateHz: null },
    status: 'streaming',
    quality: {
      readings: 3,
      incomplete: 1,
      rateHz: 62,
      statedIntervalMs: 16,
      longestWaitMs: 300,
      unchangedShare: 0,
      accelerationStep: 0.1,
      turningStep: null,
    },
    start: (listener: (event: SensorEvent) => void) => {
      tell = listener;
      return Promise.resolve();
    },
    stop: () => tell({ kind: 'ended' }),
  } as const;
  return { sensor: new ArrivalTimed(source), tell: (event: SensorEvent) => tell(event) };
}

test('each reading is at the time of its arrival, counted from the first, and two at once are told apart', async () => {
  const { sensor, tell } = rig();
  const times: number[] = [];
  const kinds: string[] = [];
  await sensor.start((event) => {
    kinds.push(event.kind);
    if (event.kind === 'block') times.push(...(event.block.deviceTimesS ?? []));
  });
  const block = (index: number, hostTimeMs: number): SampleBlock => ({
    ...forceBlock(index, 0, [1], false, hostTimeMs),
    deviceTimesS: null,
  });
  for (const [index, hostTimeMs] of [5000, 5016, 5016, 5316].entries())
    tell({ kind: 'block', block: block(index, hostTimeMs) });
  sensor.stop();
  expect(times.map((timeS) => Math.round(timeS * 1e4))).toEqual([0, 160, 161, 3160]);
  expect(kinds).toEqual(['block', 'block', 'block', 'block', 'ended']);
});

test('what was lost cannot be told, and the longest wait is', async () => {
  const { sensor, tell } = rig();
  await sensor.start(() => {});
  tell({ kind: 'block', block: { ...forceBlock(0, 0, [1]), deviceTimesS: null } });
  expect(sensor.summary).toMatchObject({
    placedBy: 'arrival',
    lossKnowledge: 'cannot-tell',
    lostCount: null,
    timesFrom: 'arrival',
    receivedCount: 1,
    withoutValueCount: 1,
    effectiveRateHz: 62,
    longestGapS: 0.3,
  });
});
