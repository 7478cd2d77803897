import type { BlindStep } from '../../packages/study/src/blind/blind-step.ts';
import { type BlindKey, blindedOrder } from '../../packages/study/src/blind/blinded-order.ts';
import { nextSteps, readVerdicts, type VerdictBook } from '../../packages/study/src/blind/verdict-book.ts';
import { type DeclaredStudy, parseStudy } from '../../packages/study/src/declared/parse-study.ts';
import { entryLine } from '../../packages/study/src/hash-chain.ts';
import { declaredStudy } from './declared-study.ts';

/** A study in which half of the recordings are shown twice. */
export const BLIND_STUDY: DeclaredStudy = parseStudy(
  JSON.stringify(declaredStudy({ blinding: { ...declaredStudy().blinding!, repeatedShare: 0.5 } })),
);

/** The key of a rater of so many recordings: `t0.csv`, `t1.csv`, ... */
export function keyOf(rater: string, count: number): BlindKey {
  return blindedOrder(
    BLIND_STUDY,
    rater,
    Array.from({ length: count }, (_, at) => ({ trial: `t${at}.csv`, sha256: `hash ${at}` })),
  );
}

/** The file of verdicts after these steps. */
export function verdictText(key: BlindKey, steps: readonly BlindStep[]): string {
  return nextSteps({ entries: [] }, key, steps).map(entryLine).join('');
}

/** What a rater comes to after these steps. */
export function bookAfter(key: BlindKey, steps: readonly BlindStep[]): VerdictBook {
  return readVerdicts(verdictText(key, steps), key);
}

export const LOCK: BlindStep = { step: 'lock', by: 'ada', at: '2026-04-01' };

export const OPEN: BlindStep = { step: 'open', by: 'cyd', at: null, why: 'all have locked' };
