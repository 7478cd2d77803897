import type { DecimalMark, NumberForm, ThousandsMark } from '../form/number-form.ts';
import type { FieldDelimiter } from '../form/split-fields.ts';
import type { DividedLine } from './delimiter-guess.ts';
import { type Evidence, evidence, type Guessed, guessed } from './guessed.ts';

/** How numbers are written, in words that can be offered and stored. */
export interface MarkGuess {
  readonly decimal: Guessed<DecimalMark>;
  readonly thousands: Guessed<ThousandsMark | 'none'>;
}

interface Seen {
  /** numbers that can only have a decimal mark, by mark, with an example */
  readonly decimal: Record<DecimalMark, string[]>;
  /** numbers that can only have marks of thousands */
  readonly thousands: Record<ThousandsMark, string[]>;
  /** numbers such as 1,234 that can have either */
  readonly either: Record<DecimalMark, string[]>;
  /** whole numbers without a mark in columns that hold such numbers */
  readonly bareBelow: Record<DecimalMark, number>;
  readonly bareAbove: Record<DecimalMark, number>;
}

const other: Readonly<Record<DecimalMark, DecimalMark>> = { '.': ',', ',': '.' };

function sort(text: string, seen: Seen): void {
  const digits = text.replace(/^[+\-\u2212]/, '').replace(/[eE][+-]?\d+$/, '');
  const blank = /\d([ \u00a0\u2009\u202f'\u2019])\d{3}(?!\d)/.exec(digits);
  if (blank !== null) seen.thousands[/['\u2019]/.test(blank[1]!) ? "'" : ' '].push(text);
  const points = digits.split('.').length - 1;
  const commas = digits.split(',').length - 1;
  if (points > 0 && commas > 0) {
    const decimal: DecimalMark = digits.lastIndexOf('.') > digits.lastIndexOf(',') ? '.' : ',';
    seen.decimal[decimal].push(text);
    seen.thousands[other[decimal]].push(text);
    return;
  }
  for (const mark of ['.', ','] as const) {
    const count = mark === '.' ? points : commas;
    if (count > 1) seen.thousands[mark].push(text);
    if (count !== 1) continue;
    const [whole, part] = digits.split(mark) as [string, string];
    const isGroup = /^[1-9]\d{0,2}$/.test(whole) && /^\d{3}$/.test(part) && !/[eE]/.test(text);
    (isGroup ? seen.either : seen.decimal)[mark].push(text);
  }
}

/** Whole numbers without marks beside numbers like 1,234: below a thousand they need none, above they would have one. */
function countBare(rows: readonly DividedLine[], seen: Seen): void {
  const columns = rows[0]?.fields.length ?? 0;
  for (let column = 0; column < columns; column += 1) {
    const cells = rows.filter(({ kinds }) => kinds[column] === 'numeric').map(({ fields }) => fields[column]!.trim());
    for (const mark of ['.', ','] as const) {
      if (!cells.some((text) => text.includes(mark))) continue;
      for (const text of cells) {
        if (!/^[+-]?\d+$/.test(text)) continue;
        if (Math.abs(Number(text)) < 1000) seen.bareBelow[mark] += 1;
        else seen.bareAbove[mark] += 1;
      }
    }
  }
}

/** The marks in numbers, from all numbers of the head together: one that can be read in one way only decides for the others. */
export function guessMarks(rows: readonly DividedLine[], delimiter: FieldDelimiter, told?: DecimalMark): MarkGuess {
  const seen: Seen = {
    decimal: { '.': [], ',': [] },
    thousands: { '.': [], ',': [], ' ': [], "'": [] },
    either: { '.': [], ',': [] },
    bareBelow: { '.': 0, ',': 0 },
    bareAbove: { '.': 0, ',': 0 },
  };
  for (const { fields, kinds } of rows) {
    for (const [i, field] of fields.entries()) if (kinds[i] === 'numeric') sort(field.trim(), seen);
  }
  countBare(rows, seen);
  const decimal = decimalOf(seen, delimiter);
  return { decimal, thousands: thousandsOf(seen, told ?? decimal.value!) };
}

function decimalOf(seen: Seen, delimiter: FieldDelimiter): Guessed<DecimalMark> {
  const sure = { '.': seen.decimal['.'].length, ',': seen.decimal[','].length };
  const say = (mark: DecimalMark, confidence: number, because: Evidence): Guessed<DecimalMark> =>
    guessed(mark, confidence, [because], [{ value: other[mark], probability: 1 - confidence }]);
  if (sure['.'] > 0 || sure[','] > 0) {
    const mark: DecimalMark = sure[','] > sure['.'] ? ',' : '.';
    const against = sure[other[mark]];
    const example = seen.decimal[mark][0]!;
    if (against === 0) return say(mark, 0.99, evidence('decimal-seen', { mark, example, count: sure[mark] }));
    const share = sure[mark] / (sure[mark] + against);
    return say(
      mark,
      Math.min(0.85, share),
      evidence('decimal-both', { example, other: seen.decimal[other[mark]][0]! }),
    );
  }
  for (const mark of ['.', ','] as const) {
    if (seen.thousands[mark].length > 0) {
      return say(other[mark], 0.95, evidence('thousands-seen', { example: seen.thousands[mark][0]! }));
    }
  }
  for (const mark of [',', '.'] as const) {
    const examples = seen.either[mark];
    if (examples.length === 0) continue;
    // numbers below a thousand without a mark, and none above: the marks part thousands
    const looksGrouped = seen.bareBelow[mark] > 0 && seen.bareAbove[mark] === 0;
    const because = evidence('decimal-either', { example: examples[0]! });
    if (looksGrouped) return say(other[mark], 0.7, because);
    return say(mark, mark === '.' ? 0.94 : 0.75, because);
  }
  return say('.', delimiter === ',' ? 0.99 : 0.95, evidence('decimal-none'));
}

function thousandsOf(seen: Seen, decimal: DecimalMark): Guessed<ThousandsMark | 'none'> {
  const found = ([other[decimal], ' ', "'"] as const).find(
    (mark) => seen.thousands[mark].length > 0 || ((mark === '.' || mark === ',') && seen.either[mark].length > 0),
  );
  if (found === undefined) return guessed('none', 0.98, [evidence('thousands-none')]);
  const example = seen.thousands[found][0] ?? (found === ' ' || found === "'" ? '' : seen.either[found][0]!);
  return guessed(found, 0.95, [evidence('thousands-seen', { example })]);
}

/** The form that two answers make; null where one of them is open. */
export function numberFormOf({ decimal, thousands }: MarkGuess): NumberForm {
  const mark = thousands.value;
  const point = decimal.value ?? '.';
  return { decimal: point, thousands: mark === null || mark === 'none' || mark === point ? null : mark };
}
