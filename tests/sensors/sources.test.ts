import { type Played, replay, type SensorEvent, simulatedPerson } from '@surae/sensors';
import { describe, expect, test } from 'vitest';
import { HandClock } from '../support/hand-clock.ts';

const timesS = Float64Array.from({ length: 101 }, (_, i) => i / 100);
const played: Played = {
  groups: [
    { timesS: Float64Array.of(0, 1), channels: [{ quantity: 'force', axis: null, samples: Float64Array.of(1, 2) }] },
    {
      timesS,
      channels: [
        { quantity: 'acceleration', axis: 'x', samples: timesS.map((x) => 2 * x) },
        { quantity: 'angular-velocity', axis: 'y', samples: timesS.map((x) => 3 * x) },
      ],
    },
  ],
};

async function events(make: typeof replay, pace?: number): Promise<{ events: SensorEvent[]; clock: HandClock }> {
  const clock = new HandClock();
  const sensor = make(played, { placement: 'foot', clock, ...(pace === undefined ? {} : { pace }) });
  const list: SensorEvent[] = [];
  await sensor.start((event) => list.push(event));
  return { events: list, clock };
}

describe('a source that needs no sensor', () => {
  test('says where its samples come from, where they were taken, and how fast', () => {
    const options = { placement: 'foot', clock: new HandClock() } as const;
    expect(simulatedPerson(played, options).description).toEqual({
      origin: 'simulated',
      placement: 'foot',
      nominalRateHz: 100,
    });
    expect(replay(played, options).description.origin).toBe('replayed');
    const single: Played = { groups: [{ timesS: Float64Array.of(1), channels: [] }] };
    expect(replay(single, options).description.nominalRateHz).toBeNull();
    expect(replay({ groups: [] }, options).description.nominalRateHz).toBeNull();
  });

  test('plays the group with the most samples, each quantity in its SI unit', async () => {
    const { events: list, clock } = await events(replay);
    clock.move(10_000);
    const [first] = list;
    expect(
      first.kind === 'block' && first.block.channels.map(({ quantity, axis, unit }) => [quantity, axis, unit]),
    ).toEqual([
      ['acceleration', 'x', 'm/s2'],
      ['angular-velocity', 'y', 'rad/s'],
    ]);
    expect(first.kind === 'block' && first.block.channels[1].samples).toEqual(timesS.map((x) => 3 * x));
  });

  test('plays at life speed unless another pace is asked for', async () => {
    for (const [pace, ms] of [
      [undefined, 1000],
      [4, 250],
    ] as const) {
      const { events: list, clock } = await events(simulatedPerson, pace);
      clock.move(ms - 1);
      expect(list.at(-1)?.kind).toBe('block');
      // the timer looks again 16 ms later
      clock.move(16);
      expect(list.at(-1)?.kind).toBe('ended');
    }
  });

  test('without samples refuses to start', async () => {
    const sensor = replay({ groups: [] }, { placement: 'heel', clock: new HandClock() });
    await expect(sensor.start(() => {})).rejects.toMatchObject({ code: 'nothing-recorded' });
  });
});
