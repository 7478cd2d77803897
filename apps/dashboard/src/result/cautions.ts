import type { Report, Side } from '@surae/analysis';
import { setOf, type Visit } from '@surae/casebook';
import {
  AXIS_WORDS,
  EFFORT_SENTENCES,
  END_CLASS_SENTENCES,
  GATE_SENTENCES,
  ISSUE_SENTENCES,
  SAFETY_LIST,
  WITHHELD_SENTENCES,
} from '@surae/shared';
import { entryWords } from '../words/entry-words.ts';

/** What a reader must know about a result; `side` is null where it concerns the person and not one leg. */
export interface Caution {
  readonly side: Side | null;
  readonly text: string;
}

const sides = ['left', 'right'] as const satisfies readonly Side[];

/** Missing heights are said where they are missing; the work of the ankle is shown nowhere on the page. */
const saidElsewhere: readonly Report['withheld'][number][] = ['no-heel-lever', 'no-ankle-geometry'];

function unique(texts: readonly string[]): string[] {
  return [...new Set(texts)];
}

function ofReport({ gate, end, effort, issues, withheld }: Report): string[] {
  const worse = issues.filter(({ severity }) => severity !== 'note');
  return unique([
    ...(end.class === 'capacity' ? [] : [END_CLASS_SENTENCES[end.class].text]),
    ...(effort.reason === 'stopped-before-signs-of-fatigue' ? [EFFORT_SENTENCES[effort.reason].text] : []),
    ...gate.reasons.map((reason) => GATE_SENTENCES[reason].text),
    ...worse.map(({ code }) => ISSUE_SENTENCES[code].text),
    ...withheld.filter((reason) => !saidElsewhere.includes(reason)).map((reason) => WITHHELD_SENTENCES[reason].text),
  ]);
}

/** Cautions of the safety list that were ticked before the test: they hold for what is read out of it too. */
function ofPerson({ safety, earlierSafety = [] }: Visit): string[] {
  const ticked = [...earlierSafety, ...(safety === null ? [] : [safety])].flatMap((answer) => answer.ticked);
  return SAFETY_LIST.filter(({ id, when }) => when === 'before' && ticked.includes(id)).map(
    (line) => `${entryWords(line, 'ask')} ${entryWords(line, 'next')}`,
  );
}

/** Everything with which a result must be read; what holds for both legs is said once. */
export function cautions(visit: Visit): Caution[] {
  const texts = sides.map((side) => {
    const report = setOf(visit, side)?.report;
    return report ? ofReport(report) : [];
  });
  const shared = (texts[0] ?? []).filter((text) => texts[1]?.includes(text));
  return [
    ...ofPerson(visit).map((text) => ({ side: null, text })),
    ...shared.map((text) => ({ side: null, text })),
    ...sides.flatMap((side, i) =>
      (texts[i] ?? []).filter((text) => !shared.includes(text)).map((text) => ({ side, text })),
    ),
  ];
}

/** The word for a leg at the start of a line. */
export function legName(side: Side): string {
  return AXIS_WORDS[side].text;
}
