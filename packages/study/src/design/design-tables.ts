import { column, type StudyCell, type StudyColumn, type StudyTable } from '../study-table.ts';
import { DESIGN_CASES, type DesignAnswer, type DesignNeed } from './design-answer.ts';
import { ATTAINED_WORDS, CASE_WORDS, COUNT_WORDS } from './design-words.ts';

function inputColumns({ request: { question } }: DesignAnswer): StudyColumn[] {
  return question.inputs.map(({ key, description }) => column(key, 'number', description));
}

/** A row for each case and for each uncertain input at either end: the inputs, and how many are needed. */
export function designTable(answer: DesignAnswer): StudyTable {
  const { request, cases, singles, byFormula } = answer;
  const { question } = request;
  const cells = ({ values, count, recruited, attained }: DesignNeed): StudyCell[] => [
    ...question.inputs.map(({ key }) => values[key]!),
    count,
    recruited,
    attained,
  ];
  return {
    name: 'design',
    title: question.title,
    columns: [
      column(
        'case',
        'text',
        'expected; fewest and most: every uncertain input at that end; else the one that is not as expected',
      ),
      column('end', 'text', 'low or high, of the one input that is not as expected'),
      ...inputColumns(answer),
      column('count', 'number', `${COUNT_WORDS[question.counts]}; empty for more than 100000`, {
        source: question.source,
      }),
      column('recruited', 'number', 'people to begin with in all, those who drop out among them'),
      column('attained', 'number', ATTAINED_WORDS[question.attains], { source: question.source }),
      column('by_formula', 'number', 'people by a published formula, as expected', {
        source: question.formula?.name ?? 'definition',
      }),
    ],
    rows: [
      ...DESIGN_CASES.map((one) => [one, null, ...cells(cases[one]), one === 'expected' ? byFormula : null]),
      ...singles.map(({ input, end, need }) => [input, end, ...cells(need), null]),
    ],
  };
}

/** A row for each number of people: what it attains in each case. */
export function curveTable({ request: { question }, curve }: DesignAnswer): StudyTable {
  return {
    name: 'curve',
    title: `${question.title}: what each number attains`,
    columns: [
      column('count', 'number', COUNT_WORDS[question.counts]),
      ...DESIGN_CASES.map((one) =>
        column(one, 'number', `${ATTAINED_WORDS[question.attains]}, ${CASE_WORDS[one]}`, { source: question.source }),
      ),
    ],
    rows: curve.map(({ count, attained }) => [count, ...DESIGN_CASES.map((one) => attained[one])]),
  };
}
