import type { Handout, HandoutLeg, HandoutWeeks } from '@surae/exchange';
import { AXIS_WORDS, HOME_WORDS, LEGS_WORDS } from '@surae/shared';
import { type ChanceLine, changeSentences } from '../legs/leg-change.ts';
import { twoLines } from '../legs/two-lines.ts';
import { twoMarks } from '../legs/two-marks.ts';
import { planLineText } from '../plan/plan-words.ts';
import type { LegFigure } from '../result/leg-figure.ts';
import { forceWords } from '../result/trial-verdicts.ts';
import { capital, type ValueWords } from '../result/value-words.ts';
import { figurePart, type SheetPart } from '../sheet/sheet.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { homeMarks } from './home-marks.ts';

type Test = HandoutWeeks['test'];

const sides = ['left', 'right'] as const;

/** What a leg did, in words for the one whose leg it is. */
export function legSentence(side: 'left' | 'right', leg: HandoutLeg | null): string {
  const told = leg === null ? 'untested' : leg.told;
  const text = fill(LEGS_WORDS[told], { leg: LEGS_WORDS[side].text, count: leg?.value ?? '' });
  const hasBounds = leg !== null && leg.told !== 'none' && leg.told !== 'at-least' && leg.low !== leg.high;
  return hasBounds ? fill(LEGS_WORDS.between, { what: text, low: leg.low, high: leg.high }) : text;
}

function joined(texts: readonly string[]): string {
  const [first = '', second = ''] = texts;
  return fill(LEGS_WORDS.joined, { first: capital(first), second });
}

function wordsOf(unit: HandoutWeeks['unit']): ValueWords {
  if (unit === 'count') return { unit: AXIS_WORDS['score-unit'].text, decimals: 0, isCount: true };
  return unit === 'N' ? { unit: 'N', decimals: 0, isCount: false } : { unit: 'N·m', decimals: 1, isCount: false };
}

function lineOf({ side, points, band }: HandoutWeeks): readonly ChanceLine[] {
  const day = (text: string): number => Math.round(Date.parse(`${text}T00:00:00Z`) / 86_400_000);
  if (points.length < 2 || band === null) return [];
  const drawn = points.map((one) => ({ day: day(one.day), at: one.day, value: one.value }));
  return [{ side, points: drawn, band: { fromDay: day(band.from), low: band.low, high: band.high } }];
}

/** How each leg moved over the weeks: in words, then as lines. */
function weeksParts(weeks: readonly HandoutWeeks[], test: Test): readonly SheetPart[] {
  const own = weeks.filter((one) => one.test === test);
  const [first] = own;
  if (first === undefined) return [];
  const words = wordsOf(first.unit);
  const said = own.flatMap(({ side, change }) => (change === null ? [] : changeSentences(side, change, words)));
  const picture = twoLines(own.flatMap(lineOf), words);
  return [
    ...[...new Set(said)].map((text): SheetPart => ({ kind: 'text', of: 'said', text })),
    ...figurePart(picture, LEGS_WORDS.course.text, LEGS_WORDS.band.text),
  ];
}

function pushParts({ pushes, weeks }: Handout): readonly SheetPart[] {
  if (pushes === null) return [];
  const { unit } = pushes;
  const told = (side: (typeof sides)[number]): string => {
    const leg = pushes[side];
    const count = leg === null ? '' : forceWords(leg.value, unit);
    return fill(LEGS_WORDS[leg === null ? 'untested' : leg.told], { leg: LEGS_WORDS[side].text, count });
  };
  const figure = (leg: HandoutLeg | null): LegFigure =>
    leg === null || leg.told === 'none'
      ? { kind: 'open', why: AXIS_WORDS['not-tested'].text }
      : { kind: 'measured', value: leg.value, low: leg.low, high: leg.high, atLeast: false };
  const { unit: name } = wordsOf(unit);
  const title = fill(LEGS_WORDS.force, { unit: name });
  const marks = twoMarks({
    title,
    unit: name,
    decimals: pushes.decimals,
    left: figure(pushes.left),
    right: figure(pushes.right),
  });
  return [
    { kind: 'heading', text: LEGS_WORDS.isometric.text },
    { kind: 'text', of: 'lead', text: joined(sides.map(told)) },
    ...(unit === 'N' ? [{ kind: 'text', of: 'said', text: LEGS_WORDS.newton.text } as const] : []),
    ...figurePart(marks, title),
    ...weeksParts(weeks ?? [], 'isometric'),
  ];
}

/** What the page of the clinic shows and the code does not. */
function notIn({ legs, pushes, weeks }: Handout): readonly SheetPart[] {
  const isPair = (test: Pick<Handout['legs'], 'left' | 'right'> | null): boolean =>
    test !== null && test.left !== null && test.right !== null;
  if (weeks === null) return [{ kind: 'text', of: 'quiet', text: HOME_WORDS['not-in-old-code'].text }];
  return isPair(legs) || isPair(pushes) ? [{ kind: 'text', of: 'quiet', text: HOME_WORDS['not-in-code'].text }] : [];
}

/** The legs of what was taken home, as far as its code holds what the page of the clinic shows; what it does not hold is said. */
export function homeLegs(handout: Handout): readonly SheetPart[] {
  const { day, legs, plan, pushes, weeks } = handout;
  const isRaises = legs.left !== null || legs.right !== null || pushes === null;
  const raises: readonly SheetPart[] = [
    ...(pushes === null ? [] : [{ kind: 'heading', text: LEGS_WORDS['heel-raise'].text } as const]),
    { kind: 'text', of: 'lead', text: joined(sides.map((side) => legSentence(side, legs[side]))) },
    ...figurePart(homeMarks({ legs }), LEGS_WORDS.count.text),
    ...weeksParts(weeks ?? [], 'heel-raise'),
  ];
  return [
    { kind: 'text', of: 'quiet', text: fill(HOME_WORDS.day, { day: dayOf(day) }) },
    ...(isRaises ? raises : []),
    ...pushParts(handout),
    ...notIn(handout),
    { kind: 'heading', text: HOME_WORDS.plan.text },
    ...(plan.length === 0
      ? [{ kind: 'text', text: HOME_WORDS['plan-none'].text } as const]
      : [{ kind: 'list', items: plan.map(planLineText) } as const]),
  ];
}
