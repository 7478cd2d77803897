import type { Side } from '@surae/analysis';
import { choiceFacts, type LadderState, type Visit } from '@surae/casebook';
import { LADDER_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';

/** How far one leg came, in a few short sentences. */
function ladderLine({ limit, highest, stopped, pains, notDone, sudden }: LadderState): string {
  const words = LADDER_WORDS;
  const said = [
    highest === null
      ? fill(words['up-to-none'], { limit })
      : fill(words['up-to'], { rung: words[highest].text, limit }),
  ];
  if (stopped !== null) {
    const rung = words[stopped.rung].text;
    const pain = pains[stopped.rung] ?? '';
    said.push(fill(words[`stopped-${stopped.why}`], { rung, pain }));
  }
  if (notDone.includes('one-raise')) said.push(words['raise-not-done'].text);
  if (sudden === true) said.push(words['raise-sudden'].text);
  return said.join(' ');
}

/** A leg with what is said of it. */
export interface LadderLine {
  readonly side: Side;
  readonly text: string;
}

/** What each leg bore before the tests, one line a leg; none for a leg that was not tried. */
export function ladderLines(visit: Visit): readonly LadderLine[] {
  const { legs } = choiceFacts(visit, []);
  return (['left', 'right'] as const).flatMap((side) => {
    const { ladder } = legs[side];
    if (ladder === null) return [];
    return [{ side, text: fill(LADDER_WORDS[`line-${side}`], { what: ladderLine(ladder) }) }];
  });
}
