import { expect, test } from 'vitest';
import { sameLegSigns } from '../../packages/casebook/src/same-leg-signs.ts';
import type { SetChoice } from '../../packages/casebook/src/set-choice.ts';
import { madeReport, madeSet } from '../support/made-visit.ts';

const sensor = { route: 'bluetooth', kindName: 'Invented', deviceName: 'Foot 1' } as unknown as SetChoice['sensor'] &
  object;
const degrees = (angle: number): readonly [number, number, number] => [
  Math.sin((angle * Math.PI) / 180),
  0,
  Math.cos((angle * Math.PI) / 180),
];

function worn(
  side: 'left' | 'right',
  up: readonly [number, number, number] | null,
  change: object = {},
  heightM = 0.1,
) {
  const report = madeReport(side, {});
  const setUp = { lights: [], zero: null, certificate: null, ...(up === null ? {} : { up }) };
  const made = madeSet(side, { ...report, reference: { ...report.reference!, heightM } });
  return {
    ...made,
    choice: { ...made.choice, placement: 'foot', origin: 'live', sensor, setUp, ...change } as SetChoice,
  };
}

test('a sensor that lies as it lay makes it likely, up to two degrees, and one that was turned proves nothing', () => {
  const signs = (angle: number) => sameLegSigns(worn('left', degrees(0)), worn('right', degrees(angle)));
  expect([0, 0.4, 1.99].map((angle) => signs(angle).verdict)).toEqual(['likely', 'likely', 'likely']);
  expect([2.01, 40, 180].map((angle) => signs(angle).verdict)).toEqual(['cannot-tell', 'cannot-tell', 'cannot-tell']);
  expect(signs(0.4).turnedDeg).toBeCloseTo(0.4, 9);
  expect(signs(180).turnedDeg).toBeCloseTo(180, 9);
});

test('nothing can be told of another sensor, another place, a plate, a sensor on the trunk, or where up was not seen', () => {
  const first = worn('left', degrees(0));
  const others = [
    worn('right', degrees(0), { sensor: { ...sensor, deviceName: 'Foot 2' } }),
    worn('right', degrees(0), { placement: 'heel' }),
    worn('right', null),
    { ...worn('right', degrees(0)), choice: madeSet('right', null).choice },
  ];
  for (const second of others)
    expect(sameLegSigns(first, second)).toMatchObject({ verdict: 'cannot-tell', turnedDeg: null });
  for (const placement of ['platform', 'trunk']) {
    const [one, other] = (['left', 'right'] as const).map((side) => worn(side, degrees(0), { placement }));
    expect(sameLegSigns(one, other).verdict).toBe('cannot-tell');
  }
});

test('heights that are alike are told beside it and say nothing alone', () => {
  const alike = (up: number, heightM: number) =>
    sameLegSigns(worn('left', degrees(0)), worn('right', degrees(up), {}, heightM));
  expect(alike(1, 0.0991).heightShare).toBeCloseTo(0.009, 6);
  expect(alike(1, 0.0989).heightShare).toBeNull();
  expect(alike(30, 0.1)).toMatchObject({ verdict: 'cannot-tell', heightShare: 0 });
  const without = { ...worn('right', degrees(0)), report: null };
  expect(sameLegSigns(worn('left', degrees(0)), without).heightShare).toBeNull();
});
