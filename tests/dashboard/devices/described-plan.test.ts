import { adoptedCharacteristics, openService, readSensorDescription } from '@surae/sensors';
import { expect, test } from 'vitest';
import { adoptedPlan, describedPlan, openPlan } from '../../../apps/dashboard/src/devices/described-plan.ts';
import { projectText } from '../../support/project.ts';

function linkOf(name: string) {
  const answer = readSensorDescription(projectText(`shared/sensors/examples/${name}.json`));
  if (answer.kind === 'refused' || answer.sensor.link.kind !== 'bluetooth')
    throw new Error(`${name} is no such sensor`);
  return answer.sensor.link;
}

test('a description becomes where samples come from, where commands go, and their bytes', () => {
  const { plan, startWith, stopWith } = describedPlan(linkOf('foot-sensor'));
  const service = '6d1c8b10-52a7-4f0e-9a51-3c77b0a4d201';
  expect(plan).toEqual({
    advertised: [service],
    namePrefix: null,
    streams: [{ service, characteristic: '6d1c8b10-52a7-4f0e-9a51-3c77b0a4d202' }],
    targets: [{ service, characteristic: '6d1c8b10-52a7-4f0e-9a51-3c77b0a4d203' }],
  });
  expect(startWith).toEqual([
    { target: 0, bytes: Uint8Array.of(0x10, 0x68, 0) },
    { target: 0, bytes: Uint8Array.of(0x11) },
  ]);
  expect(stopWith).toEqual([{ target: 0, bytes: Uint8Array.of(0x12) }]);
});

test('a sensor that is known by its name need not advertise its service; other services are named where they differ', () => {
  const link = linkOf('load-cell');
  expect(describedPlan(link).plan).toMatchObject({ advertised: [], namePrefix: 'CELL4' });
  const other = '0b7a3a70-6d0b-4c8e-8a3b-0f2d5f6c1eff';
  const { plan, startWith } = describedPlan({
    ...link,
    start: [...link.start, { ...link.start[0], service: other, bytes: 'A5' }],
  });
  expect(plan.targets.map(({ service }) => service)).toEqual([link.service, other]);
  expect(startWith.map(({ target }) => target)).toEqual([0, 1]);
});

test('sensors that are known without a description are looked for by their service', () => {
  expect(openPlan.plan.advertised).toEqual([openService]);
  const { plan, startWith } = adoptedPlan(adoptedCharacteristics[1]);
  expect(plan.streams[0].characteristic).toBe(adoptedCharacteristics[1].characteristic);
  expect(startWith).toEqual([]);
});
