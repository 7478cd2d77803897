import type { Trace } from '@surae/analysis';

/** A recording of somebody who counts by hand: the changes of the count, by their instants. */
export function tapped(changes: readonly (readonly [atS: number, change: 1 | -1 | 0])[]): Trace {
  return {
    groups: [
      {
        timesS: Float64Array.from(changes, ([atS]) => atS),
        channels: [{ quantity: 'tap', axis: null, samples: Float64Array.from(changes, ([, change]) => change) }],
      },
    ],
  };
}

/** So many taps after the first second, the time from one to the next growing by a share of it. */
export function steadyTaps(count: number, periodS = 2, growth = 0): Trace {
  const instants: number[] = [];
  let atS = 1;
  for (let i = 0; i < count; i++) {
    instants.push(atS);
    atS += periodS * (1 + growth * i);
  }
  return tapped([[0, 0], ...instants.map((one) => [one, 1] as const), [atS + 1, 0]]);
}
