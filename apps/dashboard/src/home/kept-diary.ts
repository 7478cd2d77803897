import { type Diary, type DoneAtHome, diaryCode, diaryOfCode, type RunAtHome } from '@surae/exchange';
import { type HomeMemory, keptMornings } from './kept-mornings.ts';

const KEY = 'surae.diary';

/** What this device keeps of exercises and runs; what cannot be read is none. */
function keptParts(memory: HomeMemory): Pick<Diary, 'done' | 'runs'> {
  try {
    const { done, runs } = diaryOfCode(memory.getItem(KEY) ?? '');
    return { done, runs };
  } catch {
    return { done: [], runs: [] };
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
  const { done, runs } = keptParts(memory);
  const others = done.filter(
    ({ day, planKey, place }) => day !== entry.day || planKey !== entry.planKey || place !== entry.place,
  );
  const all = entry.sets === 0 ? others : byDay([...others, entry]);
  memory.setItem(KEY, diaryCode({ mornings: [], done: all, runs }));
}

/** Keeps one more run; there may be several of a day. Throws where nothing can be kept. */
export function keepRun(memory: HomeMemory, run: RunAtHome): void {
  const { done, runs } = keptParts(memory);
  memory.setItem(KEY, diaryCode({ mornings: [], done, runs: byDay([...runs, run]) }));
}
