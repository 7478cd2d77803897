import type {
  ChannelNature,
  CounterNature,
  Decoded,
  DecodedChannel,
  Decoder,
  MissingCause,
  RefusalCode,
  TimeNature,
} from './decoder.ts';
import { readLineHeader } from './line-header.ts';
import { checkColumns, checkLines, fieldsOf, type LineColumn, type LineLayout } from './line-layout.ts';
import { PacketError } from './packet-error.ts';
import { applyFactor, factorOf, factorToSi, siUnitOf } from './units.ts';

type ChannelColumn = Extract<LineColumn, { kind: 'channel' }>;
type TimeColumn = Extract<LineColumn, { kind: 'time' }>;

/**
 * The reader of lines of numbers: one sample a line. Empty lines, lines that begin with `#`, the greeting and a header are notes.
 *
 * @param columns - those that a header named, where the layout leaves them to it
 * @throws {@link PacketError} when the layout cannot be used
 */
export function lineDecoder(layout: LineLayout, columns?: readonly LineColumn[]): Decoder {
  const known = columns ?? (layout.columns === 'header' ? [] : layout.columns);
  const problems = [...checkLines({ ...layout, columns: 'header' }), ...checkColumns(known)];
  if (problems.length > 0) throw new PacketError(problems);
  return new LineDecoder(layout, known);
}

class LineDecoder implements Decoder {
  readonly channels: readonly ChannelNature[];
  readonly sentUnits: readonly string[];
  readonly counter: CounterNature | null;
  readonly time: TimeNature | null;
  private readonly layout: LineLayout;
  private readonly columns: readonly LineColumn[];

  constructor(layout: LineLayout, columns: readonly LineColumn[]) {
    this.layout = layout;
    this.columns = columns;
    this.channels = columns.flatMap((column) =>
      column.kind === 'channel'
        ? [{ quantity: column.quantity, axis: column.axis, unit: siUnitOf(column.quantity) }]
        : [],
    );
    this.sentUnits = columns.flatMap((column) => (column.kind === 'channel' ? [column.unit] : []));
    const counter = columns.find(({ kind }) => kind === 'counter') as
      | Extract<LineColumn, { kind: 'counter' }>
      | undefined;
    const time = columns.find(({ kind }) => kind === 'time') as TimeColumn | undefined;
    this.counter = counter === undefined ? null : { counts: 'samples', modulus: counter.modulus ?? null };
    const periodS = time?.modulus === undefined ? null : timeInSeconds(time, time.modulus);
    this.time = time === undefined ? null : { marks: 'first', stepS: null, periodS };
  }

  decode(bytes: Uint8Array): Decoded {
    const { layout, columns } = this;
    const text = new TextDecoder().decode(bytes).replace(/[\r\n]+$/, '');
    if (text.trim() === '' || text.startsWith('#') || text === layout.greeting) return { kind: 'note', text };
    const header = readLineHeader(text, layout.delimiter);
    const refuse = (code: RefusalCode, atByte: number, expected: string, actual: string): Decoded => {
      return { kind: 'refused', code, atByte, expected, actual, counter: null, timeS: null };
    };
    if (header.kind !== 'none') {
      const isOwn = header.kind === 'columns' && JSON.stringify(header.columns) === JSON.stringify(columns);
      if (isOwn || layout.columns !== 'header') return { kind: 'note', text };
      return refuse('other-kind', 0, 'the header that came first', JSON.stringify(text.slice(0, 40)));
    }
    const fields = fieldsOf(text, layout.delimiter);
    if (fields.length !== columns.length) {
      const code = 'wrong-fields';
      return refuse(
        code,
        fields[columns.length]?.at ?? bytes.length,
        `${columns.length} fields`,
        `${fields.length} fields`,
      );
    }
    let counter: number | null = null;
    let timeS: number | null = null;
    const channels: DecodedChannel[] = [];
    for (const [index, column] of columns.entries()) {
      const number = numberOf(fields[index]!.text, layout.decimal);
      if (column.kind === 'counter') counter = Number.isInteger(number) && Number(number) >= 0 ? Number(number) : null;
      if (column.kind === 'time') timeS = typeof number === 'number' ? timeInSeconds(column, number) : null;
      if (column.kind !== 'channel') continue;
      const value = typeof number === 'number' ? valueInSi(column, number) : number;
      const atByte = fields[index]!.at;
      const isMissing = typeof value === 'string';
      channels.push({
        values: [isMissing ? null : value],
        missing: isMissing ? [{ index: 0, cause: value, atByte }] : [],
      });
    }
    return { kind: 'packet', counter, timeS, sampleCount: 1, channels };
  }
}

/** A number as sensors write it; hexadecimal, blanks inside and thousands are none. */
function numberOf(field: string, decimal: LineLayout['decimal']): number | MissingCause {
  if (field === '') return 'empty';
  const plain = decimal === ',' ? (field.includes('.') ? '' : field.replace(',', '.')) : field;
  if (/^[+-]?(?:nan|inf(?:inity)?)$/i.test(field)) return 'not-finite';
  if (!/^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/.test(plain)) return 'not-a-number';
  const number = Number(plain);
  return Number.isFinite(number) ? number : 'not-finite';
}

function valueInSi({ quantity, unit, scale = 1, offset = 0 }: ChannelColumn, number: number): number | MissingCause {
  const value = applyFactor(applyFactor(number, factorOf(scale)) + offset, factorToSi(quantity, unit)!);
  return Number.isFinite(value) ? value : 'not-finite';
}

function timeInSeconds({ unit, scale = 1 }: TimeColumn, number: number): number {
  return applyFactor(applyFactor(number, factorOf(scale)), factorToSi('time', unit)!);
}
