import { type FaultRow, faultRange, type Level } from './fault-table.ts';
import type { Random } from './random.ts';

/**
 * Amounts of all faults of a table for one recording, drawn evenly from the ranges of the level.
 *
 * @param table - rows by name [unit of the row]
 * @param level - how disturbed [-]
 * @param random - stream to draw from [-]
 * @param fixed - amounts to take instead of drawing them; the others stay what they were [unit of the row]
 * @returns one amount for each row of the table [unit of the row]
 *
 * Source: ours
 */
export function drawFaults<Name extends string>(
  table: Readonly<Record<Name, FaultRow>>,
  level: Level,
  random: Random,
  fixed: Partial<Record<Name, number>>,
): Readonly<Record<Name, number>> {
  const amounts: Partial<Record<Name, number>> = {};
  for (const name of Object.keys(table) as Name[]) {
    const [low, high] = faultRange(table[name], level);
    const drawn = random.between(low, high);
    amounts[name] = fixed[name] ?? drawn;
  }
  return amounts as Record<Name, number>;
}
