import { rounded } from '@surae/exchange';
import { type DesignAnswer, designCommand } from '@surae/study';

/** The answer as one line of JSON; null is more than a hundred thousand, or not given. */
export function designJson(answer: DesignAnswer, files: readonly string[]): string {
  const { request, cases, singles, byFormula } = answer;
  const { question, ranges } = request;
  return JSON.stringify(
    rounded({
      question: question.id,
      title: question.title,
      counts: question.counts,
      attains: question.attains,
      inputs: Object.fromEntries(ranges),
      ...cases,
      one_at_a_time: singles.map(({ input, end, value, need: { count } }) => ({ input, end, value, count })),
      by_formula: byFormula,
      notes: question.notes,
      source: question.source,
      command: designCommand(answer),
      files,
    }),
  );
}
