import type { HopMeasure, HopReport } from '@surae/analysis';
import { HOP_CAUTION_SENTENCES, HOP_ENTRY_SENTENCES, HOP_WITHHELD_SENTENCES, NO_SERIES_SENTENCES } from '@surae/shared';
import { type AssessedHops, issueRows } from '@surae/study';
import type { Io } from './io.ts';
import { issuePlace } from './issue-rows.ts';
import { countWithBounds, withBounds, withUncertainty } from './readable-number.ts';
import { PLACEMENT_WORDS, within } from './report-words.ts';
import { labelled, wrapped } from './text-lines.ts';

const LABEL_WIDTH = 16;

/** Measures in the order in which they are shown: label, unit, factor to it, decimals of its change. */
const SHOWN = [
  ['contactS', 'contact', 'ms', 1000, 2],
  ['flightS', 'flight', 'ms', 1000, 2],
  ['heightM', 'height', 'mm', 1000, 2],
  ['ratio', 'ratio', '', 1, 3],
  ['stiffnessNpm', 'stiffness', 'kN/m', 0.001, 3],
] as const;

function measureWords({ mean, perHop }: HopMeasure, unit: string, factor: number, decimals: number): string {
  if (mean === null) return '';
  const scaled = (value: number | null): number | null => (value === null ? null : value * factor);
  const drift =
    perHop === null
      ? ''
      : `; change per hop ${withBounds(perHop.value * factor, scaled(perHop.low), scaled(perHop.high), decimals)}`;
  return `${withUncertainty(mean.value * factor, mean.u * factor)} ${unit}`.trimEnd() + drift;
}

function entryWords({ entry }: HopReport): string {
  const those = (met: 'no' | 'cannot_tell'): string =>
    entry.findings
      .filter((one) => one.met === met)
      .map(({ code }) => within(HOP_ENTRY_SENTENCES[code].text))
      .join(', ');
  const [missed, open] = [those('no'), those('cannot_tell')];
  const parts = [missed === '' ? '' : `not met: ${missed}`, open === '' ? '' : `not known: ${open}`];
  return `${entry.met === 'cannot_tell' ? 'cannot tell' : entry.met}. ${parts.filter((part) => part !== '').join('; ')}`.trimEnd();
}

/** How many hops were found and how many of them are analysed. */
export function countedHops({ count }: HopReport): { readonly found: string; readonly analysed: number } {
  return { found: countWithBounds(count.hops, count.low, count.high), analysed: count.analysed };
}

/** The report of one recording of hops as lines of text. */
export function hopText(outcome: AssessedHops, screen: Pick<Io, 'width' | 'drawsBlocks'>): string[] {
  const { report, item, protocol } = outcome;
  const rule = (screen.drawsBlocks ? '─' : '-').repeat(Math.max(screen.width - item.file.length - 1, 3));
  const { reason } = report;
  const { found, analysed } = countedHops(report);
  const lines: [string, string][] = [
    ['hops', report.hops.length === 0 ? '' : `${found}, ${analysed} of them analysed`],
    ['series', reason === null ? '' : NO_SERIES_SENTENCES[reason].text],
    ...SHOWN.map(([name, label, unit, factor, decimals]): [string, string] => [
      label,
      measureWords(report.measures[name], unit, factor, decimals),
    ]),
    ['not given', report.withheld.map((code) => HOP_WITHHELD_SENTENCES[code].text).join(' ')],
    ['before hops', entryWords(report)],
    ...report.cautions.map((code): [string, string] => ['take care', HOP_CAUTION_SENTENCES[code].text]),
    ...issueRows(outcome).map((row): [string, string] => [
      row.severity === 'note' ? 'note' : 'take care',
      `${issuePlace(row)}${row.sentence}`,
    ]),
  ];
  return [
    `${item.file} ${rule}`,
    `  ${report.side ?? 'side not given'}, ${PLACEMENT_WORDS[report.placement]}`,
    ...wrapped(protocol.title, screen.width - 2).map((line) => `  ${line}`),
    '',
    ...lines
      .filter(([, words]) => words !== '')
      .flatMap(([label, words]) => labelled(`  ${label}`, words, LABEL_WIDTH, screen.width)),
  ];
}
