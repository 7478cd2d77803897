import { type IrritabilityInput, irritabilityOf } from '@surae/analysis';
import { irritabilityAnswers, noHistory, type Visit } from '@surae/casebook';
import type { Leg } from '@surae/guidance';
import { ADVICE_VALUE_WORDS, ADVICE_WORDS, FINDING_INPUT_NAMES, HISTORY_WORDS, MARK_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';

const inputs: readonly IrritabilityInput[] = [
  'provokedBy',
  'peakPain',
  'settlesAfter',
  'morningStiffness',
  'restPain',
  'trend',
];

/** What was answered, in the words of the page that asked; null was not asked. */
function told(visit: Pick<Visit, 'history'>, leg: Leg): Readonly<Record<IrritabilityInput, string | null>> {
  const { provokedBy, peakPain, settles, stiffness, restPain, trend } = (visit.history ?? noHistory).legs[leg]
    .irritability;
  const words = (code: keyof typeof HISTORY_WORDS | null): string | null =>
    code === null ? null : HISTORY_WORDS[code].text;
  return {
    provokedBy: words(provokedBy),
    peakPain: peakPain === null ? null : fill(ADVICE_WORDS['irritable-pain'], { pain: peakPain }),
    settlesAfter: words(settles),
    morningStiffness: words(stiffness),
    restPain: words(restPain),
    trend: words(trend),
  };
}

/**
 * The six answers that a tendon is graded by, each with what was said and the grade of it, and which of them decided. A leg that is not
 * sore, or of which nobody asked whether it is, is not graded and has none.
 *
 * @param visit - of today [-]
 * @param leg - which leg [-]
 * @returns one line for each, then what they come to; none for a leg that is not graded at all [-]
 *
 * Source: `irritabilityOf` of the analysis; common practice, no source
 */
export function irritabilityInputLines(visit: Pick<Visit, 'sore' | 'history'>, leg: Leg): readonly string[] {
  const sore = visit.sore[leg];
  if (sore === null || sore === 'no') return [];
  const said = told(visit, leg);
  const answers = irritabilityAnswers((visit.history ?? noHistory).legs[leg]);
  const { grade, treatAs, byInput, decidedBy, missing } = irritabilityOf(answers);
  const words = ADVICE_WORDS;
  const nameOf = (input: IrritabilityInput): string => FINDING_INPUT_NAMES[input].text;
  const lines = inputs.map((input) => {
    const own = byInput[input];
    const value = said[input];
    if (own === undefined || value === null) return fill(words['irritable-unknown'], { input: nameOf(input) });
    return fill(words['irritable-input'], { input: nameOf(input), value, grade: ADVICE_VALUE_WORDS[own].text });
  });
  const names = decidedBy.map(nameOf).join(', ');
  const worst = { grade: ADVICE_VALUE_WORDS[treatAs].text, inputs: names };
  const sum =
    grade === null
      ? fill(words['irritable-open'], { count: missing.length, all: inputs.length, grade: worst.grade })
      : fill(words['irritable-decided'], worst);
  return [...lines, sum, MARK_WORDS['common-practice'].text];
}
