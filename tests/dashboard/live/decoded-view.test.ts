import { readSensorDescription, type SensorDocument } from '@surae/sensors';
import { expect, test } from 'vitest';
import { decodedView } from '../../../apps/dashboard/src/live/decoded-view.ts';
import { descriptionStarter, starterBytes } from '../../../apps/dashboard/src/live/description-starter.ts';
import { projectText } from '../../support/project.ts';

function described(text: string): SensorDocument {
  const answer = readSensorDescription(text);
  if (answer.kind === 'refused') throw new Error(JSON.stringify(answer.problems));
  return answer.sensor;
}

const starter = described(descriptionStarter);
const string = described(projectText('shared/sensors/examples/string-at-the-heel.json'));

test('bytes of a packet are shown sample by sample', () => {
  expect(decodedView(starter, 0, starterBytes)).toEqual({
    lines: ['Packet of kind 1, samples: 2. Number 5.'],
    columns: ['force [N]'],
    rows: [['12.3'], ['-12.3']],
  });
});

test('what is no packet says where and why; what is no bytes is told apart from nothing', () => {
  expect(decodedView(starter, 0, '05 7B')?.lines[0]).toMatch(/^Not read, at byte \d: expected .+, got .+\.$/);
  expect(decodedView(starter, 0, '05 7')).toBeUndefined();
  expect(decodedView(starter, 0, ' ')).toEqual({ lines: [], columns: [], rows: [] });
});

test('lines of a serial sensor are read as they are sent, from the first', () => {
  expect(decodedView(string, 0, '17;250;12,5\n18;260;;')).toEqual({
    lines: [
      'Packet of kind 1, samples: 1. Number 17. Time 0.25 s.',
      'Not read, at byte 8: expected 3 fields, got 4 fields.',
    ],
    columns: ['height of the heel [m]'],
    rows: [['0.0125']],
  });
  // 0x35 is 5: the same line as bytes
  expect(decodedView(string, 0, '0x31373B35303B35 0A 31373B35303B35 0A')?.rows).toEqual([['0.005']]);
});
