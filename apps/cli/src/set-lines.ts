import type { Report, Work } from '@surae/analysis';
import {
  CRITERION_IDS,
  CRITERION_NAMES,
  END_CLASS_SENTENCES,
  END_REASON_SENTENCES,
  FAULT_KIND_SENTENCES,
  GATE_SENTENCES,
  WITHHELD_SENTENCES,
} from '@surae/shared';
import { type Assessed, issueRows } from '@surae/study';
import { issuePlace } from './issue-rows.ts';
import { plain, withBounds, withUncertainty } from './readable-number.ts';
import { within } from './report-words.ts';
import { maximumWords, pairWords } from './seated-words.ts';
import { labelled } from './text-lines.ts';

function referenceWords({ reference, kind }: Report): string {
  if (reference === null || reference.heightM === null || reference.heightUM === null) return '';
  const size = withUncertainty(reference.heightM * 1000, reference.heightUM * 1000);
  const from = reference.fromRepetitions;
  const by =
    from.length === 0
      ? 'practice raises'
      : `the mean of repetition${from.length === 1 ? '' : 's'} ${from.join(' and ')}`;
  return `${size} mm ${kind === 'heel-height' ? 'height' : 'rise'}, ${by}${reference.raised ? ', which beat the practice raises' : ''}`;
}

function endWords({ end, repetitions }: Report): string {
  const last = `repetition ${end.atRepetition}`;
  switch (end.rule) {
    case 'last-repetition':
      return end.atRepetition === 0 ? '' : `with ${last}, the last one`;
    case 'consecutive-faults': {
      const kind = end.kind === null ? '' : ` (${FAULT_KIND_SENTENCES[end.kind].text})`;
      return `with ${last} of ${repetitions.length}, by faults in a row${kind}`;
    }
    case 'repetition-cap':
      return `with ${last}, the greatest number the protocol allows`;
    case 'fixed-count':
      return `with ${last}, the number that was asked for`;
    case 'duration':
      return `with ${last}, when the time was over`;
  }
}

/** Why the person stopped and what that makes of the count: never left out, because no trace can know it. */
function stoppedWords({ end, repetitions }: Report): string {
  if (repetitions.length === 0) return '';
  const given = end.reasonGiven === null ? '' : `${END_REASON_SENTENCES[end.reasonGiven].text} `;
  return given + END_CLASS_SENTENCES[end.class].text;
}

const WORK_NAMES = [
  ['heelJ', 'heelUJ', 'by heel height'],
  ['ankleJ', 'ankleUJ', 'by the rise of the ankle'],
  ['platformJ', 'platformUJ', 'on the platform'],
  ['riseJ', 'riseUJ', 'by the rise of the body'],
  ['seatedJ', 'seatedUJ', 'by the load and the rise of the knee'],
] as const;

function workWords(work: Work): string {
  return WORK_NAMES.flatMap(([value, u, words]) => {
    const joules = work[value];
    return joules === null ? [] : [`${withUncertainty(joules, work[u] ?? 0)} J ${words}`];
  }).join('; ');
}

function tempoWords({ measures: { tempo } }: Report): string {
  if (tempo.meanPeriodS === null) return '';
  const parts = (
    [
      ['up', tempo.meanUpS],
      ['top', tempo.meanTopS],
      ['down', tempo.meanDownS],
      ['bottom', tempo.meanLowS],
    ] as const
  ).flatMap(([name, seconds]) => (seconds === null ? [] : [`${name} ${plain(seconds, 2)}`]));
  const period = plain(tempo.meanPeriodS, 2);
  // taps have no parts
  return parts.length === 0 ? `${period} s from tap to tap` : `${period} s from top to top: ${parts.join(', ')}`;
}

function fatigueWords({ measures: { fatigue, firstThreeHeightM, lastThreeHeightM }, kind }: Report): string {
  const words: string[] = [];
  const { slopeM } = fatigue;
  const noun = kind === 'heel-height' ? 'height' : 'rise';
  if (slopeM !== null && slopeM.low !== null && slopeM.high !== null) {
    words.push(`${noun} ${withBounds(slopeM.value * 1000, slopeM.low * 1000, slopeM.high * 1000, 1)} mm a repetition`);
  }
  if (firstThreeHeightM !== null && lastThreeHeightM !== null) {
    words.push(
      `first three ${plain(firstThreeHeightM * 1000, 0)} mm, last three ${plain(lastThreeHeightM * 1000, 0)} mm`,
    );
  }
  return words.join('; ');
}

/** What no repetition shows though the protocol asks for it; what it does not ask for is no lack of the sensor. */
function notObservedWords({ repetitions }: Report): string {
  return CRITERION_IDS.filter(
    (id) =>
      repetitions.every(({ criteria }) => criteria[id].result === 'not_observed') &&
      repetitions.some(({ criteria }) => criteria[id].reason !== 'not-asked'),
  )
    .map((id) => CRITERION_NAMES[id].text)
    .join(', ');
}

function powerWords({ measures: { meanPowerW, peakPowerW } }: Report): string {
  if (meanPowerW === null) return '';
  return `mean ${plain(meanPowerW, 0)} W${peakPowerW === null ? '' : `, peak ${plain(peakPowerW, 0)} W`}`;
}

function withheldWords({ withheld }: Report): string {
  return withheld.map((reason) => WITHHELD_SENTENCES[reason].text).join(' ');
}

/** Body weight to the newton: how true the plate is, a trace cannot know. */
function weightWords({ bodyWeightN }: Report): string {
  return bodyWeightN === null ? '' : `${plain(bodyWeightN, 0)} N while standing still, by the platform`;
}

/** Why the set may not be interpreted as it is; a side that is not given is said here and nowhere else. */
function gateWords({ gate }: Report): string {
  if (gate.usable === 'yes') return '';
  const reasons = gate.reasons.map((reason) => within(GATE_SENTENCES[reason].text));
  return `${gate.usable === 'no' ? 'no' : 'cannot tell'}: ${reasons.join('; ')}`;
}

/** What is known about the set beside its repetitions: one line or more for each thing that is known. */
export function setLines(outcome: Assessed, labelWidth: number, width: number): string[] {
  const { report } = outcome;
  const tension = report.measures.timeUnderTensionS;
  const lines: [label: string, words: string][] = [
    ['ended', endWords(report)],
    ['why', stoppedWords(report)],
    ['usable', gateWords(report)],
    ['reference', referenceWords(report)],
    ['load', pairWords(report)],
    ['next load', maximumWords(report)],
    ['work', workWords(report.measures.work)],
    ['power', powerWords(report)],
    ['tempo', tempoWords(report)],
    ['course', fatigueWords(report)],
    ['tension', tension !== null && tension > 0 ? `${plain(tension, 1)} s off the bottom in all` : ''],
    ['body weight', weightWords(report)],
    ['not observed', report.repetitions.length === 0 ? '' : notObservedWords(report)],
    ['not given', withheldWords(report)],
    ...issueRows(outcome).map((row): [string, string] => [
      row.severity === 'note' ? 'note' : 'take care',
      `${issuePlace(row)}${row.sentence}`,
    ]),
  ];
  return lines
    .filter(([, words]) => words !== '')
    .flatMap(([label, words]) => labelled(`  ${label}`, words, labelWidth, width));
}
