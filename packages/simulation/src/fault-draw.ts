import { type FaultAmounts, type FaultName, faultNames, faultRange, type Level } from './fault-table.ts';
import type { Random } from './random.ts';

/**
 * Amounts of all faults for one set, drawn evenly from the ranges of the level.
 *
 * @param level - how disturbed [-]
 * @param random - stream to draw from [-]
 * @param fixed - amounts to take instead of drawing them [unit of the row]
 * @returns one amount for each row of the table [unit of the row]
 *
 * Source: ours
 */
export function drawFaults(level: Level, random: Random, fixed: Partial<Record<FaultName, number>>): FaultAmounts {
  const amounts: Partial<Record<FaultName, number>> = {};
  for (const name of faultNames) {
    const [low, high] = faultRange(name, level);
    const drawn = random.between(low, high);
    amounts[name] = fixed[name] ?? drawn;
  }
  return amounts as FaultAmounts;
}
