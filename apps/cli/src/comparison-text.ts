import type { Figure, LegFinding, PullFinding, Reliability, ReliabilitySource, Side } from '@surae/analysis';
import {
  CHANGE_ZONE_SENTENCES,
  COMPARE_SENTENCES,
  EFFORT_SENTENCES,
  END_CLASS_SENTENCES,
  END_REASON_SENTENCES,
  FINDING_INPUT_NAMES,
  LEG_COMPARISON_SENTENCES,
  PULL_EFFORT_SENTENCES,
  PULL_END_CLASS_SENTENCES,
  PULL_QUALITY_SENTENCES,
} from '@surae/shared';
import type { ComparedPulls, ComparedRaises, ComparedSet } from './compared-set.ts';
import { differenceWords, errorWords, groupWords, type Remark, remarksOf } from './comparison-views.ts';
import type { Comparison, LegsComparison, VariedLegs, VisitsComparison } from './comparisons.ts';
import type { Io } from './io.ts';
import { countWithBounds, plain, withBounds } from './readable-number.ts';
import { within } from './report-words.ts';
import { labelled } from './text-lines.ts';

type Screen = Pick<Io, 'width' | 'drawsBlocks'>;

/** A name at the left, and what stands beside it; an empty text is left out. */
type Line = readonly [label: string, words: string];

const LABEL_WIDTH = 18;

const UNITS: Readonly<Record<string, string>> = { '1': 'repetitions', 'N.m': 'N·m', 'N.m/s': 'N·m/s' };

const unitWord = (unit: string): string => UNITS[unit] ?? unit;

const SOURCE_KINDS: Readonly<Record<ReliabilitySource['kind'], string>> = {
  'own-clinic': 'own repeated tests',
  published: 'published',
  'cautious-default': 'cautious default',
};

function named(inputs: readonly (keyof typeof FINDING_INPUT_NAMES)[]): string {
  return inputs.map((input) => FINDING_INPUT_NAMES[input].text).join(', ');
}

/** What an answer rests on, and what was not known. */
function inputs(of: {
  readonly used: readonly (keyof typeof FINDING_INPUT_NAMES)[];
  readonly missing: readonly (keyof typeof FINDING_INPUT_NAMES)[];
}): string {
  const used = of.used.length === 0 ? '' : ` Rests on ${named(of.used)}.`;
  return of.missing.length === 0 ? used : `${used} Not known: ${named(of.missing)}.`;
}

function plainAnswer(answer: 'yes' | 'no' | 'cannot_tell'): string {
  return answer === 'cannot_tell' ? 'cannot tell' : answer;
}

function restsOn({ source, ...size }: Pick<Reliability, 'source' | 'scale' | 'standardError'>, unit: string): string {
  const { citation, group, people, kind } = source;
  const whom = people === null ? group : `${people} people: ${group}`;
  const of = size.scale === 'log' ? '' : ` ${unitWord(unit)}`;
  return `error of measurement ${errorWords(size)}${of}, ${SOURCE_KINDS[kind]}: ${citation}; ${whom}.`;
}

function countWords({ report }: ComparedRaises, pain: LegFinding['pain']): string {
  const { count, end } = report;
  const scored = `${count.censored ? '≥ ' : ''}${countWithBounds(count.scored, count.scoredLow, count.scoredHigh)}`;
  const score = `${scored} ${scored === '1' ? 'repetition' : 'repetitions'}.`;
  const why = end.reasonGiven === null ? '' : ` ${END_REASON_SENTENCES[end.reasonGiven].text}`;
  const tolerated =
    pain.toleratedRepetitions === null ? '' : ` Tolerated ${pain.toleratedRepetitions} before the pain limit.`;
  return `${score}${why}${tolerated} ${END_CLASS_SENTENCES[end.class].text}`;
}

function inUnit(figure: Figure | null, decimals: number, unit: string): string[] {
  return figure === null ? [] : [`${plain(figure.value, decimals)} ${unit}`];
}

/** The net score, what it was taken from, and the same in the units that mass and lever allow. */
function forceWords({ report }: ComparedPulls): string {
  const { score, restLoad, derived, end } = report;
  const why = end.reasonGiven === null ? '' : ` ${END_REASON_SENTENCES[end.reasonGiven].text}`;
  const meaning = `${why} ${PULL_END_CLASS_SENTENCES[end.class].text}`;
  if (score.net === null) return `no effort that counts.${meaning}`;
  const unit = unitWord(score.unit);
  const from =
    score.gross === null || restLoad === null
      ? ''
      : ` (${plain(score.gross.value, 0)} gross, ${plain(restLoad.value, 0)} at rest)`;
  const others = score.rule === 'best-peak' ? derived?.bestPeak : score.rule === 'best-mean' ? derived?.bestMean : null;
  const words =
    others === null || others === undefined
      ? []
      : [
          ...inUnit(others.timesBodyWeight, 2, '× body weight'),
          ...(score.unit === 'N.m' ? [] : inUnit(others.newtonMetre, 0, 'N·m')),
          ...inUnit(others.newtonMetrePerKg, 2, 'N·m/kg'),
        ];
  return `${[`${plain(score.net.value, 0)} ${unit} net${from}`, ...words].join(', ')}.${meaning}`;
}

function scoreWords(set: ComparedSet, { pain }: LegFinding | PullFinding): string {
  return set.test === 'isometric' ? forceWords(set) : countWords(set, pain);
}

function effortWords({ effort }: LegFinding | PullFinding): string {
  if (effort === null) return '';
  const words =
    'reasons' in effort
      ? [PULL_QUALITY_SENTENCES[effort.good].text, ...effort.reasons.map((one) => PULL_EFFORT_SENTENCES[one].text)]
      : [EFFORT_SENTENCES[effort.reason].text];
  return `${plainAnswer(effort.good)}: ${within(words.join(' '))}.${inputs(effort)}`;
}

function irritabilityWords({ irritability }: LegFinding | PullFinding): string {
  const { grade, decidedBy } = irritability;
  const by = decidedBy.length === 0 ? '' : `, by ${named(decidedBy)}`;
  const words = grade === null ? LEG_COMPARISON_SENTENCES['not-graded'].text : `${grade}${by}.`;
  return words + inputs(irritability);
}

function painWords({ pain }: LegFinding | PullFinding): string {
  const { withinLimit, riseWithin, limit } = pain;
  return `within its limit of ${limit} of 10: ${plainAnswer(withinLimit)}; rise within its limit: ${plainAnswer(riseWithin)}.${inputs(pain)}`;
}

function wordsAbout(remarks: readonly Remark[], about: Remark['about'], side: Side | null): string {
  return remarks
    .filter((one) => one.about === about && one.side === side)
    .map(({ sentence }) => sentence)
    .join(' ');
}

function legLines(
  side: Side,
  set: ComparedSet | null,
  finding: LegFinding | PullFinding | null,
  remarks: readonly Remark[],
): Line[] {
  if (set === null || finding === null) return [[side, 'no set that counts']];
  return [
    [side, scoreWords(set, finding)],
    ['  effort', effortWords(finding)],
    ['  pain', painWords(finding)],
    ['  irritability', irritabilityWords(finding)],
    ['  reference', wordsAbout(remarks, 'no-reference', side)],
  ];
}

/** Every published group once, with where each leg lies against it. */
function referenceLines({ findings }: LegsComparison['found']): Line[] {
  const beside = (['left', 'right'] as const).flatMap((side) => {
    const reference = findings[side]?.reference;
    return reference?.kind === 'references' ? reference.references.map((one) => ({ side, one })) : [];
  });
  const ids = [...new Set(beside.map(({ one }) => one.entry.id))];
  const lines = ids.map((id): Line => {
    const of = beside.filter(({ one }) => one.entry.id === id);
    const places = of.flatMap(({ side, one }) => (one.place === null ? [] : [`${side} ${one.place}`]));
    return ['reference', `${places.join(', ')}: ${groupWords(of[0]!.one)}`];
  });
  const also = (['left', 'right'] as const).map((side) => findings[side]?.reference);
  const disagree = also.some((one) => one?.kind === 'references' && one.disagree);
  const noSex = also.some((one) => one?.kind === 'references' && one.missing.includes('sex'));
  return [
    ...lines,
    ['', disagree ? LEG_COMPARISON_SENTENCES['references-disagree'].text : ''],
    ['', noSex ? LEG_COMPARISON_SENTENCES['sex-not-known'].text : ''],
  ];
}

function percent(share: number): string {
  return plain(100 * share, 0);
}

/** A difference with half the width of its interval, which lies evenly on both sides. */
function evenly({ value, high }: { readonly value: number; readonly high: number }): string {
  return `${plain(value, 0)} ± ${plain(high - value, 0)}`;
}

function comparedLines({ found }: LegsComparison, remarks: readonly Remark[]): Line[] {
  const { comparison, zone, reliability } = found;
  if (comparison.kind === 'blocked') {
    return [
      ['no ratio', COMPARE_SENTENCES['no-ratio'].text],
      ...remarks
        .filter(({ about }) => about === 'against-ratio')
        .map(({ sentence, unblock }): Line => ['because', `${sentence} ${unblock ?? ''}`]),
    ];
  }
  const { direction, ratio, difference, unit, line, underLine } = comparison;
  const { over, under, why } = direction;
  const whyOver = why === 'sore-over-other' ? ' The more sore side stands over the other.' : '';
  const [{ verdict, probability }] = underLine;
  const words = zone === null ? '' : ` ${LEG_COMPARISON_SENTENCES[`difference-${zone}`].text}`;
  return [
    [
      'legs',
      `${over} over ${under}: ${percent(ratio.value)} % (${percent(ratio.low)} to ${percent(ratio.high)}).${whyOver}`,
    ],
    [
      'lower',
      `${plainAnswer(verdict)}: ${over} against ${under}, ${plain(probability, 2)} that the true ratio is under ${percent(line)} %. ${LEG_COMPARISON_SENTENCES[`lower-${verdict}`].text}`,
    ],
    ['difference', `${over} minus ${under}: ${evenly(difference)} ${unitWord(unit)}.${words}`],
    ['rests on', reliability === null ? '' : restsOn(reliability, unit)],
    ['interval', wordsAbout(remarks, 'ratio-error', null)],
    ['other errors', wordsAbout(remarks, 'under-other-reliability', null)],
    ['mind', wordsAbout(remarks, 'caution', null)],
  ];
}

function variedLines(varied: VariedLegs | null): Line[] {
  if (varied === null) return [];
  const count = ({ scored, scoredLow, scoredHigh }: VariedLegs['cases'][number]['counts']['left']): string =>
    countWithBounds(scored, scoredLow, scoredHigh);
  return [
    ...varied.cases.map(({ value, counts, lower }): Line => {
      const answer = lower === null ? 'no ratio' : `lower: ${plainAnswer(lower)}`;
      return ['  with', `${value}: left ${count(counts.left)}, right ${count(counts.right)}; ${answer}`];
    }),
    ['  robust', LEG_COMPARISON_SENTENCES[`robust-${varied.robust}`].text],
  ];
}

function legsLines(comparison: LegsComparison): Line[] {
  const { group, found } = comparison;
  const remarks = remarksOf(comparison);
  return [
    ...legLines('left', group.legs.left, found.findings.left, remarks),
    ...legLines('right', group.legs.right, found.findings.right, remarks),
    ...comparedLines(comparison, remarks),
    ...referenceLines(found),
    ...variedLines(comparison.varied),
  ];
}

function signed(value: number, decimals: number): string {
  return `${value > 0 ? '+' : ''}${plain(value, decimals)}`;
}

function visitWords({ ordered, found }: VisitsComparison): string {
  return ordered
    .map(({ visit, told }, at) => {
      const day = told.date === null ? 'day not known' : new Date(told.date * 86_400_000).toISOString().slice(0, 10);
      const when = visit === day ? visit : `${visit} (${day})`;
      const { value, unit } = found.visits[at]!;
      return `${when}: ${value === null ? 'not measured' : `${plain(value, 0)} ${unit === '1' && value === 1 ? 'repetition' : unitWord(unit)}`}`;
    })
    .join('; ');
}

function changeLines(comparison: VisitsComparison, remarks: readonly Remark[]): Line[] {
  const { ordered, found } = comparison;
  return found.changes.flatMap(({ since, outcome }): Line[] => {
    const from = ordered[since === 'first-visit' ? 0 : ordered.length - 2]!.visit;
    const label = `since ${from}`;
    const of = remarks.filter((one) => one.since === since);
    if (outcome.kind === 'side-by-side') {
      const differ = outcome.differences.map(differenceWords).join('; ');
      const list = differ === '' ? '' : ` What differs or is not known: ${differ}.`;
      return [
        [
          label,
          `side by side, nothing is subtracted. ${wordsAbout(of, 'against-change', comparison.group.side)}${list}`,
        ],
      ];
    }
    const { change, detectable, ratio, reliability, unit } = outcome;
    const decimals = unit === '1' ? 1 : 0;
    const limits =
      ratio === null
        ? ` Detectable: ${plain(detectable.at95, decimals)} at 95 %, ${plain(detectable.at80, decimals)} at 80 %.`
        : ` By times ${withBounds(ratio.value, ratio.low, ratio.high, 2)}.`;
    return [
      [
        label,
        `${signed(change.value, 0)} (${signed(change.low, 0)} to ${signed(change.high, 0)}) ${unitWord(unit)}.${limits} ${CHANGE_ZONE_SENTENCES[detectable.zone].text}`,
      ],
      [
        '  rests on',
        restsOn(
          {
            source: reliability,
            scale: ratio === null ? 'natural' : 'log',
            standardError: detectable.at95 / (1.96 * Math.SQRT2),
          },
          unit,
        ),
      ],
      ['  other errors', wordsAbout(of, 'under-other-reliability', comparison.group.side)],
      ['  mind', wordsAbout(of, 'caution', comparison.group.side)],
    ];
  });
}

function courseWords({ found, group }: VisitsComparison, remarks: readonly Remark[]): string {
  const { trend } = found;
  if (trend === null) return '';
  if (trend.kind === 'side-by-side') {
    return `no line is drawn. ${wordsAbout(
      remarks.filter(({ since }) => since === 'all-visits'),
      'against-change',
      group.side,
    )}`;
  }
  const { value, low, high } = trend.slopePerWeek;
  const bounds = low === null || high === null ? ', no interval under five visits' : '';
  const words = LEG_COMPARISON_SENTENCES[trend.moves === 'yes' ? 'course-moves' : 'course-cannot-tell'].text;
  return `${withBounds(value, low, high, 1)} ${unitWord(trend.unit)} a week${bounds}. ${words}`;
}

function visitsLines(comparison: VisitsComparison): Line[] {
  const remarks = remarksOf(comparison);
  return [
    ['visits', visitWords(comparison)],
    ...changeLines(comparison, remarks),
    ['course', courseWords(comparison, remarks)],
  ];
}

/** Whose comparison it is, as its headline. */
function headline(comparison: Comparison): string {
  const { person } = comparison.group;
  if (comparison.kind === 'visits') return `${person}, ${comparison.group.side} leg over its visits`;
  const { visit } = comparison.group;
  return `${person}${visit === '' ? '' : `, visit ${visit}`}, both legs`;
}

/** One comparison as lines of text. */
export function comparisonText(comparison: Comparison, screen: Screen): string[] {
  const head = headline(comparison);
  const rule = (screen.drawsBlocks ? '─' : '-').repeat(Math.max(screen.width - head.length - 1, 3));
  const lines = comparison.kind === 'legs' ? legsLines(comparison) : visitsLines(comparison);
  return [
    `${head} ${rule}`,
    ...lines
      .filter(([, words]) => words !== '')
      .flatMap(([label, words]) => labelled(`  ${label}`, words, LABEL_WIDTH, screen.width)),
  ];
}
