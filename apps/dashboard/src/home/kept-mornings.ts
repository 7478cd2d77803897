import { type Morning, morningsCode, morningsOfCode } from '@surae/exchange';

/** What a browser keeps for a page; it may refuse to. */
export interface HomeMemory {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
}

const KEY = 'surae.mornings';

/** The mornings that this device keeps, the oldest first; what cannot be read is none. */
export function keptMornings(memory: HomeMemory): readonly Morning[] {
  try {
    return morningsOfCode(memory.getItem(KEY) ?? '');
  } catch {
    return [];
  }
}

/** Keeps a morning; one of the same day is told anew. Throws where the browser keeps nothing. */
export function keepMorning(memory: HomeMemory, morning: Morning): readonly Morning[] {
  const others = keptMornings(memory).filter(({ day }) => day !== morning.day);
  const all = [...others, morning].sort((a, b) => (a.day < b.day ? -1 : 1));
  memory.setItem(KEY, morningsCode(all));
  return all;
}
