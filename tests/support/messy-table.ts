import { type Dice, diceOf, drawnChannels } from './messy-channels.ts';

/** A table as some program may export it, with what is true of it. The same seed makes the same table. */
export interface MessyTable {
  readonly bytes: Uint8Array;
  readonly text: string;
  readonly truth: MessyTruth;
}

export interface MessyColumn {
  readonly index: number;
  readonly label: string;
  /** `unused` for what stands beside */
  readonly quantity: string;
  readonly unit: string | null;
  readonly axis: string | null;
  readonly side: 'left' | 'right' | null;
  readonly placement: string | null;
  /** as they were written, NaN where a value is missing [unit] */
  readonly values: readonly number[];
}

export interface MessyTruth {
  readonly encoding: 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';
  readonly delimiter: ',' | ';' | '\t' | '|' | ' ';
  readonly decimal: '.' | ',';
  /** order of the dates; `none` where no time hangs on one */
  readonly dates: 'day-month' | 'month-day' | 'year-month' | 'none';
  readonly headerLine: number | null;
  readonly timeColumn: number;
  readonly timeUnit: 's' | 'ms' | 'us' | 'min' | 'clock' | 'sample';
  readonly rateHz: number;
  /** whether the file itself tells the rate */
  readonly rateTold: boolean;
  readonly timesS: readonly number[];
  readonly columns: readonly MessyColumn[];
}

const timeNames = [
  'time',
  'Time',
  'Zeit',
  'tiempo',
  'Temps',
  't',
  'timestamp',
  'Elapsed Time',
  'tid',
  'Uhrzeit',
  'TIME',
  'Tijd',
  'Laufzeit',
  'rec_time',
  'x-axis',
];
const sampleNames = ['sample', 'Sample', 'index', 'frame', 'n', 'Messpunkt', 'muestra', 'Packet Counter', 'Zeile'];
const timeUnits = {
  s: ['s', 'sec', 'seconds'],
  ms: ['ms', 'msec'],
  us: ['us', 'µs'],
  min: ['min'],
  clock: [],
  sample: [],
} as const;
interface DrawnDates {
  readonly dates: MessyTruth['dates'];
  /** the text before the time on a day counted from 0, with the blank between them */
  readonly dayText: (day: number) => string;
  /** the clock shows twelve hours with AM and PM */
  readonly isHalfDay: boolean;
}

/** How a table writes the day of its times. */
function drawnDates({ draw, pick, chance }: Dice, isDated: boolean, isBlankDivided: boolean): DrawnDates {
  const style = pick(['iso', 'points', 'short-points', 'day-month', 'month-day', 'year-month'] as const);
  const mark = pick(['/', '-'] as const);
  const [month, day] = [1 + Math.floor(12 * draw()), 1 + Math.floor(26 * draw())];
  const isShort = chance(0.3) || style === 'year-month';
  const isPadded = chance(0.5) || style === 'year-month';
  const isHalfDay = !isBlankDivided && chance(style === 'month-day' ? 0.6 : 0.1);
  const number = (value: number): string => String(value).padStart(isPadded ? 2 : 1, '0');
  const year = isShort ? '26' : '2026';
  const dayText = (later: number): string => {
    const [d, m] = [number(day + later), number(month)];
    return {
      iso: `2026-${m.padStart(2, '0')}-${d.padStart(2, '0')} `,
      points: `${d}.${m}.2026 `,
      'short-points': `${d}.${m}.26 `,
      'day-month': `${d}${mark}${m}${mark}${year} `,
      'month-day': `${m}${mark}${d}${mark}${year} `,
      'year-month': `${year}${mark}${m}${mark}${d} `,
    }[style];
  };
  if (!isDated) return { dates: 'none', dayText: () => '', isHalfDay };
  const hangs = style === 'day-month' || style === 'month-day' || style === 'year-month';
  return { dates: hangs ? style : 'none', dayText, isHalfDay };
}

/** The table of a seed. */
export function messyTable(seed: number): MessyTable {
  const dice = diceOf(seed * 7919 + 13);
  const { draw, pick, chance, normal } = dice;
  const { kind, channels } = drawnChannels(dice);
  const rateHz = pick([50, 100, 100, 128, 200, 250, 500, 1000]);
  const rows = Math.round(rateHz * (rateHz > 400 ? 6 : 14) * (0.8 + 0.4 * draw()));

  const decimal = pick(['.', '.', ','] as const);
  const delimiter =
    decimal === ',' ? pick([';', ';', '\t', '|'] as const) : pick([',', ',', ';', '\t', '|', ' '] as const);
  const encoding = pick(['utf-8', 'utf-8', 'utf-8', 'utf-16le', 'utf-16be', 'windows-1252'] as const);
  const eol = pick(['\n', '\n', '\r\n', '\r']);
  const timeUnit = pick(['s', 's', 's', 'ms', 'ms', 'us', 'clock', 'sample', 'min'] as const);
  const hasTimeColumn = timeUnit !== 'sample' || chance(0.6);
  const isDated = timeUnit === 'clock' && chance(0.5) && delimiter !== ' ';
  const unitStyle = pick(['bracket', 'bracket', 'round', 'row', 'comma', 'none', 'none'] as const);
  const chosen =
    unitStyle === 'comma' && delimiter === ','
      ? 'bracket'
      : unitStyle === 'row' && delimiter === ' '
        ? 'none'
        : unitStyle;
  const startS = timeUnit === 'clock' ? 86_400 * draw() : chance(0.7) ? 0 : Math.round(100 * draw());
  const written = (value: number, decimals: number): string => value.toFixed(decimals).replace('.', decimal);
  const two = (n: number): string => String(n).padStart(2, '0');
  const { dates, dayText, isHalfDay } = drawnDates(diceOf(seed * 104_729 + 5), isDated, delimiter === ' ');
  const clock = (seconds: number): string => {
    const ms = Math.round(seconds * 1000);
    const day = Math.floor(ms / 86_400_000);
    const inDay = ms - day * 86_400_000;
    const hour = Math.floor(inDay / 3_600_000);
    const shown = isHalfDay ? String(((hour + 11) % 12) + 1) : two(hour);
    const text = `${shown}:${two(Math.floor(inDay / 60_000) % 60)}:${two(Math.floor(inDay / 1000) % 60)}${decimal}${String(inDay % 1000).padStart(3, '0')}${isHalfDay ? (hour < 12 ? ' AM' : ' PM') : ''}`;
    return `${dayText(day)}${text}`;
  };
  const safe = delimiter === ' ' ? (name: string): string => name.replace(/ /g, '_') : (name: string): string => name;

  const head: string[] = [];
  let preambleRate = false;
  let preambleSide: 'left' | 'right' | null = null;
  if (chance(0.4)) {
    head.push(pick(['Export', 'Recording 12', 'Messung vom 3.4.', 'Session: heel raises']));
    if (chance(0.5)) {
      head.push(
        pick([
          `Sampling rate: ${rateHz} Hz`,
          `Abtastrate${delimiter === ' ' ? ': ' : delimiter}${rateHz} Hz`,
          `Frequency (Hz): ${rateHz}`,
          `fs = ${rateHz} Hz`,
        ]),
      );
      preambleRate = true;
    }
    if (chance(0.3) && kind !== 'plates') {
      preambleSide = pick(['left', 'right'] as const);
      head.push(preambleSide === 'left' ? pick(['Side: left', 'Seite: links']) : pick(['Side: right', 'Bein: rechts']));
    }
    if (chance(0.4)) head.push('');
  }
  const extras = chance(0.25)
    ? [pick(['Temperature', 'Battery', 'Temp_C', 'EMG', 'Trigger', 'Feuchte', 'mag_x', 'Marker'])]
    : [];
  const names: string[] = [];
  const unitRow: string[] = [];
  const withUnit = (name: string, unit: string): string => {
    const bare = safe(name);
    if (unit === '') return bare;
    const space = delimiter === ' ' ? '_' : ' ';
    if (chosen === 'bracket') return `${bare}${space}[${unit}]`;
    if (chosen === 'round') return `${bare}${space}(${unit})`;
    return chosen === 'comma' && delimiter !== ' ' ? `${bare}, ${unit}` : bare;
  };
  const columns: MessyColumn[] = [];
  let timeColumn = -1;
  if (hasTimeColumn) {
    timeColumn = 0;
    const unit = timeUnits[timeUnit].length === 0 ? '' : pick(timeUnits[timeUnit] as readonly string[]);
    names.push(withUnit(pick(timeUnit === 'sample' ? sampleNames : timeNames), unit));
    unitRow.push(unit);
  }
  const groupUnit = new Map<string, readonly [string, string, number]>();
  const cells: string[][] = [];
  const missingShare = chance(0.2) ? 0.004 : 0;
  const missingText = pick(['NaN', 'nan', '', 'NA']);
  for (const channel of channels) {
    const unit = groupUnit.get(channel.quantity) ?? pick(channel.units);
    groupUnit.set(channel.quantity, unit);
    const index = names.length;
    names.push(withUnit(channel.names[0], unit[1]));
    unitRow.push(unit[1]);
    const decimals = unit[2] >= 50 ? 2 : unit[2] >= 0.5 ? 4 : 5;
    const texts: string[] = [];
    const values: number[] = [];
    for (let i = 0; i < rows; i += 1) {
      const text = written(channel.si(i / rateHz) * unit[2], decimals);
      const isMissing = draw() < missingShare;
      texts.push(isMissing ? missingText : text);
      values.push(isMissing ? Number.NaN : Number(text.replace(',', '.')));
    }
    cells.push(texts);
    const { quantity, axis, placement } = channel;
    columns.push({
      index,
      label: names[index],
      quantity,
      unit: unit[0],
      axis,
      side: channel.side ?? preambleSide,
      placement,
      values,
    });
  }
  for (const extra of extras) {
    const index = names.length;
    names.push(safe(extra));
    unitRow.push('');
    let level = 20 + 5 * draw();
    const texts = Array.from({ length: rows }, () => written((level += 0.01 * normal()), 2));
    cells.push(texts);
    columns.push({
      index,
      label: names[index],
      quantity: 'unused',
      unit: null,
      axis: null,
      side: null,
      placement: null,
      values: [],
    });
  }
  const hasHeader = chance(0.95);
  const lines = [...head];
  let headerLine: number | null = null;
  if (hasHeader) {
    lines.push(names.join(delimiter));
    headerLine = lines.length;
    if (chosen === 'row') lines.push(unitRow.join(delimiter));
  }
  const timesS: number[] = [];
  const perUnit = { s: 1, ms: 1e3, us: 1e6, min: 1 / 60, clock: 1, sample: 1 }[timeUnit];
  const repeatAt = hasHeader && chance(0.1) ? Math.floor(rows / 2) : -1;
  for (let i = 0; i < rows; i += 1) {
    const t = startS + i / rateHz;
    const row = cells.map((texts) => texts[i]);
    if (hasTimeColumn) {
      const text =
        timeUnit === 'clock'
          ? clock(t)
          : timeUnit === 'sample'
            ? String(i)
            : written(t * perUnit, { s: 4, ms: 1, us: 0, min: 7 }[timeUnit]);
      row.unshift(text);
    }
    timesS.push(t);
    if (i === repeatAt) lines.push(names.join(delimiter));
    lines.push(row.join(delimiter));
  }
  if (chance(0.1)) lines.push('End of file');
  const text = `${lines.join(eol)}${eol}`;
  // what a truth cannot be told by: without a header nobody can know sides
  const known = hasHeader ? columns : columns.map((column) => ({ ...column, side: preambleSide }));
  return {
    text,
    bytes: encoded(text, encoding, chance(0.7)),
    truth: {
      encoding: isAscii(text) && encoding === 'windows-1252' ? 'utf-8' : encoding,
      delimiter,
      decimal,
      dates,
      headerLine,
      timeColumn,
      timeUnit,
      rateHz,
      rateTold: preambleRate || timeUnit !== 'sample',
      timesS,
      columns: known,
    },
  };
}

function isAscii(text: string): boolean {
  return [...text].every((sign) => sign.charCodeAt(0) < 128);
}

/** A text in bytes. Signs that Latin-1 does not have become question marks. */
export function encoded(text: string, encoding: MessyTruth['encoding'], mark: boolean): Uint8Array {
  if (encoding === 'utf-8') return new TextEncoder().encode(`${mark ? '\ufeff' : ''}${text}`);
  if (encoding === 'windows-1252')
    return Uint8Array.from(text, (sign) => (sign.charCodeAt(0) < 256 ? sign.charCodeAt(0) : 63));
  const all = `${mark ? '\ufeff' : ''}${text}`;
  const bytes = new Uint8Array(2 * all.length);
  for (let i = 0; i < all.length; i += 1) {
    const code = all.charCodeAt(i);
    bytes[2 * i] = encoding === 'utf-16le' ? code & 255 : code >> 8;
    bytes[2 * i + 1] = encoding === 'utf-16le' ? code >> 8 : code & 255;
  }
  return bytes;
}
