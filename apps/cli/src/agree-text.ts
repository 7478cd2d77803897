import {
  type Agreement,
  intraclassWords,
  type Limits,
  type PairAgreement,
  type Trend,
  type WeightedKappa,
} from '@surae/analysis';
import { decimalsFor, interval, probability } from './agree-numbers.ts';
import type { AgreeResult, GroupResult, PairedWords } from './agree-result.ts';
import type { Io } from './io.ts';
import { plain } from './readable-number.ts';
import { labelled, wrapped } from './text-lines.ts';

type Screen = Pick<Io, 'width' | 'drawsBlocks'>;

const LABEL = 22;

/** What stands under every table: what the figures do not say. */
const CAUTION = [
  'These figures hold for people, testers and a protocol like these. A change that can be detected need not matter to anybody. ' +
    'This supports a clinician’s judgement. It is not a diagnosis.',
] as const;

/** The result of one table as lines of text. */
export function agreeText(result: AgreeResult, screen: Screen): string[] {
  const rule = (screen.drawsBlocks ? '─' : '-').repeat(Math.max(screen.width - result.file.length - 1, 3));
  const groups = result.groups.flatMap((group) => [...groupText(group, result, screen.width), '']);
  const caution = CAUTION.flatMap((sentence) => wrapped(sentence, screen.width));
  return [`${result.file} ${rule}`, ...groups, ...caution];
}

function line(label: string, text: string, width: number): string[] {
  return labelled(`  ${label}`, text, LABEL, width);
}

function groupText(group: GroupResult, result: AgreeResult, width: number): string[] {
  const of = group.of === undefined ? [] : [`  ${group.of}`];
  if (group.kind === 'words') return [...of, ...group.pairs.flatMap((pair) => wordsText(pair, width))];
  const { agreement } = group;
  const { subjects, raters, leftOut, squares } = agreement;
  const missing = leftOut.map(({ subject, missing: by }) => `${subject} (none by ${by.join(', ')})`);
  return [
    ...of,
    ...line('subjects', `${subjects.length}, unit ${result.unit}`, width),
    ...line('compared', raters.join(', '), width),
    ...(leftOut.length === 0
      ? []
      : line('left out', `${leftOut.length}, a value is missing: ${missing.join('; ')}`, width)),
    ...line(
      'means',
      raters.map((name, i) => `${name} ${plain(squares.raterMeans[i]!, decimalsFor(spreadOf(agreement)))}`).join(', '),
      width,
    ),
    '',
    ...errorText(agreement, result, width),
    '',
    ...intraclassText(agreement, width),
    '',
    ...agreement.pairs.flatMap((pair, i) => [...(i === 0 ? [] : ['']), ...pairText(pair, result, width)]),
  ];
}

function spreadOf({ squares }: Agreement): number {
  return Math.sqrt(squares.means.residual) || Math.sqrt(squares.means.subjects);
}

function errorText(agreement: Agreement, { unit, settings }: AgreeResult, width: number): string[] {
  const { error, usable, changes, variation, components } = agreement;
  const head = ['  One test of one subject'];
  if (error === undefined || usable === undefined) {
    const why = 'cannot tell: apart from a constant shift no two values differ, which is no proof that they never do';
    return [...head, ...line('standard error', why, width)];
  }
  const decimals = decimalsFor(error.sem.value);
  const percent = (share: Agreement['variation']['rawPercent'], why: string): string =>
    share === undefined ? why : `${interval(share.value, share, 1)} %`;
  const { leastPairs, cautiousLevel } = settings.usable;
  const use = {
    estimate: () => 'changes may be judged by it',
    'upper-bound': () =>
      `few pairs: judge changes by its upper ${plain(100 * cautiousLevel, 0)} % bound, ${plain(usable.use === 'no' ? 0 : usable.sem, decimals)} ${unit}`,
    no: () => `shown and not to be used: worth ${usable.pairCount} pairs of tests, ${leastPairs} are needed`,
  };
  return [
    ...head,
    ...line(
      'standard error',
      `${interval(error.sem.value, error.sem, decimals)} ${unit}, the typical error as well`,
      width,
    ),
    ...line('', use[usable.use](), width),
    ...line('variation, raw', percent(variation.rawPercent, 'no share of a mean that is not above 0'), width),
    ...line('variation, by logs', percent(variation.logPercent, 'no logarithm of a value that is not above 0'), width),
    ...changes.flatMap(({ level, change }) =>
      line(
        `change at ${plain(100 * level, 0)} %`,
        `${interval(change.value, change, decimals)} ${unit} between two tests`,
        width,
      ),
    ),
    ...line(
      'variance of',
      `subjects ${figure(components.subjects)}, those compared ${figure(components.raters)}, the rest ${figure(components.residual)}`,
      width,
    ),
    ...components.belowZero.flatMap((name) =>
      line(
        '',
        `that of ${name === 'raters' ? 'those compared' : name} came out below zero and is shown as it is: none can be seen here`,
        width,
      ),
    ),
  ];
}

/** A number with four digits. */
function figure(value: number): string {
  return String(Number(value.toPrecision(4))).replace('-', '−');
}

function intraclassText({ intraclass, raters, absoluteIntervalNarrow }: Agreement, width: number): string[] {
  const rows = intraclass.flatMap(({ form, otherName, estimate, test }) => {
    const value =
      estimate === undefined ? 'cannot tell: nothing to be a share of' : interval(estimate.value, estimate.interval, 3);
    const words = estimate?.interval === undefined ? '' : `: ${rangeWords(estimate.interval)}`;
    const f = test && `F(${test.dfAbove}, ${test.dfBelow}) = ${figure(test.f)}, ${probability(test.p)}`;
    return [...line(`${form} ${otherName}`, `${value}${words}`, width), ...(f === undefined ? [] : line('', f, width))];
  });
  const caution =
    'Few are compared and they differ much: the intervals of ICC(2,.) are too narrow here, as the published formula makes them.';
  const note = absoluteIntervalNarrow ? line('', caution, width) : [];
  return [`  Intraclass correlation, k = ${raters.length}; words by Koo & Li (2016)`, ...rows, ...note];
}

/** What a correlation is called by both ends of its interval: one word where they agree. */
function rangeWords(bounds: Parameters<typeof intraclassWords>[0]): string {
  const { from, to } = intraclassWords(bounds);
  return from === to ? from : `${from} to ${to}`;
}

function pairText(pair: PairAgreement, { unit, settings }: AgreeResult, width: number): string[] {
  const { first, second, limits, counts } = pair;
  const isRatio = settings.scale === 'ratio';
  const head = isRatio ? `  ${first} over ${second}` : `  ${first} minus ${second}`;
  const counted =
    counts === undefined
      ? []
      : line(
          'same count',
          `${counts.same} of ${counts.setCount} sets, ${counts.withinOne} within one, furthest apart ${plain(counts.largest, 0)}`,
          width,
        );
  if (limits === undefined) {
    return [head, ...line('bias', 'all differences are equal: how far they scatter cannot be told', width), ...counted];
  }
  const decimals = isRatio ? 3 : decimalsFor(limits.sd);
  const tail = isRatio ? '' : ` ${unit}`;
  const shown = (bounded: Limits['bias']): string => `${interval(bounded.value, bounded, decimals)}${tail}`;
  return [
    head,
    ...line('bias', `${shown(limits.bias)}: ${biasWords(limits, first, second)}`, width),
    ...line('lower limit', shown(limits.lower), width),
    ...line('upper limit', shown(limits.upper), width),
    ...line('bias by value', trendWords(limits.biasTrend, 'the difference changes with the value'), width),
    ...line('scatter by value', trendWords(limits.scatterTrend, 'the scatter changes with the value'), width),
    ...counted,
  ];
}

/** Which of two reads higher, or that it cannot be told. */
export function biasWords({ bias, scale }: Limits, first: string, second: string): string {
  const none = scale === 'ratio' ? 1 : 0;
  if (bias.low > none) return `${first} is clearly higher than ${second}`;
  return bias.high < none ? `${first} is clearly lower than ${second}` : 'cannot tell which is higher';
}

function trendWords(trend: Trend | undefined, sentence: string): string {
  if (trend === undefined) return 'not computed: too few different values';
  const { slope, p } = trend;
  const numbers = `slope ${interval(slope.value, slope, 3)}, ${probability(p)}`;
  return slope.low > 0 || slope.high < 0
    ? `clearly, ${sentence}: ${numbers}`
    : `cannot tell whether ${sentence}: ${numbers}`;
}

/** Weighted kappa with its interval, or why there is none. */
function weightedText({ kappa, interval: bounds }: WeightedKappa): string {
  if (kappa === undefined) return 'cannot tell: only one word was used';
  return bounds === undefined ? `${plain(kappa, 2)}, no width from the formula` : interval(kappa, bounds, 2);
}

function wordsText({ first, second, leftOut, kappa: found, weighted }: PairedWords, width: number): string[] {
  const share = (value: number): string => plain(100 * value, 0);
  const bounds = found.interval === undefined ? undefined : interval(found.kappa!, found.interval, 2);
  const value =
    found.kappa === undefined
      ? 'cannot tell: only one word was used'
      : (bounds ??
        (found.observedAgreement === 1
          ? '1, every item agrees; how sure that is cannot be told from the formula'
          : `${plain(found.kappa, 2)}, one of them used one word only; how sure that is cannot be told from the formula`));
  return [
    `  ${first} and ${second}`,
    ...line('items', `${found.itemCount}`, width),
    ...(leftOut.length === 0
      ? []
      : line('left out', `${leftOut.length}, a word is missing: ${leftOut.join(', ')}`, width)),
    ...line('kappa', value, width),
    ...(weighted === undefined
      ? []
      : [
          ...line('kappa by steps', `${weightedText(weighted.linear)}, on ${weighted.linear.words.join(', ')}`, width),
          ...line('kappa by squares', `${weightedText(weighted.quadratic)}, large steps count more`, width),
        ]),
    ...line(
      'agree',
      `${share(found.observedAgreement)} %, where chance would give ${share(found.chanceAgreement)} %`,
      width,
    ),
    ...found.categories.flatMap((word, i) => line(`agree on ${word}`, `${share(found.agreementOn[i]!)} %`, width)),
    ...line('', 'Items of one set are alike: the interval is rather too narrow than too wide.', width),
  ];
}
