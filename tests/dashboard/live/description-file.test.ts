import type { Json } from '@surae/storage';
import { expect, test } from 'vitest';
import { describedOrFaults, usableDescriptions } from '../../../apps/dashboard/src/live/description-file.ts';
import { descriptionStarter } from '../../../apps/dashboard/src/live/description-starter.ts';

test('a text is a description, or the places at which it is none', () => {
  expect(describedOrFaults(descriptionStarter)).toMatchObject({ sensor: { name: 'New sensor' } });
  expect(describedOrFaults(descriptionStarter.replace('"inline"', '"elbow"'))).toMatchObject({
    faults: [expect.stringMatching(/^placement: expected one of .+, got "elbow"$/)],
  });
  expect(describedOrFaults('{')).toMatchObject({ faults: [expect.stringMatching(/^expected JSON, got /)] });
});

test('of what is kept only what is in use and can be read is offered', () => {
  const json = JSON.parse(descriptionStarter) as Record<string, Json>;
  const entry = { at: '2026-03-01T09:00:00Z', name: 'New sensor', json, isOver: false };
  const offered = usableDescriptions([
    { ...entry, id: 'a' },
    { ...entry, id: 'b', isOver: true },
    { ...entry, id: 'c', json: { ...json, version: 2 } },
  ]);
  expect(offered.map(({ id }) => id)).toEqual(['a']);
});
