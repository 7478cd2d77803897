import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

/**
 * Memory for what is short-lived, which most of an assessment is [MB]. It fills before it is cleared, so that it is part of what a
 * run holds at its peak: four times as much saves no processor time.
 */
export const YOUNG_MB = 8;

/**
 * How much of what lasts may come to what was left when it was last cleared before it is cleared again [%]. Without a word it may
 * become four times as much: a run of ten thousand recordings then holds far more than one of a hundred.
 */
const GROWTH_PERCENT = 50;

/**
 * When looking through what lasts begins, in the share of its allowed growth [%], ours: at a quarter it would be done twice as often.
 * Without a word it begins when all is used up, and V8 allows 8 MB at least.
 */
const BEGIN_PERCENT = 35;

/**
 * V8 takes these while it runs, for all threads: a worker keeps one core busy, and little works beside it: what lasts is
 * still looked through by several threads at the end, which cannot be turned off then. What is short-lived is
 * cleared away by the thread that made it, and code is compiled by the thread that runs it: where workers fill the cores, threads
 * beside them take a twentieth of the processor each. Of V8 11, that of Node 20, code is wanted only after eight times its usual use,
 * since every worker has it compiled once more; later ones do not know that flag.
 */
const FLAGS = [
  `--heap-growing-percent=${GROWTH_PERCENT}`,
  `--incremental-marking-hard-trigger=${BEGIN_PERCENT}`,
  '--no-parallel-scavenge',
  '--no-concurrent-array-buffer-sweeping',
  '--no-concurrent-recompilation',
  // a worker has all of its room from the start: it would not grow
  `--min-semi-space-size=${Math.ceil(YOUNG_MB / 3)}`,
  ...(process.versions.v8.startsWith('11.') ? ['--interrupt-budget=500000'] : []),
];

/** Clears away what nothing has a hold of any more: of all there is, or of what is short-lived. */
type ClearAway = (of?: { readonly type: 'minor' }) => void;

/** V8 has no other way to be asked for it. The flag stays: it holds for all threads, and one would take it from the others. */
function clearAway(): ClearAway {
  setFlagsFromString('--expose-gc');
  return runInNewContext('gc') as ClearAway;
}

/**
 * Before threads are started that fill the cores. No limit of a thread says the same. All that lasts is looked through once: until
 * that has been done V8 lets it become many times what was loaded; from then on it goes by {@link GROWTH_PERCENT}.
 */
export function makeReadyForWorkers(): void {
  for (const flag of FLAGS) setFlagsFromString(flag);
  clearAway()();
}

/**
 * For between two recordings of a worker: the first is done with, so that hardly anything that is short-lived has to be kept. In the
 * middle of a recording it would be, and twice kept it lasts.
 */
export function clearingBetween(): () => void {
  const clear = clearAway();
  return () => clear({ type: 'minor' });
}

/** From now on room for what is short-lived grows with what was alive when it was last cleared, as V8 has it. */
export function letRoomGrow(): void {
  setFlagsFromString('--semi-space-growth-factor=2');
}

/**
 * From now on room for what is short-lived stays as it is: in the thread that gathers it would become what a run over thousands of
 * recordings fills for nothing. V8 lets it grow again whenever a thread starts.
 */
export function keepRoom(): void {
  setFlagsFromString('--semi-space-growth-factor=1');
}
