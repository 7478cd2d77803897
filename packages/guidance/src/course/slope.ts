import { middle } from './middle.ts';

/**
 * Slope of a line through points: the middle value of the slopes between all pairs.
 *
 * @param points - place and value of each [any unit]
 * @returns null where no two points lie at different places [unit of value per unit of place]
 *
 * Source: Sen 1968, J Am Stat Assoc 63:1379 (Theil-Sen)
 */
export function theilSenSlope(points: readonly (readonly [number, number])[]): number | null {
  const slopes = points.flatMap(([x, y], i) =>
    points.slice(i + 1).flatMap(([otherX, otherY]) => (otherX === x ? [] : [(otherY - y) / (otherX - x)])),
  );
  return middle(slopes);
}
