import { FLOOR, TOLERANCE_PROBE } from '@surae/shared';
import { expect, test } from 'vitest';
import { offPlateWords, setNotes } from '../../../apps/dashboard/src/live/set-notes.ts';

const calm = {
  isOffPlate: false,
  count: 3,
  timeS: 8,
  isFlat: false,
  silentS: null,
  hasBegun: true,
  maySleep: false,
  pain: null,
  prompts: 0,
  unsaved: null,
  link: null,
  parameters: FLOOR.parameters,
};

test('a set that runs well has no lines', () => {
  expect(setNotes(calm)).toEqual([]);
  expect(setNotes({ ...calm, pain: 5, prompts: 1 })).toEqual([]);
});

test('pain above the limit of the protocol is said first', () => {
  const lines = setNotes({ ...calm, pain: 6, isFlat: true });
  expect(lines).toEqual([
    'Pain above the limit of 5: stop.',
    'No movement seen for 2 seconds. Look at the sensor. Stop ends the set; what came is kept.',
  ]);
});

test('samples that are not written are said with the reason', () => {
  const [line] = setNotes({ ...calm, unsaved: 'the disk is full' });
  expect(line).toContain('the disk is full');
  expect(line).toContain('held here');
});

test('two prompts, and the end of a fixed count, are said', () => {
  expect(setNotes({ ...calm, prompts: 2 })).toHaveLength(1);
  const probe = setNotes({ ...calm, count: 10, parameters: TOLERANCE_PROBE.parameters });
  expect(probe).toEqual(['All repetitions of this protocol are done: stop.']);
});

test('samples that stay away are said, and what is waited for is said', () => {
  expect(setNotes({ ...calm, silentS: 4 })).toEqual([
    'No samples for 4 s. Look at the sensor. If none come, the set ends after 10 s; what came is kept.',
  ]);
  expect(setNotes({ ...calm, hasBegun: false })).toEqual(['Waiting for the sensor.']);
});

test('a screen that may go dark is said last', () => {
  const lines = setNotes({ ...calm, maySleep: true, prompts: 2 });
  expect(lines).toHaveLength(2);
  expect(lines[1]).toContain('cannot keep the screen on');
});

test('who stepped off the plate is told at once, with what comes next', () => {
  const [line, ...others] = setNotes({ ...calm, isOffPlate: true });
  expect(others).toEqual([]);
  expect(line).toMatch(/Nobody stands on the plate.*The count waits\..*Step on.*Stop ends the set\./);
  expect(offPlateWords({ fromS: 12.4, forS: 3.25 })).toBe(
    'At 12 s nobody stood on the plate for 3.3 s. That is kept with the set.',
  );
});
