import type { HomeMemory } from './kept-mornings.ts';

const KEY = 'surae.calendar-places';
/** places of a plan at most; ours */
const MOST = 50;

/** How many places of the plan a calendar file of this device may have filled; 0 where none was saved. */
export function keptPlaces(memory: HomeMemory): number {
  const value = Number(memory.getItem(KEY) ?? 0);
  return Number.isInteger(value) && value > 0 ? Math.min(value, MOST) : 0;
}

/** Remembers it; where nothing can be kept, a later file takes nothing away. */
export function keepPlaces(memory: HomeMemory, places: number): void {
  try {
    memory.setItem(KEY, String(places));
  } catch {
    // the file is there all the same
  }
}
