import { adoptedCharacteristics, packetDecoder, readSensorDescription } from '@surae/sensors';
import { expect, test } from 'vitest';
import {
  adoptedReading,
  describedReadings,
  openReading,
  streamReading,
} from '../../../apps/dashboard/src/devices/sample-reading.ts';
import { projectText } from '../../support/project.ts';

test('each kind of packet of a description is a reading of its own', () => {
  const answer = readSensorDescription(projectText('shared/sensors/examples/foot-sensor.json'));
  if (answer.kind === 'refused' || answer.sensor.link.kind !== 'bluetooth') throw new Error('no foot sensor');
  const readings = describedReadings(answer.sensor.link);
  expect(readings.map(({ stream, nominalRateHz, channels }) => [stream, nominalRateHz, channels.length])).toEqual([
    [0, 104, 6],
    [0, 104, 1],
  ]);
  // the packets of the first hold as many samples as fit, those of the second one
  expect(readings.map(({ makeFeed }) => makeFeed().numbering.samplesPerPacket)).toEqual([null, 1]);
});

test('a sensor that says what it sends, an adopted characteristic and a stream each are one reading', () => {
  const channel = { quantity: 'force', axis: null, form: 'i16', mantissa: 1, exponent: -1 } as const;
  const open = openReading({ nominalRateHz: 500, channels: [channel] });
  expect(open.makeFeed().numbering).toMatchObject({ counter: { counts: 'samples' }, nominalRateHz: 500 });
  const { layout } = adoptedCharacteristics[0];
  const adopted = adoptedReading(adoptedCharacteristics[0]);
  expect(adopted.makeFeed().numbering).toEqual({
    counter: null,
    ticks: null,
    samplesPerPacket: 1,
    nominalRateHz: null,
  });
  expect(streamReading(packetDecoder(layout), 80, 1).makeFeed().numbering.nominalRateHz).toBe(80);
});
