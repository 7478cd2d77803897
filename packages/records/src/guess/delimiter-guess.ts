import { type FieldDelimiter, fieldDelimiters, splitFields } from '../form/split-fields.ts';
import { type CellKind, cellKind } from './cell-kind.ts';
import { evidence, type Guessed, guessed, unknown } from './guessed.ts';

/** A line of the head, divided. */
export interface DividedLine {
  /** counted from 1 */
  readonly line: number;
  readonly fields: readonly string[];
  readonly kinds: readonly CellKind[];
}

/** How the lines of a head are divided. */
export interface Division {
  readonly delimiter: Guessed<FieldDelimiter>;
  readonly columnCount: number;
  /** lines that look like rows of numbers */
  readonly rows: readonly DividedLine[];
}

/** The fields of a line without the empty one after a last delimiter. */
export function fieldsOf(text: string, delimiter: FieldDelimiter): readonly string[] | undefined {
  const fields = splitFields(text, delimiter);
  return fields !== undefined && fields.length > 1 && fields.at(-1)!.trim() === '' ? fields.slice(0, -1) : fields;
}

interface Candidate {
  readonly delimiter: FieldDelimiter;
  readonly columnCount: number;
  readonly rows: readonly DividedLine[];
  readonly score: number;
}

/** The rows with the last column that is empty in each of them, where another line says that there is one: a name, a remark. */
function withRemarks(best: Candidate, others: readonly DividedLine[], lines: readonly string[]): Candidate {
  const { delimiter, columnCount } = best;
  const last = (text: string): string | undefined => {
    const fields = splitFields(text.replace(/^#\s?/, ''), delimiter);
    return fields?.length === columnCount + 1 ? fields[columnCount]!.trim() : undefined;
  };
  if (columnCount < 2 || !best.rows.every(({ line }) => last(lines[line - 1]!) === '')) return best;
  if (!lines.some((text) => (last(text) ?? '') !== '')) return best;
  const whole = best.rows.map(
    ({ line, fields, kinds }): DividedLine => ({ line, fields: [...fields, ''], kinds: [...kinds, 'missing'] }),
  );
  const rows = [...whole, ...others].sort((a, b) => a.line - b.line);
  return { delimiter, columnCount: columnCount + 1, rows, score: rows.length };
}

function candidate(lines: readonly string[], delimiter: FieldDelimiter): Candidate {
  const byCount = new Map<number, DividedLine[]>();
  for (const [index, text] of lines.entries()) {
    if (text.trim() === '' || text.startsWith('#') || (delimiter === ' ' && text.includes('\t'))) continue;
    const fields = fieldsOf(text, delimiter);
    if (fields === undefined) continue;
    const kinds = fields.map(cellKind);
    const count = (kind: CellKind): number => kinds.filter((one) => one === kind).length;
    const clocks = count('time-of-day') + count('date-time') + count('instant');
    if (count('other') > 0 || count('numeric') === 0 || count('numeric') + clocks + count('missing') < kinds.length / 2)
      continue;
    const same = byCount.get(fields.length) ?? [];
    same.push({ line: index + 1, fields, kinds });
    byCount.set(fields.length, same);
  }
  let best: Candidate = { delimiter, columnCount: 0, rows: [], score: 0 };
  for (const [columnCount, rows] of byCount) {
    // one column is what every wrong delimiter gives too
    const score = rows.length * (columnCount === 1 ? 0.3 : 1);
    if (score > best.score) best = { delimiter, columnCount, rows, score };
  }
  return withRemarks(best, byCount.get(best.columnCount + 1) ?? [], lines);
}

/** What divides the fields of a table, from how many lines it makes rows of, all with as many fields. */
export function guessDelimiter(lines: readonly string[], told?: FieldDelimiter): Division {
  if (told !== undefined) {
    const only = candidate(lines, told);
    const because = [evidence('told')];
    return { ...only, delimiter: only.rows.length === 0 ? unknown(because) : guessed(told, 1, because) };
  }
  const candidates = fieldDelimiters.map((one) => candidate(lines, one)).sort((a, b) => b.score - a.score);
  const [best, second] = candidates as [Candidate, Candidate];
  const single = decimalCommasAlone(best, candidates, lines);
  if (single !== undefined) return single;
  if (best.rows.length === 0) {
    return {
      delimiter: unknown([evidence('no-rows', { lines: lines.length })], fieldDelimiters),
      columnCount: 0,
      rows: [],
    };
  }
  const because = [evidence('delimiter-rows', { rows: best.rows.length, fields: best.columnCount })];
  if (best.columnCount === 1) {
    return { ...best, delimiter: guessed(best.delimiter, 0.95, [evidence('one-column')]) };
  }
  const rival = second.columnCount > 1 ? second.score / best.score : 0;
  const confidence = best.rows.length < 3 ? 0.8 : 0.99 - 0.45 * rival ** 2;
  const others = rival > 0 ? [{ value: second.delimiter, probability: 0.99 - confidence }] : [];
  return { ...best, delimiter: guessed(best.delimiter, confidence, because, others) };
}

/**
 * Rows of whole numbers between commas may be numbers with decimal commas: where the header does not have as many names, one
 * cannot tell which of the two they are, unless there is one name for two fields.
 */
function decimalCommasAlone(
  best: Candidate,
  candidates: readonly Candidate[],
  lines: readonly string[],
): Division | undefined {
  const { delimiter, rows, columnCount } = best;
  if (delimiter !== ',' || columnCount % 2 === 1) return undefined;
  const isWhole = rows.every(({ fields }) => fields.every((field) => !field.includes('.')));
  const header = lines.slice(0, (rows[0]?.line ?? 1) - 1).findLast((line) => line.trim() !== '');
  const names = header === undefined ? 0 : (fieldsOf(header, ',')?.length ?? 0);
  if (!isWhole || names === columnCount) return undefined;
  const because = [evidence('comma-either', { fields: columnCount, names })];
  const alone = candidates.find((one) => one.delimiter === ';' && one.columnCount === 1);
  if (columnCount === 2 && alone !== undefined) {
    const others = [{ value: ',' as const, probability: names === 1 ? 0.08 : 0.5 }];
    return { ...alone, delimiter: guessed(';', names === 1 ? 0.92 : 0.5, because, others) };
  }
  return { ...best, delimiter: guessed(',', 0.4, because) };
}
