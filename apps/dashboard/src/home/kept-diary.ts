import { type AfterAtHome, type Diary, type DoneAtHome, diaryCode, diaryOfCode, type RunAtHome } from '@surae/exchange';
import { type HomeMemory, keptMornings } from './kept-mornings.ts';

const KEY = 'surae.diary';

/** What this device keeps of exercises and runs; what cannot be read is none. */
function keptParts(memory: HomeMemory): Pick<Diary, 'done' | 'runs' | 'after'> {
  try {
    const { done, runs, after } = diaryOfCode(memory.getItem(KEY) ?? '');
    return { done, runs, after };
  } catch {
    return { done: [], runs: [], after: [] };
  }
}

/** Everything that was written down on this device, mornings among it, the oldest first. */
export function keptDiary(memory: HomeMemory): Diary {
  return { mornings: keptMornings(memory), ...keptParts(memory) };
}

function byDay<Entry extends { readonly day: string }>(entries: readonly Entry[]): readonly Entry[] {
  return entries.toSorted((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
}

/** Keeps what was done of an exercise on a day in place of what was kept of it; no set is nothing done. Throws where nothing can be kept. */
export function keepDone(memory: HomeMemory, entry: DoneAtHome): void {
  const { done, runs, after } = keptParts(memory);
  const others = done.filter(
    ({ day, planKey, place }) => day !== entry.day || planKey !== entry.planKey || place !== entry.place,
  );
  const all = entry.sets === 0 ? others : byDay([...others, entry]);
  // of a day on which nothing was done there is no afterwards
  const left = after.filter(({ day }) => all.some((one) => one.day === day));
  memory.setItem(KEY, diaryCode({ mornings: [], done: all, runs, after: left }));
}

/** Keeps pain after the exercises of a day in place of what was kept of it. Throws where nothing can be kept. */
export function keepAfter(memory: HomeMemory, entry: AfterAtHome): void {
  const { done, runs, after } = keptParts(memory);
  const others = after.filter(({ day }) => day !== entry.day);
  const all = entry.left === null && entry.right === null ? others : byDay([...others, entry]);
  memory.setItem(KEY, diaryCode({ mornings: [], done, runs, after: all }));
}

/** Keeps one more run; there may be several of a day. Throws where nothing can be kept. */
export function keepRun(memory: HomeMemory, run: RunAtHome): void {
  const { done, runs, after } = keptParts(memory);
  memory.setItem(KEY, diaryCode({ mornings: [], done, runs: byDay([...runs, run]), after }));
}
