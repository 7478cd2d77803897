import type { Side } from '@surae/analysis';
import { type CasebookPerson, pullSetOf } from '@surae/casebook';
import { MARK_WORDS, MATCHED_PUSH, MATCHED_WORDS } from '@surae/shared';
import { saysSomething } from '../advice/tested-given.ts';
import { dayOf } from '../words/dates.ts';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';

/** What pushes say of pain at a share of the best one. */
export interface PushPain {
  readonly on: string;
  readonly side: Side;
  /** none where the worst of all trials was none, which holds for every force; null is not known */
  readonly pain: 0 | null;
}

const sides = ['left', 'right'] as const satisfies readonly Side[];

/**
 * Pain at a share of the best push, of each leg that was tested. It is asked once, as the worst of all trials, and each trial goes as
 * hard as it can: at which force it came is not known, unless there was none.
 *
 * @param past - of the person [-]
 * @param today - what lies after it is left out [-]
 * @returns pushes that were ended, the oldest first [of 10]
 *
 * Source: ours
 */
export function pushPains(
  { visits, person }: Pick<CasebookPerson, 'visits' | 'person'>,
  today: string,
): readonly PushPain[] {
  return visits.flatMap(({ visit }) =>
    sides.flatMap((side): PushPain[] => {
      const on = visit.begunAt.slice(0, 10);
      const set = pullSetOf(visit, side);
      if (set?.end == null || on > today || !saysSomething(set.choice, person.demo)) return [];
      return [{ on, side, pain: set.end.painPeak === 0 ? 0 : null }];
    }),
  );
}

/** The same in words: what can be told, and why not where it cannot; nothing without a push. */
export function pushWords(pains: readonly PushPain[]): readonly string[] {
  if (pains.length === 0) return [];
  const words = MATCHED_WORDS;
  const open = pains.filter(({ pain }) => pain === null).length;
  return [
    ...pains.flatMap(({ on, side, pain }) =>
      pain === null ? [] : [fill(words['push-none'], { day: dayOf(on), leg: words[side].text })],
    ),
    ...(open === 0 ? [] : [fill(words['push-open'], { count: open })]),
    ...(open === 0 ? [] : [words['push-instead'].text]),
    fill(words['push-share'], { mark: MARK_WORDS[MATCHED_PUSH.mark].text }),
  ];
}

/** What stands over it. */
export function pushHead(): string {
  return fill(MATCHED_WORDS['push-head'], { share: decimal(MATCHED_PUSH.value, 1) });
}
