import { RecordError } from '../errors.ts';
import type { PartsProposal } from '../guess/parts.ts';
import { LONG_S, type Window } from '../guess/windows.ts';

/** Rows of a file, half-open. */
export interface RowRange {
  readonly from: number;
  readonly to: number;
}

/** What was said about which rows are meant. */
export interface RowChoice {
  readonly file?: string;
  /** a number counts parts from 1; a text is a label, or such a number where no label is written so */
  readonly part?: string | number;
  readonly window?: Window | 'all';
}

const seconds = (value: number): string => String(Number(value.toFixed(1)));

/**
 * The rows that are meant: of a file with several parts one has to be named, of a long recording a stretch. Nothing is
 * chosen for anybody.
 *
 * @throws {@link RecordError} `several-parts`, `no-window`, with what there is to choose
 */
export function chosenRows(
  timesS: Float64Array,
  { parts, by }: PartsProposal,
  { file, part, window }: RowChoice,
  lineOf: (row: number) => number,
  windows: () => readonly Window[],
): RowRange {
  const at = file === undefined ? {} : { file };
  let range: RowRange = { from: 0, to: timesS.length };
  if (parts.length > 1 || (part !== undefined && part !== 'all')) {
    const chosen =
      typeof part === 'number'
        ? parts[part - 1]
        : (parts.find(({ label }) => label === part) ??
          (/^\d+$/.test(part ?? '') ? parts[Number(part) - 1] : undefined));
    if (chosen !== undefined) range = { from: chosen.fromRow, to: chosen.toRow };
    else if (part !== 'all') {
      const found = parts
        .slice(0, 8)
        .map((one, i) => `${i + 1} ("${one.label}", lines ${lineOf(one.fromRow)} to ${lineOf(one.toRow - 1)})`);
      const why = {
        column: 'by the column of people',
        pause: 'by pauses of more than a minute',
        restart: 'by times that begin anew',
        none: '',
      }[by];
      throw new RecordError('several-parts', {
        ...at,
        row: lineOf(parts[1]?.fromRow ?? 0),
        expected: 'one part, by its number',
        actual: `${part === undefined ? '' : `"${part}" of `}${parts.length} parts ${why}: ${found.join(', ')}`,
      });
    }
  }
  return window === 'all' ? range : windowed(timesS, range, window, at, windows);
}

function windowed(
  timesS: Float64Array,
  range: RowRange,
  window: Window | undefined,
  at: { readonly file?: string },
  windows: () => readonly Window[],
): RowRange {
  const [first, last] = [timesS[range.from]!, timesS[range.to - 1]!];
  if (window === undefined) {
    if (!(last - first >= LONG_S)) return range;
    const found = windows().map(({ fromS, toS }) => `${seconds(fromS)} to ${seconds(toS)} s`);
    throw new RecordError('no-window', {
      ...at,
      expected: 'the stretch in which the test is, from when to when',
      actual: `a recording of ${seconds((last - first) / 60)} minutes${found.length === 0 ? '' : `; something moves from ${found.slice(0, 6).join(', from ')}`}`,
    });
  }
  let { from, to } = range;
  while (from < to && timesS[from]! < window.fromS) from += 1;
  while (to > from && timesS[to - 1]! > window.toS) to -= 1;
  if (from === to) {
    const expected = `a stretch within ${seconds(first)} to ${seconds(last)} s`;
    throw new RecordError('no-window', {
      ...at,
      expected,
      actual: `${seconds(window.fromS)} to ${seconds(window.toS)} s`,
    });
  }
  return { from, to };
}
