import { readFileSync } from 'node:fs';
import { type ChannelGroup, counterInput } from '@surae/analysis';
import {
  adoptedCharacteristics,
  industrialMeasurementService,
  openSamples,
  type PacketLayout,
  packetDecoder,
  packetEncoder,
  parseSensorDescription,
} from '@surae/sensors';
import { HELD_WORDS, SENSOR_KIND_WORDS } from '@surae/shared';
import { simulateSet } from '@surae/simulation';
import { expect } from 'vitest';
import { fill } from '../../apps/dashboard/src/words/fill.ts';
import { isLong } from '../support/runs.ts';
import { expectAsSent } from './support/as-sent.ts';
import { upTo } from './support/devices/driven.ts';
import { goToFirstSet, sayEnd, startSet, waitForCount } from './support/journey.mjs';
import { heelDevice, heelPackets, heelSamplesPerPacket, heelStepsOf } from './support/radio/heel-string.ts';
import { cutShort, held, inBeats, swapped, twice, without } from './support/radio/packet-faults.ts';
import { radioTests } from './support/radio/radio-test.ts';
import { SteadySender } from './support/radio/steady-sender.ts';
import { backToVisit, connectBluetooth, goToSensors, importDescription, storedSet } from './support/sensors.ts';
import { storedDocuments } from './support/stored.ts';

/** Packets of four samples each, as the example of a foot sensor sends them: the time is that of the last one. */
function footPackets({ timesS, channels }: ChannelGroup, layout: PacketLayout): Uint8Array[] {
  const encode = packetEncoder(layout);
  return Array.from({ length: Math.floor(timesS.length / 4) }, (_, i) =>
    encode({
      counter: 4000 + 4 * i,
      timeS: 7 + (4 * i + 3) / 104,
      channels: channels.map(({ samples }) => [...samples.slice(4 * i, 4 * i + 4)]),
    }),
  );
}

const example = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../shared/sensors/examples/${name}.json`, import.meta.url), 'utf8'));

radioTests(
  'a live set of raises from a Bluetooth sensor',
  {
    'of the open packet is stored as it was sent, and what was lost is a hole': async ({
      page,
      origin,
      radio,
      chooser,
    }) => {
      const device = radio.add(heelDevice());
      chooser.choose('Invented string');
      await goToFirstSet(page, origin);
      await goToSensors(page);
      let beats = inBeats(heelPackets(3000, { fastPpm: 200 }));
      // seen from the whole run: some of these lie in the set, whenever it begins
      const lostPackets = new Set(upTo(40).flatMap((i) => [50 + 70 * i, 51 + 70 * i]));
      for (const packet of lostPackets) beats = without(beats, packet, 1);
      for (const i of upTo(40)) {
        const at = 50 + 70 * i;
        beats = cutShort(held(swapped(twice(beats, at + 20), at + 40), at + 50, 6), at + 60, 11);
        lostPackets.add(at + 60);
      }
      const sender = new SteadySender(beats, 100 / heelSamplesPerPacket, (packets) =>
        packets.every((packet) => device.notify(openSamples, packet)),
      );
      await connectBluetooth(page, SENSOR_KIND_WORDS.open.text);
      await page.getByText(HELD_WORDS.streaming.text).waitFor();
      await backToVisit(page);
      await startSet(page, 'left');
      await waitForCount(page, 4);
      await page.keyboard.press(' ');
      await sayEnd(page, 'left');
      sender.stop();
      const { choice, stored } = await storedSet(page);
      const sent = upTo(3000 * heelSamplesPerPacket).map((n) => heelStepsOf(n) / 1e4);
      const lost = new Set(
        [...lostPackets].flatMap((packet) => upTo(heelSamplesPerPacket, packet * heelSamplesPerPacket)),
      );
      const { from, to } = expectAsSent([sent], lost, stored);
      const inside = [...lost].filter((n) => n > from && n < to).length;
      expect(inside).toBeGreaterThan(0);
      expect(choice).toMatchObject({ origin: 'live', sensor: { route: 'bluetooth', deviceName: 'Invented string' } });
      process.stdout.write(
        `Open packet, live set: ${stored.numbers.length} samples as sent, ${inside} lost and known.\n`,
      );
    },

    // the long run takes the other ways to describe a sensor through a whole set; below the page every run reads streams of both
    ...(isLong && {
      'described by a JSON file is stored as it was sent': async ({ page, origin, radio, chooser }) => {
        const answer = parseSensorDescription(example('foot-sensor'));
        if (answer.kind === 'refused' || answer.sensor.link.kind !== 'bluetooth') throw new Error('no foot sensor');
        const { name, link } = answer.sensor;
        const { characteristic, packets: kinds } = link.characteristics[0];
        const [layout, angleLayout] = kinds;
        const device = radio.add({
          address: 'C0:FF:EE:00:00:06',
          name: 'Foot sensor 2',
          services: [
            {
              uuid: link.service,
              characteristics: [
                { uuid: characteristic, flags: ['notify'] },
                { uuid: link.start[0].characteristic, flags: ['write'] },
              ],
            },
          ],
        });
        chooser.choose('Foot sensor 2');
        const { trace } = simulateSet({ placement: 'foot', level: 'typical', seed: 4, count: 20 });
        const packets = footPackets(counterInput(trace, 'foot'), layout);
        const decoder = packetDecoder(layout);
        const read = packets.map((packet) => decoder.decode(packet));
        const sent = upTo(6).map((k) =>
          read.flatMap((one) => (one.kind === 'packet' ? one.channels[k].values.map(Number) : [])),
        );
        const angle = packetEncoder(angleLayout);
        await goToFirstSet(page, origin);
        await goToSensors(page);
        await importDescription(page, example('foot-sensor'));
        const lostPackets = new Set(upTo(60, 1).map((i) => 37 * i));
        const sender = new SteadySender(packets, 26, (packet, place) => {
          if (place % 9 === 0) device.notify(characteristic, angle({ counter: place, channels: [[0.1]] }));
          return lostPackets.has(place) || device.notify(characteristic, packet);
        });
        await connectBluetooth(page, name);
        expect(device.writes.map(({ bytes }) => [...bytes])).toEqual([[0x10, 0x68, 0], [0x11]]);
        await page.getByText(HELD_WORDS.streaming.text).waitFor();
        await backToVisit(page);
        await startSet(page, 'left');
        await waitForCount(page, 3);
        await page.keyboard.press(' ');
        await sayEnd(page, 'left');
        sender.stop();
        const { choice, stored } = await storedSet(page);
        const lost = new Set([...lostPackets].flatMap((packet) => upTo(4, packet * 4)));
        expectAsSent(sent, lost, stored);
        const kept = (await storedDocuments(page)).find(({ kind }) => kind === 'sensor-description')!;
        expect(choice.sensor).toMatchObject({ kindName: name, descriptionId: kept.id });
      },

      'with an adopted characteristic is stored as it was sent': async ({ page, origin, radio, chooser }) => {
        const { characteristic, layout, name } = adoptedCharacteristics.find((one) => one.name === 'Force')!;
        const device = radio.add({
          address: 'C0:FF:EE:00:00:07',
          name: 'Adopted plate',
          services: [
            { uuid: industrialMeasurementService, characteristics: [{ uuid: characteristic, flags: ['notify'] }] },
          ],
        });
        chooser.choose('Adopted plate');
        const { trace } = simulateSet({ placement: 'platform', level: 'typical', seed: 4, count: 20 });
        const force = [...trace.groups[0].channels[0].samples].map((value) => Math.round(value * 1000) / 1000);
        const encode = packetEncoder(layout);
        await goToFirstSet(page, origin);
        await goToSensors(page);
        const sender = new SteadySender(force, 100, (value) =>
          device.notify(characteristic, encode({ channels: [[value]] })),
        );
        await connectBluetooth(page, fill(SENSOR_KIND_WORDS.adopted, { name }));
        await page.getByText(HELD_WORDS.streaming.text).waitFor();
        await page
          .getByText(HELD_WORDS['lost-open'].text)
          .or(page.getByText(/estimated/))
          .waitFor();
        await backToVisit(page);
        await startSet(page, 'left');
        await waitForCount(page, 2);
        await page.keyboard.press(' ');
        await sayEnd(page, 'left');
        sender.stop();
        expectAsSent([force], new Set(), (await storedSet(page)).stored);
      },
    }),
  },
  { of: 'dashboard' },
);
