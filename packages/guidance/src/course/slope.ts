import { middle } from './middle.ts';

type Points = readonly (readonly [number, number])[];

function pairSlopes(points: Points): number[] {
  return points.flatMap(([x, y], i) =>
    points.slice(i + 1).flatMap(([otherX, otherY]) => (otherX === x ? [] : [(otherY - y) / (otherX - x)])),
  );
}

/**
 * Slope of a line through points: the middle value of the slopes between all pairs.
 *
 * @param points - place and value of each [any unit]
 * @returns null where no two points lie at different places [unit of value per unit of place]
 *
 * Source: Sen 1968, J Am Stat Assoc 63:1379 (Theil-Sen)
 */
export function theilSenSlope(points: Points): number | null {
  return middle(pairSlopes(points));
}

/** In how many orders of so many different values so many pairs stand the wrong way round. */
function ordersByPairs(count: number): readonly number[] {
  let orders: readonly number[] = [1];
  for (let n = 2; n <= count; n++) {
    const before = orders;
    orders = Array.from({ length: (n * (n - 1)) / 2 + 1 }, (_, pairs) =>
      Array.from({ length: n }, (__, more) => before[pairs - more] ?? 0).reduce((sum, one) => sum + one, 0),
    );
  }
  return orders;
}

/**
 * Lower bound of the slope of a line through points: so often at least it lies below the true one. It is one of the slopes between
 * pairs, found by the exact distribution of the statistic of Kendall; values that are alike make it lower.
 *
 * @param points - place and value of each, no two at one place [any unit]
 * @param confidence - how often it holds, between 0 and 1 [1]
 * @returns null of so few points that no pair is low enough [unit of value per unit of place]
 *
 * Source: Sen 1968, J Am Stat Assoc 63:1379, section 3; Kendall 1938, Biometrika 30:81, for the distribution
 */
export function leastSlope(points: Points, confidence: number): number | null {
  const orders = ordersByPairs(points.length);
  const all = orders.reduce((sum, one) => sum + one, 0);
  let below = 0;
  let pairs = 0;
  while (pairs < orders.length && below + orders[pairs]! <= (1 - confidence) * all) {
    below += orders[pairs]!;
    pairs++;
  }
  return pairs === 0 ? null : (pairSlopes(points).sort((one, other) => one - other)[pairs - 1] ?? null);
}
