import type { TrialContext } from '@surae/analysis';
import type { EndReason } from '@surae/shared';

const END_REASONS: Readonly<Record<EndReason, true>> = {
  fatigue: true,
  pain: true,
  'other-stop': true,
  'heel-cannot-leave': true,
  'two-prompted-faults': true,
  safety: true,
  technical: true,
  cap: true,
  'fixed-count-done': true,
  'trials-done': true,
};

function endReason(word: string | undefined): EndReason | undefined {
  return word !== undefined && Object.hasOwn(END_REASONS, word) ? (word as EndReason) : undefined;
}

/** A rating from 0 to 10; undefined for any other text. */
function rating(text: string | undefined): number | undefined {
  if (text === undefined || !/^\d+(\.\d+)?$/.test(text)) return undefined;
  const value = Number(text);
  return value <= 10 ? value : undefined;
}

/** What the cells of a manifest say about a trial in words that the analysis knows; other words are only handed on. */
export function trialContext(cells: Readonly<Record<string, string>>): TrialContext {
  const reason = endReason(cells['end_reason']);
  const exertion = rating(cells['exertion']);
  const painPeak = rating(cells['pain_peak']);
  return {
    ...(reason === undefined ? {} : { endReason: reason }),
    ...(exertion === undefined ? {} : { exertion }),
    ...(painPeak === undefined ? {} : { painPeak }),
  };
}

/** Cells that were meant for the analysis and hold a word it does not know, as sentences. */
export function unusedCells(cells: Readonly<Record<string, string>>): string[] {
  const sentences: string[] = [];
  const reason = cells['end_reason'];
  if (reason !== undefined && endReason(reason) === undefined) {
    sentences.push(
      `The end_reason "${reason}" was handed on and not used: known are ${Object.keys(END_REASONS).join(', ')}.`,
    );
  }
  for (const name of ['exertion', 'pain_peak']) {
    const text = cells[name];
    if (text !== undefined && rating(text) === undefined) {
      sentences.push(`The ${name} "${text}" was handed on and not used: a rating goes from 0 to 10.`);
    }
  }
  return sentences;
}
