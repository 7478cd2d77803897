import type { DerivedForce, Figure, PullPlacement, PullReport } from '@surae/analysis';
import {
  ANOTHER_SENTENCES,
  CONSISTENCY_SENTENCES,
  END_REASON_SENTENCES,
  NO_EFFORT_SENTENCES,
  NO_RATE_SENTENCES,
  PULL_EFFORT_SENTENCES,
  PULL_END_CLASS_SENTENCES,
  PULL_GATE_SENTENCES,
  PULL_QUALITY_SENTENCES,
  PULL_SCORE_SENTENCES,
  PULL_WITHHELD_SENTENCES,
  START_NAMES,
  WARM_UP_SENTENCES,
} from '@surae/shared';
import { type AssessedPulls, issueRows } from '@surae/study';
import { earlyRiseTable } from './early-rise-table.ts';
import { effortTable } from './effort-table.ts';
import type { Io } from './io.ts';
import { issuePlace } from './issue-rows.ts';
import { pullPicture } from './pull-picture.ts';
import { plain, withUncertainty } from './readable-number.ts';
import { within } from './report-words.ts';
import { labelled, wrapped } from './text-lines.ts';

const LABEL_WIDTH = 16;

/** Where the force was measured, as one says it. */
export const PULL_PLACEMENT_WORDS: Readonly<Record<PullPlacement, string>> = {
  inline: 'in line with the push',
  platform: 'plate under the forefoot',
};

const shown = ({ value, u }: Figure): string => withUncertainty(value, u);

function scoreWords({ score }: PullReport): string {
  if (score.net === null) return '';
  const gross = score.gross === null ? '' : `; ${shown(score.gross)} ${score.unit} with the load at rest`;
  const by = score.effort === null ? '' : `, effort ${score.effort}`;
  return `${shown(score.net)} ${score.unit}, ${PULL_SCORE_SENTENCES[score.rule].text}${by}${gross}`;
}

function derivedWords(derived: DerivedForce | null | undefined, unit: PullReport['unit']): string {
  if (derived === null || derived === undefined) return '';
  const parts: (readonly [Figure | null, string])[] = [
    [derived.timesBodyWeight, 'body weights'],
    [derived.newtonPerKg, 'N/kg'],
    [unit === 'N' ? derived.newtonMetre : null, 'N.m'],
    [derived.newtonMetrePerKg, 'N.m/kg'],
  ];
  return parts.flatMap(([figure, name]) => (figure === null ? [] : [`${shown(figure)} ${name}`])).join(', ');
}

function trialWords({ trials, unit }: PullReport): string {
  if (trials === null) return '';
  const mean = trials.meanOfBest === null ? '' : `mean of the best ${trials.of} ${shown(trials.meanOfBest)} ${unit}`;
  const variation = trials.variation === null ? '' : `variation ${plain(100 * trials.variation, 1)} %`;
  const alike = trials.consistency === null ? '' : within(CONSISTENCY_SENTENCES[trials.consistency].text);
  return [mean, variation, alike].filter((words) => words !== '').join('; ');
}

function anotherWords({ trials }: PullReport): string {
  if (trials === null || trials.another.length === 0) return '';
  const reasons = trials.another.map((reason) => ANOTHER_SENTENCES[reason].text).join(' ');
  return trials.mayRepeat ? reasons : `${reasons} The protocol allows no further one.`;
}

function warmUpWords({ warmUp }: PullReport): string {
  const { told, efforts, undecided } = warmUp;
  const some = efforts.length === 0 ? '' : `${efforts.join(', ')}: `;
  if (told !== null) return some === '' ? '' : some + WARM_UP_SENTENCES.told.text;
  return [
    some === '' ? '' : some + WARM_UP_SENTENCES.guessed.text,
    undecided.length === 0 ? '' : `${undecided.join(', ')}: ${WARM_UP_SENTENCES.open.text}`,
  ]
    .filter((words) => words !== '')
    .join(' ');
}

function restWords({ restLoad, unit, calibrationRelativeU, calibrationZeroU }: PullReport): string {
  if (restLoad === null) return '';
  const calibration =
    calibrationRelativeU === null ? '' : `; calibration ${plain(100 * calibrationRelativeU, 2)} % in every uncertainty`;
  const zero = calibrationZeroU === null ? '' : `; zero ${plain(calibrationZeroU, 2)} ${unit} in those of gross forces`;
  return `${shown(restLoad)} ${unit}${calibration}${zero}`;
}

function endWords({ end }: PullReport): string {
  const given = end.reasonGiven === null ? '' : `${END_REASON_SENTENCES[end.reasonGiven].text} `;
  return given + PULL_END_CLASS_SENTENCES[end.class].text;
}

function qualityWords({ effort }: PullReport): string {
  if (effort === null) return '';
  const reasons = effort.reasons.map((reason) => PULL_EFFORT_SENTENCES[reason].text);
  return [PULL_QUALITY_SENTENCES[effort.good].text, ...reasons].join(' ');
}

function gateWords({ gate }: PullReport): string {
  if (gate.usable === 'yes') return '';
  return `cannot tell: ${gate.reasons.map((reason) => within(PULL_GATE_SENTENCES[reason].text)).join('; ')}`;
}

function otherWords({ others }: PullReport): string {
  return others
    .map(({ fromS, toS, reason }) => `${plain(fromS, 1)} to ${plain(toS, 1)} s: ${NO_EFFORT_SENTENCES[reason].text}`)
    .join(' ');
}

/** Numbers of efforts under what holds for them, in the order in which it first does. */
function grouped<Key>(pairs: readonly (readonly [Key, number])[]): readonly (readonly [Key, string])[] {
  const numbers = new Map<Key, number[]>();
  for (const [key, index] of pairs) numbers.set(key, [...(numbers.get(key) ?? []), index]);
  return [...numbers].map(([key, which]) => [key, `effort ${which.join(', ')}`]);
}

/** Which efforts start distinctly; nothing about ramps. */
function startWords({ efforts }: PullReport): string {
  const pairs = efforts.flatMap(({ index, start }) => (start === null ? [] : [[start.distinct, index] as const]));
  return grouped(pairs)
    .map(([distinct, which]) => `${START_NAMES[distinct].text}: ${which}`)
    .join('; ');
}

/** Why fast efforts have no rate over the window that the protocol scores: each reason with the efforts that it holds for. */
function noRateWords({ efforts }: PullReport, { parameters }: AssessedPulls['protocol']): string {
  const windowS = parameters.rateWindow.value;
  if (parameters.scoreRule.value !== 'mean-of-best-rates' || windowS === null) return '';
  const pairs = efforts.flatMap(({ index, rates }) => {
    const reason = rates.find((one) => Math.abs(one.windowS - windowS) < 1e-9)?.reason ?? null;
    return reason === null ? [] : [[reason, index] as const];
  });
  return grouped(pairs)
    .map(([reason, which]) => `${which}: ${within(NO_RATE_SENTENCES[reason].text)}`)
    .join('; ');
}

/** How many efforts were found and how many of them count. */
export function countedEfforts({ efforts }: PullReport): { readonly found: number; readonly counted: number } {
  return { found: efforts.length, counted: efforts.filter(({ accepted }) => accepted === 'yes').length };
}

/** The report of one recording of isometric efforts as lines of text. */
export function pullText(outcome: AssessedPulls, screen: Pick<Io, 'width' | 'drawsBlocks'>): string[] {
  const { report, item, protocol, course } = outcome;
  const { width } = screen;
  const { found, counted } = countedEfforts(report);
  const early = earlyRiseTable(report, width);
  const rule = (screen.drawsBlocks ? '─' : '-').repeat(Math.max(width - item.file.length - 1, 3));
  const lines: [label: string, words: string][] = [
    ['efforts', `${found} found, ${counted} of them count`],
    ['warm-up', warmUpWords(report)],
    ['result', scoreWords(report)],
    ['that is', derivedWords(report.derived?.bestMean, report.unit)],
    ['efforts agree', trialWords(report)],
    ['another one', anotherWords(report)],
    ['at rest', restWords(report)],
    ['maximum', found === 0 ? '' : qualityWords(report)],
    ['why', found === 0 ? '' : endWords(report)],
    ['usable', gateWords(report)],
    ['no efforts', otherWords(report)],
    ['start', startWords(report)],
    ['no rate', noRateWords(report, protocol)],
    ['not given', report.withheld.map((reason) => PULL_WITHHELD_SENTENCES[reason].text).join(' ')],
    ...issueRows(outcome).map((row): [string, string] => [
      row.severity === 'note' ? 'note' : 'take care',
      `${issuePlace(row)}${row.sentence}`,
    ]),
  ];
  return [
    `${item.file} ${rule}`,
    `  ${item.about.side ?? 'side not given'}, ${PULL_PLACEMENT_WORDS[report.placement]}`,
    ...wrapped(protocol.title, width - 2).map((line) => `  ${line}`),
    '',
    ...(report.restLoad === null
      ? []
      : [
          `  ${report.unit === 'N' ? 'force' : 'torque'}, ${report.unit} above the load at rest`,
          ...pullPicture(course, report.restLoad.value, report.efforts, screen),
          '',
          ...effortTable(report, width),
          '',
          ...(early.length === 0 ? [] : [...early, '']),
        ]),
    ...lines
      .filter(([, words]) => words !== '')
      .flatMap(([label, words]) => labelled(`  ${label}`, words, LABEL_WIDTH, width)),
  ];
}
