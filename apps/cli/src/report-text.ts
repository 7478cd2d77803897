import type { Report } from '@surae/analysis';
import { SCOPE_SENTENCES } from '@surae/shared';
import type { Assessed, Outcome } from '@surae/study';
import { heightPicture } from './height-picture.ts';
import { countedHops } from './hop-text.ts';
import type { Io } from './io.ts';
import { countedEfforts } from './pull-text.ts';
import { countWithBounds } from './readable-number.ts';
import { pictureBars, repetitionTable } from './repetition-table.ts';
import { PLACEMENT_WORDS } from './report-words.ts';
import { setLines } from './set-lines.ts';
import { labelled, wrapped } from './text-lines.ts';

type Screen = Pick<Io, 'width' | 'drawsBlocks'>;

const LABEL_WIDTH = 16;

/** The height that a repetition had to reach, in millimetres; undefined where there was nothing to hold it against. */
function criterionMm({ report, protocol }: Assessed): number | undefined {
  const share = protocol.parameters.heightFraction.value;
  const referenceM = report.reference?.heightM ?? undefined;
  const judged = report.repetitions.some((repetition) => repetition.criteria.height.result !== 'not_observed');
  return judged && share !== null && referenceM !== undefined ? share * referenceM * 1000 : undefined;
}

const COUNT_WORDS = {
  attempted: 'raises found',
  valid: 'met every rule that could be judged',
  scored: 'of these before the test ended',
  borderline: 'closer to a limit than the measurement can tell',
} as const;

/** What somebody counted by hand was not found, and met nothing. */
const HAND_COUNT_WORDS = {
  ...COUNT_WORDS,
  attempted: 'raises counted by hand',
  valid: 'of these not marked with a fault; no other rule was judged',
};

function countLines(report: Report, width: number): string[] {
  const { count, placement } = report;
  const words = placement === 'hand' ? HAND_COUNT_WORDS : COUNT_WORDS;
  const line = (label: keyof typeof COUNT_WORDS, number: string): string[] =>
    labelled(`  ${label}`.padEnd(LABEL_WIDTH) + number, words[label], LABEL_WIDTH + 13, width);
  const scored = countWithBounds(count.scored, count.scoredLow, count.scoredHigh);
  return [
    ...line('attempted', countWithBounds(count.attempted, count.low, count.high)),
    ...line('valid', countWithBounds(count.valid, count.validLow, count.validHigh)),
    ...line('scored', `${count.censored ? '≥ ' : ''}${scored}`),
    ...(count.borderline > 0 ? line('borderline', `${count.borderline}`) : []),
  ];
}

/** The report of one recording as lines of text. */
export function reportText(outcome: Assessed, screen: Screen): string[] {
  const { report, item, protocol } = outcome;
  const rule = (screen.drawsBlocks ? '─' : '-').repeat(Math.max(screen.width - item.file.length - 1, 3));
  const head = [
    `${item.file} ${rule}`,
    `  ${item.about.side ?? 'side not given'}, ${PLACEMENT_WORDS[report.placement]}`,
    ...wrapped(protocol.title, screen.width - 2).map((line) => `  ${line}`),
    '',
  ];
  if (report.repetitions.length === 0) {
    return [...head, ...countLines(report, screen.width), '', ...setLines(outcome, LABEL_WIDTH, screen.width)];
  }
  const bars = pictureBars(report);
  const picture = bars.some((bar) => bar.heightMm !== undefined)
    ? [
        `  ${report.kind === 'heel-height' ? 'height' : 'rise'}, mm`,
        ...heightPicture(bars, criterionMm(outcome), screen),
        '',
      ]
    : [];
  return [
    ...head,
    ...picture,
    ...countLines(report, screen.width),
    '',
    ...repetitionTable(report, screen.width),
    '',
    ...setLines(outcome, LABEL_WIDTH, screen.width),
  ];
}

/** What stays in memory of a recording for the closing lines. */
export interface SetSummary {
  readonly file: string;
  readonly counts: readonly [attempted: string, valid: string, scored: string] | undefined;
}

export function setSummary(outcome: Outcome): SetSummary {
  if (outcome.status === 'refused') return { file: outcome.item.file, counts: undefined };
  if (outcome.test === 'isometric') {
    const { found, counted } = countedEfforts(outcome.report);
    return { file: outcome.item.file, counts: [`${found} efforts`, `${counted} count`, ''] };
  }
  if (outcome.test === 'hop-series') {
    const { found, analysed } = countedHops(outcome.report);
    return { file: outcome.item.file, counts: [`${found} hops`, `${analysed} analysed`, ''] };
  }
  const { count } = outcome.report;
  return {
    file: outcome.item.file,
    counts: [
      countWithBounds(count.attempted, count.low, count.high),
      countWithBounds(count.valid, count.validLow, count.validHigh),
      countWithBounds(count.scored, count.scoredLow, count.scoredHigh),
    ],
  };
}

/** One line a recording where there are several, and the line that stands on every report. */
export function closingLines(summaries: readonly SetSummary[], screen: Screen): string[] {
  const scope = wrapped(SCOPE_SENTENCES.scope.text, screen.width);
  if (summaries.length < 2) return scope;
  const rows = [
    ['', 'attempted', 'valid', 'scored'],
    ...summaries.map(({ file, counts }) => [file, ...(counts ?? ['refused'])]),
  ];
  const nameWidth = Math.min(Math.max(...summaries.map(({ file }) => file.length)), screen.width - 42);
  const lines = rows.map(([file, ...cells]) => {
    const name = file!.length > nameWidth ? `…${file!.slice(file!.length - nameWidth + 1)}` : file!;
    return `${name.padEnd(nameWidth)}  ${cells.map((cell) => cell.padStart(12)).join(' ')}`.trimEnd();
  });
  return [...lines, '', ...scope];
}
