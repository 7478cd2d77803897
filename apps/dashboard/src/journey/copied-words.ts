import type { CopiedHistory, CopiedSoreness, Soreness } from '@surae/casebook';
import { HISTORY_WORDS, SORENESS_WORDS } from '@surae/shared';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';

/** What a press would take over of where it is sore. */
export function sameSorenessWords({ sore, from, at }: CopiedSoreness): string {
  const said = (place: Soreness | null): string => SORENESS_WORDS[place ?? 'not-told'].text;
  const legs = { left: said(sore.left), right: said(sore.right) };
  return from === 'visit'
    ? fill(SORENESS_WORDS['as-visit'], { date: dayOf(at), ...legs })
    : fill(SORENESS_WORDS['as-episode'], legs);
}

/** What was taken over of where it is sore. */
export function copiedSorenessWords({ from, at }: CopiedSoreness): string {
  return from === 'visit'
    ? fill(SORENESS_WORDS['copied-visit'], { date: dayOf(at) })
    : SORENESS_WORDS['copied-episode'].text;
}

/** What a press would take over of what lasts. */
export function sameHistoryWords({ history: { legs, about }, begunAt }: CopiedHistory): string {
  const what = [
    ...(['left', 'right'] as const).flatMap((side) => {
      const { injury } = legs[side];
      return injury === null
        ? []
        : [fill(HISTORY_WORDS[`as-${side}`], { injury: HISTORY_WORDS[`injury-${injury}`].text })];
    }),
    ...(about ?? []).map((one) => HISTORY_WORDS[one].text),
    ...(about?.length === 0 ? [HISTORY_WORDS['about-none'].text] : []),
  ];
  return fill(HISTORY_WORDS['as-visit'], { date: dayOf(begunAt), what: what.join('; ') });
}
