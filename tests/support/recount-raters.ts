import { type AutomaticCount, type BlindStep, type BlindTrial, bookWith, emptyBook } from '@surae/study';
import { type KeptRater, RecountDesk } from '../../apps/dashboard/src/study/recount-desk.ts';
import { BLIND_STUDY } from './blind-raters.ts';
import { raisedLine } from './recount-line.ts';

/** Trials of six recordings: `t0.csv` with four raises, `t1.csv` with five, and so on. */
export const RECOUNT_TRIALS: readonly BlindTrial[] = Array.from({ length: 6 }, (_, at) => ({
  trial: `t${at}.csv`,
  sha256: `hash ${at}`,
}));

export const raisesOf = (trial: string): number => 4 + Number(/\d+/.exec(trial)![0]);

/** The machine sees every raise, and lets the last one of each recording not count. */
export const RECOUNT_AUTOMATIC: readonly AutomaticCount[] = RECOUNT_TRIALS.map(({ trial }) => {
  const count = raisesOf(trial);
  const topsS = Array.from({ length: count }, (_, at) => 1 + 2 * at);
  return { trial, count: count - 1, topsS, verdicts: topsS.map((_, at) => (at === count - 1 ? 'no' : 'yes')) };
});

/** A desk over lists in memory, and what is kept of each rater. */
export function deskInMemory(trials = RECOUNT_TRIALS): { desk: RecountDesk; kept: Map<string, KeptRater> } {
  const kept = new Map<string, KeptRater>();
  const desk = new RecountDesk({
    declared: BLIND_STUDY,
    trials: () => trials,
    kept: (rater) => kept.get(rater) ?? null,
    keep: (key, entries) => {
      kept.set(key.rater, { key, book: bookWith(kept.get(key.rater)?.book ?? emptyBook(key), key, entries) });
      return Promise.resolve();
    },
    trace: (sha256) => Promise.resolve(raisedLine(4 + Number(/\d+/.exec(sha256)![0]))),
    automatic: () => RECOUNT_AUTOMATIC,
  });
  return { desk, kept };
}

/** A rater goes through every item by the keyboard's steps: each peak counts, but for the last so many of the first showings. */
export async function countAll(desk: RecountDesk, rater: string, leaveOut: number): Promise<void> {
  const session = desk.begin(rater);
  await session.show();
  for (const { showing, trial } of session.key.items) {
    const count = raisesOf(trial) - (showing === 1 ? leaveOut : 0);
    for (let at = 0; at < count; at += 1) {
      session.toPeak(1);
      await session.say('yes');
    }
    await session.done();
  }
}

/** What a rater says of every item without a mark, as a table is filled in. */
export function tableSteps(items: readonly { readonly item: string; readonly trial: string }[]): BlindStep[] {
  return items.flatMap(({ item, trial }): BlindStep[] => [
    { step: 'count', item, count: raisesOf(trial) },
    { step: 'verdict', item, repetition: 1, verdict: 'no' },
  ]);
}
