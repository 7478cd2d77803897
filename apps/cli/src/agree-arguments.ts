import { parseArgs } from 'node:util';
import { positiveNumber } from '@surae/study/words';
import { parsed, unknownWord } from './parsed-options.ts';
import { UsageError } from './usage-error.ts';

/** How well a study should know its figures. */
export interface Wish {
  /** width of the interval of an intraclass correlation */
  readonly iccWidth: number | undefined;
  /** intraclass correlation expected; undefined: the one of the table */
  readonly iccExpected: number | undefined;
  /** how far the upper bound of the standard error may lie above it, as a share */
  readonly errorWithin: number | undefined;
  /** half width of the interval of a limit of agreement, in standard deviations of the differences */
  readonly limitWithin: number | undefined;
}

export interface AgreeArguments {
  readonly command: 'agree';
  /** undefined where only a study is planned */
  readonly table: string | undefined;
  readonly across: 'rater' | 'day' | undefined;
  readonly scale: 'difference' | 'ratio';
  /** standard deviations to a limit; undefined: the usual */
  readonly reach: number | undefined;
  readonly wholeOnly: boolean;
  /** words from the lowest to the highest, where they stand on a scale */
  readonly order: readonly string[] | undefined;
  readonly json: boolean;
  readonly picture: string | undefined;
  /** names of the two that the picture shows */
  readonly pair: readonly [string, string] | undefined;
  readonly replace: boolean;
  readonly wish: Wish;
}

const FACTORS = ['rater', 'day'] as const;

/** What `surae agree` is asked for, or that its help is wanted. */
export function readAgree(args: readonly string[]): AgreeArguments | { command: 'help'; about: 'agree' } {
  const { values, positionals } = parsed(() =>
    parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        across: { type: 'string' },
        ratio: { type: 'boolean' },
        reach: { type: 'string' },
        'whole-only': { type: 'boolean' },
        order: { type: 'string' },
        json: { type: 'boolean' },
        picture: { type: 'string' },
        pair: { type: 'string' },
        replace: { type: 'boolean' },
        'icc-width': { type: 'string' },
        'icc-expected': { type: 'string' },
        'error-within': { type: 'string' },
        'limit-within': { type: 'string' },
        help: { type: 'boolean', short: 'h' },
      },
    }),
  );
  if (values.help === true) return { command: 'help', about: 'agree' };
  if (positionals.length > 1)
    throw new UsageError(`name one TABLE: "${positionals[1]}" came after "${positionals[0]}"`);
  const across = FACTORS.find((known) => known === values.across);
  if (values.across !== undefined && across === undefined) throw unknownWord('--across', values.across, FACTORS);
  const number = (name: 'reach' | keyof typeof SHARES, most: number, expected: string): number | undefined => {
    const text = values[name];
    if (text === undefined) return undefined;
    const value = positiveNumber(text);
    if (value === undefined || value >= most) throw new UsageError(`--${name} ${text}: expected ${expected}`);
    return value;
  };
  const share = (name: keyof typeof SHARES): number | undefined => number(name, SHARES[name], SHARE_WORDS[name]);
  const percent = share('error-within');
  const wish: Wish = {
    iccWidth: share('icc-width'),
    iccExpected: share('icc-expected'),
    errorWithin: percent === undefined ? undefined : percent / 100,
    limitWithin: share('limit-within'),
  };
  const table = positionals[0];
  refuseHalfWishes(wish, table);
  if (values.order !== undefined && table === undefined) throw new UsageError('--order needs a TABLE');
  if (values.picture === '') throw new UsageError('--picture needs the name of a file');
  if (values.picture !== undefined && table === undefined) throw new UsageError('--picture needs a TABLE');
  if (values.picture === undefined && values.replace === true) {
    throw new UsageError('--replace says something only with --picture');
  }
  if (values.picture === undefined && values.pair !== undefined) {
    throw new UsageError('--pair says something only with --picture');
  }
  return {
    command: 'agree',
    table,
    across,
    scale: values.ratio === true ? 'ratio' : 'difference',
    reach: number('reach', 10, 'a number above 0 and below 10'),
    wholeOnly: values['whole-only'] === true,
    order: orderOf(values.order),
    json: values.json === true,
    picture: values.picture,
    pair: pairOf(values.pair),
    replace: values.replace === true,
    wish,
  };
}

const SHARES = { 'icc-width': 1, 'icc-expected': 1, 'error-within': 10_000, 'limit-within': 100 } as const;

const SHARE_WORDS = {
  'icc-width': 'a number above 0 and below 1',
  'icc-expected': 'a number above 0 and below 1',
  'error-within': 'percent above 0',
  'limit-within': 'standard deviations above 0',
} as const;

function refuseHalfWishes(wish: Wish, table: string | undefined): void {
  const { iccWidth, iccExpected, errorWithin, limitWithin } = wish;
  if (iccExpected !== undefined && iccWidth === undefined) {
    throw new UsageError('--icc-expected says something only with --icc-width');
  }
  if (table !== undefined) return;
  if (iccWidth === undefined && errorWithin === undefined && limitWithin === undefined) {
    throw new UsageError('name a TABLE, or what a study should reach: --icc-width, --error-within or --limit-within');
  }
  if (iccWidth !== undefined && iccExpected === undefined) {
    throw new UsageError('--icc-width needs --icc-expected where there is no TABLE to take it from');
  }
}

function pairOf(text: string | undefined): readonly [string, string] | undefined {
  if (text === undefined) return undefined;
  const names = text.split(',').map((name) => name.trim());
  if (names.length !== 2 || names.some((name) => name === '')) {
    throw new UsageError(`--pair ${text}: expected two names, such as --pair A,B`);
  }
  return [names[0]!, names[1]!];
}

function orderOf(text: string | undefined): readonly string[] | undefined {
  if (text === undefined) return undefined;
  const words = text.split(',').map((word) => word.trim());
  if (words.length < 2 || words.includes('') || new Set(words).size < words.length) {
    throw new UsageError(`--order ${text}: expected two words or more, each once, such as --order none,slight,clear`);
  }
  return words;
}
