import { alignmentNotes, clockNotes } from '@surae/sensors';
import { expect, test } from 'vitest';

test('say the clock of a source, or that it is not known', () => {
  const fit = {
    offsetMs: 1234.567,
    middleMs: 5000,
    uncertaintyMs: 0.123,
    driftPpm: -20.04,
    driftUncertaintyPpm: 3.21,
    fromS: 0,
    toS: 10,
  };
  expect(clockNotes(1, fit)).toEqual([
    'source 2, time 0 by the clock of the host: 1234.57 ms',
    'source 2, standard uncertainty of its times by that clock, the shortest delay left aside: 0.12 ms',
    'source 2, drift against the host: -20.0 ppm',
    'source 2, standard uncertainty of the drift: 3.2 ppm',
  ]);
  expect(clockNotes(0, null)).toEqual(['source 1, clock beside the host: not known']);
});

test('say how well two lie beside each other, or why they do not', () => {
  const alignment = {
    map: { offsetS: 0.5, rate: 1.0001 },
    uncertaintyMs: 8.2,
    withinMs: 15.6,
    delayWithinMs: 15.5,
    fromS: 0,
    toS: 1,
  };
  expect(alignmentNotes(1, { kind: 'aligned', alignment })).toEqual([
    'source 2 beside source 1, time 0 by the clock of source 1: 500.00 ms',
    'source 2 beside source 1, seconds of source 1 in one of its own: 1.000100000',
    'source 2 beside source 1, standard uncertainty of its times: 8.20 ms',
    'source 2 beside source 1, aligned within, 95 times in 100: 15.60 ms',
    'source 2 beside source 1, of that from delays that nobody can see: 15.50 ms',
  ]);
  expect(alignmentNotes(1, { kind: 'not-aligned', reason: 'too-short' })).toEqual([
    'source 2 beside source 1: no common time line, too little came of one of them to know its clock',
  ]);
  expect(alignmentNotes(1, { kind: 'not-aligned', reason: 'never-together' })[0]).toContain('never heard');
});
