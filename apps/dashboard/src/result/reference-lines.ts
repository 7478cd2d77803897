import type { Report, Side } from '@surae/analysis';
import { setOf, type Visit } from '@surae/casebook';
import { PRACTICE_WORDS, REFERENCE_SENTENCES, WARM_UP } from '@surae/shared';
import { fill } from '../words/fill.ts';

const sides = ['left', 'right'] as const satisfies readonly Side[];

function referenceOf(visit: Visit, side: Side): Report['reference'] {
  return setOf(visit, side)?.report?.reference ?? null;
}

const centimetres = (heightM: number): string => (100 * heightM).toFixed(1);

/** What the repetitions of a leg were held against, and by which rule. */
function referenceLine(visit: Visit, side: Side): string[] {
  const reference = referenceOf(visit, side);
  if (reference === null || reference.heightM === null) return [];
  const rule = reference.raised ? PRACTICE_WORDS.raised.text : REFERENCE_SENTENCES[reference.rule].text;
  return [fill(PRACTICE_WORDS[`reference-${side}`], { height: centimetres(reference.heightM), rule })];
}

/** Each leg is held against its own height: where one is much lower its count is of lower raises, and that is said. */
function lowerLine(visit: Visit): string[] {
  const left = referenceOf(visit, 'left')?.heightM ?? null;
  const right = referenceOf(visit, 'right')?.heightM ?? null;
  if (left === null || right === null) return [];
  const lower = left < right ? 'left' : 'right';
  const [low, high] = [Math.min(left, right), Math.max(left, right)];
  if (low >= WARM_UP.lowerReference.value * high) return [];
  return [fill(PRACTICE_WORDS[`lower-${lower}`], { low: centimetres(low), high: centimetres(high) })];
}

/** The reference heights of a visit, one line a leg, and whether one is much lower. */
export function referenceLines(visit: Visit): { readonly each: readonly string[]; readonly lower: readonly string[] } {
  return { each: sides.flatMap((side) => referenceLine(visit, side)), lower: lowerLine(visit) };
}
