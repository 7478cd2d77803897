import type { AssessedRepetition, Report } from '@surae/analysis';
import type { PictureBar } from './height-picture.ts';
import { plain, withUncertainty } from './readable-number.ts';
import { verdictWords } from './report-words.ts';
import { wrapped } from './text-lines.ts';

interface Column {
  readonly title: string;
  readonly cell: (repetition: AssessedRepetition) => string;
}

const millimetres = (valueM: number, uM: number): string => withUncertainty(valueM * 1000, uM * 1000);

/** Height of the heel or rise of the body, whichever the placement gives, in millimetres. */
export function sizeMm(repetition: AssessedRepetition): number | undefined {
  const sizeM = repetition.heightM ?? repetition.riseM;
  return sizeM === null ? undefined : sizeM * 1000;
}

export function pictureBars(report: Report): PictureBar[] {
  return report.repetitions.map((repetition) => ({ heightMm: sizeMm(repetition), valid: repetition.valid }));
}

function columnsOf(report: Report): Column[] {
  const size = (repetition: AssessedRepetition): string => {
    const valueM = repetition.heightM ?? repetition.riseM;
    const uM = repetition.heightUM ?? repetition.riseUM;
    return valueM === null || uM === null ? 'not measured' : millimetres(valueM, uM);
  };
  const columns: Column[] = [
    { title: 'rep', cell: (repetition) => `${repetition.index}` },
    { title: 'top s', cell: (repetition) => plain(repetition.topS, 2) },
    { title: report.kind === 'heel-height' ? 'height mm' : 'rise mm', cell: size },
    { title: 'of ref', cell: ({ percentOfReference: share }) => (share === null ? '' : `${plain(share, 0)} %`) },
    { title: 'period s', cell: ({ periodS }) => (periodS === null ? '' : plain(periodS, 2)) },
  ];
  return columns.filter(({ title, cell }) => {
    if (title === 'rep' || title === 'top s') return true;
    const cells = report.repetitions.map(cell);
    return cells.some((text) => text !== '' && text !== 'not measured');
  });
}

/** One line per repetition, numbers to the right, the verdict in words broken into its own column. */
export function repetitionTable(report: Report, width: number): string[] {
  const columns = columnsOf(report);
  const cells = report.repetitions.map((repetition) => columns.map((column) => column.cell(repetition)));
  const widths = columns.map((column, at) => Math.max(column.title.length, ...cells.map((row) => row[at]!.length)));
  const left = (row: readonly string[]): string => row.map((text, at) => text.padStart(widths[at]!)).join('  ');
  const used = 2 + widths.reduce((sum, one) => sum + one + 2, 0);
  const lines = [`  ${left(columns.map((column) => column.title))}  valid`];
  report.repetitions.forEach((repetition, index) => {
    const words = wrapped(verdictWords(repetition), Math.max(width - used, 16));
    lines.push(`  ${left(cells[index]!)}  ${words[0] ?? ''}`);
    for (const more of words.slice(1)) lines.push(' '.repeat(used) + more);
  });
  return lines;
}
