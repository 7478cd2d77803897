import { DESIGN_WORDS } from '@surae/shared';
import {
  answerWords,
  attainedWords,
  CASE_WORDS,
  DESIGN_CASES,
  type DesignAnswer,
  designCommand,
  needWords,
} from '@surae/study';
import type { Io } from './io.ts';
import { labelled } from './text-lines.ts';

const LABEL_WIDTH = 16;

/** The answer in a few lines, with how far it hangs on what is not known. */
export function designText(answer: DesignAnswer, { width }: Pick<Io, 'width'>): string[] {
  const { request, cases, singles, byFormula } = answer;
  const { question } = request;
  const line = (label: string, text: string): string[] => labelled(label, text, LABEL_WIDTH, width);
  const { attained } = cases.expected;
  const wished = attainedWords(cases.expected.values[question.goal]!, question);
  const shown = singles.length === 0 ? [] : DESIGN_CASES;
  return [
    question.title,
    '',
    ...line('answer', answerWords(answer)),
    ...(attained === null ? [] : line('', `wished ${wished}, attained ${attainedWords(attained, question)}`)),
    ...shown.flatMap((one) => line(CASE_WORDS[one], needWords(cases[one], question))),
    ...singles.flatMap(({ input, value, need }, at) =>
      line(at === 0 ? 'one at a time' : '', `${input} ${Number(value.toPrecision(4))}: ${needWords(need, question)}`),
    ),
    ...(byFormula === null ? [] : line('by formula', `${byFormula}: ${question.formula!.name}`)),
    ...line('worked out by', question.source),
    ...question.notes.flatMap((note) => line('', DESIGN_WORDS[`note-${note}`].text)),
    ...line('', DESIGN_WORDS['note-caution'].text),
    '',
    // whole, so that it can be copied
    designCommand(answer),
  ];
}
