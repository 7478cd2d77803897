import type { Placement, Side } from '../quantities.ts';
import { wordsOf } from './column-name.ts';
import { PLACEMENT_WORDS, SIDE_WORDS } from './column-words.ts';

/** What the lines above a table tell, each with the line that it stands on. */
export interface PreambleReading {
  readonly rateHz?: { readonly value: number; readonly line: number };
  readonly side?: { readonly value: Side; readonly line: number };
  readonly placement?: { readonly value: Placement; readonly line: number };
}

const rateWords =
  /(?:sampl\w*|abtast\w*|frequen\w*|frequenz|rate|freq|fs|muestreo|echantillonnage|campionamento|amostragem|hz)/i;
const sideWords =
  /(?:^|[^\p{L}])(?:side|leg|limb|calf|seite|bein|wade|lado|pierna|pantorrilla|cote|jambe|mollet|lato|gamba|polpaccio|perna|foot|fuss)(?:[^\p{L}]|$)/iu;
const placeWords = /(?:^|[^\p{L}])(?:placement|position|location|sensor|ort|ubicacion|placed|mounted)(?:[^\p{L}]|$)/iu;

/** The one value of a table of words that a line names; undefined where it names none or two. */
function only<Value extends string>(
  table: Readonly<Record<Value, readonly string[]>>,
  words: readonly string[],
): Value | undefined {
  const found = (Object.keys(table) as Value[]).filter((value) =>
    table[value].some((word) => word.length > 1 && words.includes(word)),
  );
  return found.length === 1 ? found[0] : undefined;
}

/** Reads rate, side and placement from the lines above a table: only where a line names what it tells. */
export function readPreamble(preamble: readonly { readonly line: number; readonly text: string }[]): PreambleReading {
  let reading: PreambleReading = {};
  for (const { line, text } of preamble) {
    const plain = text.normalize('NFD').replace(/\p{M}/gu, '').replace(/ß/g, 'ss');
    const number = /(\d+(?:[.,]\d+)?)\s*(k?hz|samples?\/s|sps|s-1|1\/s)?\b/i.exec(
      plain.replace(/^[^:;=,\t]*?(?=[:;=,\t]|\d)/, ''),
    );
    const hasUnit = number?.[2] !== undefined;
    if (
      reading.rateHz === undefined &&
      number !== null &&
      rateWords.test(plain) &&
      (hasUnit || /hz|rate|freq|fs\b/i.test(plain))
    ) {
      const value = Number(number[1]!.replace(',', '.')) * (/^khz/i.test(number[2] ?? '') ? 1000 : 1);
      if (value >= 1 && value <= 20_000) reading = { ...reading, rateHz: { value, line } };
    }
    const words = wordsOf(plain);
    const side = sideWords.test(plain) ? only(SIDE_WORDS, words) : undefined;
    if (reading.side === undefined && side !== undefined) reading = { ...reading, side: { value: side, line } };
    const placement = placeWords.test(plain) ? only(PLACEMENT_WORDS, words) : undefined;
    if (reading.placement === undefined && placement !== undefined)
      reading = { ...reading, placement: { value: placement, line } };
  }
  return reading;
}
