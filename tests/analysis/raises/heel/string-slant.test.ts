import { BlockCounter, blockCounterDefaults } from '@surae/analysis';
import { simulateSet } from '@surae/simulation';
import { expect, test } from 'vitest';
import { heelDefaults } from '../../../../packages/analysis/src/assess/defaults/heel.ts';
import { stringReading } from '../../../../packages/analysis/src/movement/foot-lever.ts';
import { detectHeelRaises } from '../../../../packages/analysis/src/raises/detect-heel.ts';
import { heightOfDrawn, slantRelativeU } from '../../../../packages/analysis/src/raises/heel/string-slant.ts';
import { heelRecording } from '../../../support/blocks.ts';

const LEVER_M = 0.186;
const foot = { heelLeverM: LEVER_M };
/** What a string of 10 cm reads where the foot line stands at so many degrees. */
const readAt = (degrees: number) => ({ heightM: stringReading((degrees * Math.PI) / 180, LEVER_M, 0.1) });

test.each([
  // by hand: over-reading of a string of 10 cm on a lever of 186 mm, sqrt((h0 + h)^2 + d^2) - h0 - h over h
  [35, 0.025],
  [45, 0.048],
])('at %d degrees it is the over-reading of the shortest string over the root of 3', (degrees, share) => {
  expect(slantRelativeU([readAt(10), readAt(degrees)], foot, heelDefaults) * Math.sqrt(3)).toBeCloseTo(share, 3);
});

test('a string whose length is known is corrected for, and nothing read is nothing in doubt', () => {
  expect(slantRelativeU([readAt(35)], { ...foot, stringRestLengthM: 0.1 }, heelDefaults)).toBe(0);
  expect(slantRelativeU([], foot, heelDefaults)).toBe(0);
});

test.each([0, 10, 35, 60])(
  'at %d degrees the height is that of the heel where the length is known, and the reading where it is not',
  (degrees) => {
    const drawnM = readAt(degrees).heightM;
    expect(heightOfDrawn(drawnM, LEVER_M, { stringRestLengthM: 0.1 })).toBeCloseTo(
      LEVER_M * Math.sin((degrees * Math.PI) / 180),
      12,
    );
    expect(heightOfDrawn(drawnM, LEVER_M, {})).toBe(drawnM);
  },
);

test.each([0, 0.7, -0.2])(
  'a sensor whose zero lies %d m from the heel at rest gives the same heights and times',
  (zeroM) => {
    const { trace, subject, truth } = simulateSet({
      placement: 'heel',
      level: 'typical',
      seed: 4,
      count: 12,
      cycleS: 2,
      stringRestLengthM: 0.1,
    });
    const { groups } = trace;
    const moved = {
      groups: groups.map((group) => ({
        ...group,
        channels: group.channels.map((one) => ({ ...one, samples: one.samples.map((reading) => reading + zeroM) })),
      })),
    };
    const known = { heelLeverM: subject.heelLeverM, stringRestLengthM: 0.1 };
    const { raises } = detectHeelRaises(moved, 'heel', known, heelDefaults);
    expect(raises).toHaveLength(truth.repetitions.length);
    const mean = (errors: readonly number[]): number => errors.reduce((sum, error) => sum + error, 0) / errors.length;
    const wrongM = mean(raises.map(({ heightM }, i) => heightM - truth.repetitions[i].heelHeightM));
    // as it is read it stands more than 4 mm too high
    const { raises: asRead } = detectHeelRaises(moved, 'heel', { heelLeverM: subject.heelLeverM }, heelDefaults);
    const asReadM = mean(asRead.map(({ heightM }, i) => heightM - truth.repetitions[i].heelHeightM));
    expect(Math.abs(wrongM)).toBeLessThan(0.001);
    expect(asReadM).toBeGreaterThan(0.004);
  },
);

test('heights of a string whose length nobody gave are covered by their intervals on simulated sets', () => {
  const covered = Array.from({ length: 10 }, (_, at) => {
    const { trace, subject, truth } = simulateSet({
      placement: 'heel',
      level: 'typical',
      seed: at + 1,
      count: 15,
      cycleS: 2,
    });
    const { raises } = detectHeelRaises(trace, 'heel', { heelLeverM: subject.heelLeverM }, heelDefaults);
    expect(raises).toHaveLength(truth.repetitions.length);
    return raises.map(({ heightM, heightUM }, i) => {
      return Math.abs(heightM - truth.repetitions[i].heelHeightM) <= 1.96 * heightUM;
    });
  }).flat();
  // 84 of 100 without what the slant adds
  expect(covered.filter(Boolean).length).toBeGreaterThanOrEqual(0.95 * covered.length);
});

test('while samples come the heights of a string of known length are those of the heel, from any zero, and the count is the same', () => {
  const [restM, tiltRad] = [0.1, (45 * Math.PI) / 180];
  const tiltAt = (timeS: number): number => (timeS < 1 ? 0 : (tiltRad / 2) * (1 - Math.cos(Math.PI * (timeS - 1))));
  // sqrt((l + h)^2 + d^2) - l, drawn out by 0.4 m when the heel is down
  const reading = (timeS: number): number => {
    const [heightM, forwardM] = [LEVER_M * Math.sin(tiltAt(timeS)), LEVER_M * (1 - Math.cos(tiltAt(timeS)))];
    return 0.4 + Math.hypot(restM + heightM, forwardM) - restM;
  };
  const recording = heelRecording(reading, 9.9, 100);
  const counted = (known: { readonly stringRestLengthM?: number }) => {
    const counter = new BlockCounter('heel', { settings: blockCounterDefaults, heelLeverM: LEVER_M, ...known });
    return [...counter.push(recording), ...counter.finish()];
  };
  const [asRead, corrected] = [counted({}), counted({ stringRestLengthM: restM })];
  expect(corrected.map(({ topS }) => topS)).toEqual(asRead.map(({ topS }) => topS));
  expect(corrected).toHaveLength(4);
  // 131.5 mm, which the string reads as 137.8: 4.8 % too high; the filter takes a little off the top of both
  for (const [at, { heightM }] of corrected.entries()) {
    expect(asRead[at].heightM / heightM).toBeCloseTo(1.048, 2);
    expect(heightM).toBeCloseTo(LEVER_M * Math.sin(tiltRad), 2);
  }
  const elsewhere = new BlockCounter('foot', { settings: blockCounterDefaults, stringRestLengthM: restM });
  expect(elsewhere.state.heightM).toBe(0);
});
