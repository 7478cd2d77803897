import type { SetChoice } from '@surae/casebook';
import { type SampleBlock, type Sensor, SensorError } from '@surae/sensors';
import { expect, test } from 'vitest';
import { SourceMaker } from '../../../apps/dashboard/src/live/source-maker.ts';
import { HandClock } from '../../support/hand-clock.ts';
import { heelSet } from '../../support/heel-set.ts';
import { madeChoice } from '../../support/made-pull-visit.ts';

const choice: SetChoice = {
  side: 'left',
  protocolId: 'single-leg.floor',
  protocolFingerprint: 'abc',
  placement: 'heel',
  origin: 'simulated',
};

const unmeasured = { bodyMassKg: null, heelLeverM: null };

/** The first second of a source. */
async function played(sensor: Sensor, clock: HandClock): Promise<SampleBlock> {
  let first: SampleBlock | undefined;
  await sensor.start((event) => {
    if (event.kind === 'block') first ??= event.block;
  });
  clock.move(1000);
  sensor.stop();
  return first!;
}

test('two simulated sets differ by their seeds, and the same seed gives the same set', async () => {
  const heights = async (seed: number): Promise<Float64Array> => {
    const clock = new HandClock();
    const maker = new SourceMaker({ clock, nextSeed: () => seed, pace: 1 });
    return (await played(maker.make(choice, unmeasured), clock)).channels[0].samples;
  };
  expect(await heights(4)).toEqual(await heights(4));
  expect(await heights(4)).not.toEqual(await heights(5));
});

test('a chosen recording is played with its own samples, at the pace that was asked for', async () => {
  const clock = new HandClock();
  const maker = new SourceMaker({ clock, nextSeed: () => 4, pace: 3 });
  const set = heelSet(4);
  maker.choose({ groups: [set] });
  const sensor = maker.make({ ...choice, origin: 'replayed' }, unmeasured);
  expect(sensor.description).toMatchObject({ origin: 'replayed', placement: 'heel' });
  const { deviceTimesS, channels } = await played(sensor, clock);
  expect(deviceTimesS).toHaveLength(301);
  expect(channels[0].samples).toEqual(set.channels[0].samples.slice(0, 301));
});

/** All samples of the first channel of a source. */
async function whole(sensor: Sensor, clock: HandClock): Promise<number[]> {
  const samples: number[] = [];
  await sensor.start((event) => {
    if (event.kind === 'block') samples.push(...event.block.channels[0].samples);
  });
  clock.move(300_000);
  sensor.stop();
  return samples;
}

test('the heel of the simulated person rises by the lever that is known for the person', async () => {
  const highest = async (heelLeverM: number): Promise<number> => {
    const clock = new HandClock();
    const maker = new SourceMaker({ clock, nextSeed: () => 4, pace: 1 });
    return (await whole(maker.make(choice, { bodyMassKg: null, heelLeverM }), clock)).reduce((a, b) => Math.max(a, b));
  };
  const [short, long] = [await highest(0.14), await highest(0.21)];
  // half as long again, and the heel comes half as high again; sway and noise of the string are a few millimetres
  expect(Math.abs(long - 1.5 * short)).toBeLessThan(0.006);
  expect(long - short).toBeGreaterThan(0.02);
});

test('the string of the simulated person is as long as it was told, and reads the more the shorter it is', async () => {
  const highest = async (stringRestLengthM: number): Promise<number> => {
    const clock = new HandClock();
    const maker = new SourceMaker({ clock, nextSeed: () => 4, pace: 1 });
    const sensor = maker.make({ ...choice, stringRestLengthM }, { bodyMassKg: null, heelLeverM: 0.18 });
    return (await whole(sensor, clock)).reduce((a, b) => Math.max(a, b));
  };
  expect((await highest(0.1)) - (await highest(3))).toBeGreaterThan(0.001);
});

test('a simulated person on a platform weighs what is known of the person', async () => {
  const median = async (bodyMassKg: number): Promise<number> => {
    const clock = new HandClock();
    const maker = new SourceMaker({ clock, nextSeed: () => 4, pace: 1 });
    const sensor = maker.make({ ...choice, placement: 'platform' }, { bodyMassKg, heelLeverM: null });
    const force = (await whole(sensor, clock)).sort((a, b) => a - b);
    return force[Math.floor(force.length / 2)];
  };
  // 9.81 m/s2: what stands still on a scale
  expect(Math.abs((await median(60)) / (60 * 9.81) - 1)).toBeLessThan(0.03);
  expect(Math.abs((await median(90)) / (90 * 9.81) - 1)).toBeLessThan(0.03);
});

test('a live test is recorded from what is connected, and nobody is simulated in its place', () => {
  const asked: string[] = [];
  const connected = {} as Sensor;
  const live = {
    makeSensor: (placement: string, kind?: string) => {
      asked.push(`${placement}, ${kind ?? ''}`);
      return connected;
    },
  };
  const given = { clock: new HandClock(), nextSeed: () => 4, pace: 1 };
  const maker = new SourceMaker({ ...given, live });
  expect(maker.make({ ...choice, origin: 'live' }, unmeasured)).toBe(connected);
  expect(maker.makePull({ ...madeChoice('left'), origin: 'live' }, 0, unmeasured)).toBe(connected);
  expect(asked).toEqual(['heel, heel-raise', `${madeChoice('left').placement}, isometric`]);
  expect(() => new SourceMaker(given).make({ ...choice, origin: 'live' }, unmeasured)).toThrow(SensorError);
});
