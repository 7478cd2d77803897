import type { SampleBlock, Sensor } from '@surae/sensors';
import { expect, test } from 'vitest';
import type { SetChoice } from '../../../apps/dashboard/src/journey/visit.ts';
import { SourceMaker } from '../../../apps/dashboard/src/live/source-maker.ts';
import { HandClock } from '../../support/hand-clock.ts';
import { heelSet } from '../../support/heel-set.ts';

const choice: SetChoice = {
  side: 'left',
  protocolId: 'single-leg.floor',
  protocolFingerprint: 'abc',
  placement: 'heel',
  origin: 'simulated',
};

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
    return (await played(maker.make(choice), clock)).channels[0].samples;
  };
  expect(await heights(4)).toEqual(await heights(4));
  expect(await heights(4)).not.toEqual(await heights(5));
});

test('a chosen recording is played with its own samples, at the pace that was asked for', async () => {
  const clock = new HandClock();
  const maker = new SourceMaker({ clock, nextSeed: () => 4, pace: 3 });
  const set = heelSet(4);
  maker.choose({ groups: [set] });
  const sensor = maker.make({ ...choice, origin: 'replayed' });
  expect(sensor.description).toMatchObject({ origin: 'replayed', placement: 'heel' });
  const { deviceTimesS, channels } = await played(sensor, clock);
  expect(deviceTimesS).toHaveLength(301);
  expect(channels[0].samples).toEqual(set.channels[0].samples.slice(0, 301));
});
