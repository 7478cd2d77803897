import { ratioBlocks } from '@surae/analysis';
import { COMPARE_SENTENCES, RATIO_BLOCK_SENTENCES } from '@surae/shared';
import type { Visit } from '../journey/visit.ts';
import { setOf } from '../journey/visit-events.ts';
import { pairCircumstances } from './pair-circumstances.ts';

/** Why the two legs are not put into one number: every reason in words, and what holds even without one. */
export function noRatio(visit: Visit): readonly string[] {
  const left = setOf(visit, 'left')?.report;
  const right = setOf(visit, 'right')?.report;
  if (!left || !right) return [];
  const blocks = ratioBlocks(left, right, pairCircumstances(visit));
  return [...blocks.map((block) => RATIO_BLOCK_SENTENCES[block].text), COMPARE_SENTENCES['low-too'].text];
}
