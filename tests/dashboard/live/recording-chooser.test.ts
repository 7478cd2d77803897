import { expect, test } from 'vitest';
import { playsRecordings } from '../../../apps/dashboard/src/live/recording-chooser.ts';
import { SourceMaker } from '../../../apps/dashboard/src/live/source-maker.ts';
import { HandClock } from '../../support/hand-clock.ts';

test('the maker of sources plays recordings, and something that only makes sensors does not', () => {
  expect(playsRecordings(new SourceMaker({ clock: new HandClock(), nextSeed: () => 1, pace: 1 }))).toBe(true);
  expect(playsRecordings({ make: () => undefined })).toBe(false);
});
