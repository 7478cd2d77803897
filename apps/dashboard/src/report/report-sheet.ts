import {
  type OwnErrorsInUse,
  type Person,
  pullSetOf,
  type SetChoice,
  setOf,
  type TestKind,
  testsOf,
  type Visit,
} from '@surae/casebook';
import {
  AXIS_WORDS,
  COMPARISON_RULES,
  REPORT_PLACE,
  REPORT_WORDS,
  SCOPE_SENTENCES,
  TEST_CHOICE_WORDS,
} from '@surae/shared';
import { twoMarks } from '../legs/two-marks.ts';
import { cautions, legName } from '../result/cautions.ts';
import { type Comparisons, comparisonsOf, pullComparisonsOf } from '../result/comparisons.ts';
import { leadsOf } from '../result/leads-of.ts';
import { pullFigures } from '../result/pull-figures.ts';
import { pullCautions, pullSentence } from '../result/pull-sentences.ts';
import { summarySentence } from '../result/summary-sentence.ts';
import { twoLegFigures } from '../result/two-legs.ts';
import { capital } from '../result/value-words.ts';
import { figurePart, type SheetPart } from '../sheet/sheet.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { reportRows, toldLegs } from './report-rows.ts';

/** What a report is made of. */
export interface Reported {
  readonly visit: Visit;
  /** with the name by which the clinic knows them */
  readonly person: Person;
  readonly earlier: readonly Visit[];
  readonly own: OwnErrorsInUse;
  /** a line each; empty where none was written down */
  readonly plan: readonly string[];
  readonly software: string;
}

const sides = ['left', 'right'] as const;
const words = REPORT_WORDS;

function text(said: string, of?: 'lead' | 'quiet' | 'voice'): SheetPart {
  return { kind: 'text', text: said, ...(of === undefined ? {} : { of }) };
}

function whoPart({ visit, person }: Reported): SheetPart {
  const { birthYear, bodyMassKg, name } = person;
  return text(
    [
      fill(words.who, { name, day: dayOf(visit.begunAt) }),
      ...(birthYear == null ? [] : [fill({ text: words['who-more'].text }, { year: String(birthYear) })]),
      ...(bodyMassKg === null ? [] : [fill(words.mass, { value: bodyMassKg })]),
    ].join(' '),
  );
}

/** The three comparators, or every reason against one; where they do not say the same, that stands first. */
function besideLines({ together, side, pasts, groups, isOneLeg }: Comparisons): readonly string[] {
  return [
    ...together,
    ...(isOneLeg
      ? []
      : [
          side.lead,
          side.note,
          ...side.blocks.map(({ why, unblock }) => fill(words['no-ratio-why'], { why, unblock })),
        ]),
    ...leadsOf(pasts).map((one) => one.text),
    ...leadsOf(groups).map((one) => one.text),
  ].filter((line) => line !== '');
}

function testPart({ visit, person, earlier, own }: Reported, test: TestKind): readonly SheetPart[] {
  const isRaise = test === 'heel-raise';
  const isAssessed = sides.some((side) => (isRaise ? setOf : pullSetOf)(visit, side)?.report != null);
  const legs = toldLegs(visit);
  const [figures] = (isRaise ? twoLegFigures : pullFigures)(visit);
  const compared = isAssessed ? (isRaise ? comparisonsOf : pullComparisonsOf)(visit, person, earlier, own) : null;
  return [
    {
      kind: 'section',
      of: 'test',
      parts: [
        { kind: 'heading', text: capital(TEST_CHOICE_WORDS[test].text) },
        text(isRaise ? summarySentence(visit) : pullSentence(visit), 'lead'),
        ...(figures === undefined ? [] : figurePart(twoMarks(figures), `${figures.title} [${figures.unit}]`)),
        {
          kind: 'table',
          caption: words.figures.text,
          head: [words.measure.text, ...legs.map((side) => AXIS_WORDS[side].text)],
          rows: reportRows(visit, test),
        },
        ...(compared === null
          ? []
          : ([
              { kind: 'subheading', text: words.beside.text },
              { kind: 'list', items: besideLines(compared) },
            ] as const)),
      ],
    },
  ];
}

function testsNobody({ origin }: { readonly origin: SetChoice['origin'] }): boolean {
  return origin !== 'live' && origin !== 'by-hand';
}

function cautionLines(visit: Visit): readonly string[] {
  return [...cautions(visit), ...pullCautions(visit, COMPARISON_RULES.restLeast.value)].map(({ side, text: said }) =>
    side === null ? said : fill(words['of-leg'], { leg: legName(side), text: said }),
  );
}

/** One page for the record: who, how each leg was tested and what it did with its intervals, beside what, the plan, the cautions. */
export function reportSheet(reported: Reported): readonly SheetPart[] {
  const { visit, plan, software } = reported;
  const sets = sides.flatMap((side) => [setOf(visit, side) ?? [], pullSetOf(visit, side) ?? []].flat());
  const said = cautionLines(visit);
  return [
    { kind: 'title', text: REPORT_PLACE.title.text },
    whoPart(reported),
    ...(sets.some(({ choice }) => testsNobody(choice)) ? [text(words['not-live'].text, 'voice')] : []),
    ...testsOf(visit).flatMap((test) => testPart(reported, test)),
    {
      kind: 'section',
      of: 'plan',
      parts: [
        { kind: 'heading', text: words.plan.text },
        plan.length === 0 ? text(words['plan-none'].text) : { kind: 'list', items: plan },
      ],
    },
    {
      kind: 'section',
      of: 'cautions',
      parts: [
        { kind: 'heading', text: words.cautions.text },
        said.length === 0 ? text(words['no-cautions'].text) : { kind: 'list', items: said },
        text(SCOPE_SENTENCES.scope.text),
        text(fill(words.made, { software }), 'quiet'),
      ],
    },
  ];
}
