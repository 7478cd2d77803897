import type { SensorEvent } from '@surae/sensors';
import { expect, test } from 'vitest';
import { HeldLink } from '../../../apps/dashboard/src/devices/held-link.ts';
import { LinkedSensor } from '../../../apps/dashboard/src/devices/linked-sensor.ts';
import { openReading } from '../../../apps/dashboard/src/devices/sample-reading.ts';
import { heelPackets, heelStepsOf, heelString } from '../../browser/support/radio/heel-string.ts';
import { HandClock } from '../../support/hand-clock.ts';
import { HandLink } from '../../support/hand-link.ts';

class NamedLink extends HandLink {
  readonly name = 'device';
  isOpen = true;
}

test('each recording over a held connection is numbered from its own first sample', async () => {
  const clock = new HandClock();
  const link = new NamedLink();
  const held = new HeldLink(
    (listener) => {
      link.listener = listener;
      return link;
    },
    { startWith: [], stopWith: [] },
  );
  const sensor = new LinkedSensor({
    route: 'bluetooth',
    kindName: 'String',
    link: held,
    readings: [openReading(heelString)],
    about: null,
    battery: null,
    descriptionId: null,
    placement: 'heel',
    clock,
  });
  expect(sensor.offers).toEqual([[{ quantity: 'heel-height', axis: null, unit: 'm' }]]);
  expect(sensor.sentUnits).toEqual([['m']]);
  expect([sensor.deviceName, sensor.kindName, sensor.latestBytes(0)]).toEqual(['device', 'String', undefined]);
  expect(() => sensor.makeSensor(1, 'heel')).toThrow('1 offers');
  const packets = heelPackets(60);
  const record = async (from: number): Promise<{ firstIndex: number; values: number[] }> => {
    const source = sensor.makeSensor(0, 'heel');
    const events: SensorEvent[] = [];
    await source.start((event) => events.push(event));
    for (const bytes of packets.slice(from, from + 20)) {
      clock.move(60);
      link.listener!.bytes({ stream: 0, bytes, hostTimeMs: clock.nowMs() });
    }
    source.stop();
    const blocks = events.flatMap((event) => (event.kind === 'block' ? [event.block] : []));
    return {
      firstIndex: blocks[0].firstIndex,
      values: blocks.flatMap(({ channels }) => [...channels[0].samples]),
    };
  };
  const steps = (from: number): number[] => Array.from({ length: 120 }, (_, i) => heelStepsOf(6 * from + i) / 1e4);
  expect(await record(0)).toEqual({ firstIndex: 0, values: steps(0) });
  expect(await record(30)).toEqual({ firstIndex: 0, values: steps(30) });
});
