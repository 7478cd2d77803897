import type { PullReport, Report, Side } from '@surae/analysis';
import { legsTested, type PullSet, pullSetOf, setOf, type TestKind, type Visit, type VisitSet } from '@surae/casebook';
import { withUncertainty } from '@surae/exchange';
import { sha256Hex } from '@surae/records';
import { AXIS_WORDS, END_CHOICES, PROTOCOLS, PULL_PROTOCOLS, REPORT_WORDS } from '@surae/shared';
import type { LegFigure } from '../result/leg-figure.ts';
import { pullFigures } from '../result/pull-figures.ts';
import { type TwoLegFigures, twoLegFigures } from '../result/two-legs.ts';
import { decimal } from '../words/decimal.ts';
import { entryWords } from '../words/entry-words.ts';
import { fill } from '../words/fill.ts';

type Set = VisitSet | PullSet;

/** Letters of a hash that are printed: enough to tell two sets of rules apart. */
const hashLetters = 12;

/** A figure with its interval, in the digits of the letter; why there is none where there is none. */
export function figureCell(figure: LegFigure, { decimals }: Pick<TwoLegFigures, 'decimals'>): string {
  if (figure.kind === 'open') return figure.why;
  const [value, low, high] = [figure.value, figure.low, figure.high].map((one) => decimal(one, decimals)) as [
    string,
    string,
    string,
  ];
  const text = fill(REPORT_WORDS.cell, { value, low, high });
  return figure.atLeast ? fill(AXIS_WORDS['at-least'], { value: text }) : text;
}

const conventions = ['heel', 'platform', 'rise', 'ankle', 'seated'] as const;

/** Work of all repetitions by the first convention that either leg has; the other leg may have none. */
function workRow(reports: readonly (Report | PullReport | null)[]): readonly string[] | null {
  const works = reports.map((report) => (report !== null && 'measures' in report ? report.measures.work : null));
  const kind = conventions.find((one) => works.some((work) => work !== null && work[`${one}J`] !== null));
  if (kind === undefined) return null;
  const cells = works.map((work) => {
    const [value, u] = [work?.[`${kind}J`] ?? null, work?.[`${kind}UJ`] ?? null];
    return value === null || u === null ? REPORT_WORDS['work-open'].text : withUncertainty(value, u, 'J');
  });
  return [REPORT_WORDS.work.text, ...cells];
}

function protocolCell({ choice: { protocolId } }: Set): string {
  const known = [...PROTOCOLS, ...PULL_PROTOCOLS].find(({ id }) => id === protocolId);
  return known === undefined ? protocolId : entryWords(known, 'title');
}

function sensorCell({ choice }: Set): string {
  if (choice.placement === 'hand') return REPORT_WORDS['by-hand'].text;
  const { sensor } = choice;
  return [
    ...(sensor === undefined ? [] : [`${sensor.kindName}, ${sensor.deviceName}`]),
    choice.placement,
    ...stringWords(choice),
  ].join(', ');
}

/** What is known of the string of a sensor at the heel; nothing where none measured. */
function stringWords(choice: Set['choice']): string[] {
  if (choice.placement !== 'heel') return [];
  const lengthM = choice.stringRestLengthM;
  if (lengthM === undefined) return [REPORT_WORDS['string-unknown'].text];
  return [fill(REPORT_WORDS['string-rest'], { length: decimal(lengthM * 100, 1) })];
}

function fingerprintCell({ report, choice }: Set): string {
  const rules = report === null ? choice.protocolFingerprint : report.protocol.fingerprint;
  return sha256Hex(new TextEncoder().encode(rules)).slice(0, hashLetters);
}

/** Legs of a test that the report tells of, left before right. */
export function toldLegs(visit: Visit): readonly Side[] {
  return legsTested(visit);
}

/** The table of one test: its figures, how it ended, and how it was done; the first cell of a row names it. */
export function reportRows(visit: Visit, test: TestKind): readonly (readonly string[])[] {
  const sides = toldLegs(visit);
  const sets = sides.map((side) => (test === 'heel-raise' ? setOf : pullSetOf)(visit, side));
  const figures = test === 'heel-raise' ? twoLegFigures(visit) : pullFigures(visit);
  const row = (name: string, cell: (set: Set) => string): readonly string[] => [
    name,
    ...sets.map((set) => (set === undefined ? REPORT_WORDS['not-tested'].text : cell(set))),
  ];
  const told = (value: number | null | undefined): string =>
    value == null ? REPORT_WORDS['not-told'].text : String(value);
  const work = workRow(sets.map((set) => set?.report ?? null));
  return [
    ...figures
      // a measure that neither leg has is left out
      .filter((one) => sides.some((side) => one[side].kind === 'measured'))
      .map((one) => [`${one.title} [${one.unit}]`, ...sides.map((side) => figureCell(one[side], one))]),
    ...(work === null ? [] : [work]),
    row(REPORT_WORDS.ended.text, ({ end }) =>
      end === null ? REPORT_WORDS['not-told'].text : END_CHOICES[end.reason].text,
    ),
    row(REPORT_WORDS.pain.text, ({ end }) => told(end?.painPeak)),
    row(REPORT_WORDS.exertion.text, ({ end }) => told(end?.exertion)),
    row(REPORT_WORDS.protocol.text, protocolCell),
    row(REPORT_WORDS.sensor.text, sensorCell),
    row(REPORT_WORDS.fingerprint.text, fingerprintCell),
  ];
}
