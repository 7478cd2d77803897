import type { SampleBlock, Sensor, SensorEvent } from '@surae/sensors';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Playback, type PlayedGroup } from '../../packages/sensors/src/playback.ts';
import { arbitraryTimes } from '../support/arbitraries.ts';
import { HandClock } from '../support/hand-clock.ts';
import { runs } from '../support/runs.ts';

const description = { origin: 'simulated', placement: 'heel', nominalRateHz: 50 } as const;

function groupOf(timesS: Float64Array): PlayedGroup {
  const samples = timesS.map((_, i) => i + 0.5);
  return { timesS, channels: [{ quantity: 'heel-height', axis: null, unit: 'm', samples }] };
}

/** Samples every 20 ms from an instant that is not zero. */
const group = groupOf(Float64Array.from({ length: 6 }, (_, i) => 3 + i / 50));

function playback(played: PlayedGroup, clock: HandClock, pace = 1): Playback {
  return new Playback(played, { description, clock, pace, intervalMs: 16 });
}

/** Starts a source and gives the list into which its events go. */
async function listen(sensor: Sensor): Promise<SensorEvent[]> {
  const events: SensorEvent[] = [];
  await sensor.start((event) => events.push(event));
  return events;
}

function blocksOf(events: readonly SensorEvent[]): SampleBlock[] {
  return events.flatMap((event) => (event.kind === 'block' ? [event.block] : []));
}

function joined(events: readonly SensorEvent[]) {
  const blocks = blocksOf(events);
  return {
    timesS: blocks.flatMap(({ deviceTimesS }) => [...deviceTimesS!]),
    samples: blocks.flatMap(({ channels }) => [...channels[0].samples]),
  };
}

describe('a source that plays', () => {
  test('hands each sample over when its time has come, counted from the first', async () => {
    const clock = new HandClock();
    const events = await listen(playback(group, clock));
    expect(events).toEqual([]);
    clock.move(16);
    clock.move(30);
    const [first, second] = blocksOf(events);
    expect(first).toMatchObject({ firstIndex: 0, hostTimeMs: 1016 });
    expect(first.deviceTimesS).toEqual(Float64Array.of(0));
    expect(first.channels).toEqual([{ quantity: 'heel-height', axis: null, unit: 'm', samples: Float64Array.of(0.5) }]);
    // 46 ms after the start the samples of 20 and 40 ms are due
    expect(second).toMatchObject({ firstIndex: 1, hostTimeMs: 1046 });
    expect([...second.channels[0].samples]).toEqual([1.5, 2.5]);
    expect([...second.deviceTimesS!].map((timeS) => Math.round(1000 * timeS))).toEqual([20, 40]);
  });

  test('gives a host that was busy everything that is due in one block', async () => {
    const clock = new HandClock();
    const sensor = playback(group, clock);
    const events = await listen(sensor);
    clock.move(5000);
    expect(events.map(({ kind }) => kind)).toEqual(['block', 'ended']);
    expect(joined(events).samples).toEqual([0.5, 1.5, 2.5, 3.5, 4.5, 5.5]);
    expect(sensor.status).toBe('ended');
    expect(clock.running).toBe(0);
  });

  test('played at twice the pace needs half the time and says the same times', async () => {
    const clock = new HandClock();
    const events = await listen(playback(group, clock, 2));
    clock.move(40);
    expect(joined(events).timesS.map((timeS) => Math.round(1000 * timeS))).toEqual([0, 20, 40, 60, 80]);
    clock.move(16);
    expect(events.at(-1)).toEqual({ kind: 'ended' });
  });

  test('that is stopped hands over what is due, then ends, and says no more', async () => {
    const clock = new HandClock();
    const sensor = playback(group, clock);
    const events = await listen(sensor);
    clock.move(15);
    expect(events).toEqual([]);
    clock.move(0);
    sensor.stop();
    expect(joined(events).samples).toEqual([0.5]);
    expect(events.at(-1)).toEqual({ kind: 'ended' });
    sensor.stop();
    clock.move(5000);
    expect(events).toHaveLength(2);
    expect([sensor.status, clock.running]).toEqual(['ended', 0]);
  });

  test('streams once, and not at all without samples', async () => {
    const clock = new HandClock();
    const sensor = playback(group, clock);
    expect(sensor.status).toBe('idle');
    sensor.stop();
    expect(sensor.status).toBe('idle');
    await listen(sensor);
    expect(sensor.status).toBe('streaming');
    await expect(listen(sensor)).rejects.toMatchObject({ name: 'SensorError', code: 'already-started' });
    const empty = playback(groupOf(new Float64Array(0)), clock);
    await expect(listen(empty)).rejects.toMatchObject({ name: 'SensorError', code: 'nothing-recorded' });
    expect(empty.status).toBe('idle');
  });
});

test('whenever the host looks, all samples come once, in order, at their own times, and none before its time', async () => {
  await fc.assert(
    fc.asyncProperty(
      arbitraryTimes(1, 60),
      fc.array(fc.integer({ min: 0, max: 3000 }), { maxLength: 30 }),
      fc.constantFrom(0.5, 1, 3, 8),
      fc.boolean(),
      async (timesS, looks, pace, stopped) => {
        const played = groupOf(timesS);
        const clock = new HandClock();
        const sensor = playback(played, clock, pace);
        const events = await listen(sensor);
        for (const ms of looks) clock.move(ms);
        if (stopped) sensor.stop();
        else clock.move(1e9);
        let next = 0;
        for (const { firstIndex, deviceTimesS, hostTimeMs, channels } of blocksOf(events)) {
          expect(firstIndex).toBe(next);
          next += deviceTimesS!.length;
          expect(channels[0].samples).toHaveLength(deviceTimesS!.length);
          expect(deviceTimesS!.at(-1)! / pace).toBeLessThanOrEqual((hostTimeMs - 1000) / 1000 + 1e-9);
        }
        const { timesS: given, samples } = joined(events);
        expect(samples).toEqual([...played.channels[0].samples].slice(0, next));
        expect(given).toEqual([...timesS].slice(0, next).map((timeS) => timeS - timesS[0]));
        // what was due when it ended has come
        const dueS = timesS[0] + ((clock.nowMs() - 1000) / 1000) * pace;
        expect(next).toBe([...timesS].filter((timeS) => timeS <= dueS).length);
        expect(events.filter(({ kind }) => kind === 'ended')).toHaveLength(1);
        expect(events.at(-1)).toEqual({ kind: 'ended' });
      },
    ),
    runs(150, 3000),
  );
});
