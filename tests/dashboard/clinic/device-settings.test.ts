import { expect, test } from 'vitest';
import { keepSettings, keptSettings } from '../../../apps/dashboard/src/clinic/device-settings.ts';
import { MapMemory } from '../../support/device-memory.ts';

test('a device that was never set locks after ten minutes and reminds after a week', () => {
  expect(keptSettings(new MapMemory())).toEqual({ lockMinutes: 10, backupDays: 7 });
});

test('what was chosen is kept, never to lock as well', () => {
  const memory = new MapMemory();
  keepSettings(memory, { lockMinutes: null, backupDays: 30 });
  expect(keptSettings(memory)).toEqual({ lockMinutes: null, backupDays: 30 });
});

test.each(['{', 'null', '7', '{"lockMinutes":0,"backupDays":-1}', '{"lockMinutes":"2"}'])(
  'what is kept as %s was not chosen here',
  (text) => {
    const memory = new MapMemory();
    keepSettings(memory, { lockMinutes: 2, backupDays: 1 });
    for (const key of memory.kept.keys()) memory.setItem(key, text);
    expect(keptSettings(memory)).toEqual({ lockMinutes: 10, backupDays: 7 });
  },
);
