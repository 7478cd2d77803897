import type { SideBlock, SideRatio } from '@surae/analysis';
import { toldSide } from '@surae/casebook';
import {
  COMPARE_CAUTION_SENTENCES,
  LETTER_SENTENCES,
  RATIO_BLOCK_SENTENCES,
  VALUE_BLOCK_SENTENCES,
} from '@surae/shared';
import type { StudyLegs } from '../study.ts';
import { filled, percentWithInterval } from './figures.ts';

const words = LETTER_SENTENCES;
const legs = { left: words.left.text, right: words.right.text };

/** A name of a leg inside a sentence. */
function inside(side: 'left' | 'right'): string {
  return legs[side].toLowerCase();
}

function blockWords(code: SideBlock): string {
  return { ...RATIO_BLOCK_SENTENCES, ...VALUE_BLOCK_SENTENCES }[code].text;
}

function ratioLines({ ratio, direction, ...one }: SideRatio, what: string): string[] {
  const told = toldSide({ ratio, direction, ...one });
  return [
    filled(words.ratio, {
      over: legs[direction.over],
      under: inside(direction.under),
      what,
      figure: percentWithInterval(ratio.value, ratio.low, ratio.high),
    }),
    filled(words[`less-${told.verdict}`], { leg: inside(told.side) }),
    words['less-means'].text,
    COMPARE_CAUTION_SENTENCES['other-side-may-be-low'].text,
  ];
}

/** What a letter says of the legs beside each other by one test: a ratio with its interval and a verdict, or every reason against one. */
export function legLines({ test, comparison }: StudyLegs): string[] {
  const what = words[`what-${test}`].text;
  if (comparison.kind === 'ratio') return ratioLines(comparison, what);
  return [filled(words['no-ratio'], { what }), ...comparison.blocks.map(({ code }) => blockWords(code))];
}
