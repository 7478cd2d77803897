import type { ArmComparison } from '../compare/compare-arms.ts';
import type { Arm } from '../compare/person-values.ts';
import type { StudyFile } from '../declared/study-document.ts';
import { outcomeHeading } from '../quality/quality-table.ts';
import { armWords, conclusionWords, contrastWords, estimateWords } from './conclusion-words.ts';
import { decimalsFor, dot, plain, roundValues, stroke, svgPage, written } from './svg-page.ts';
import { FIGURE_WIDTH, headBlocks, textBlock } from './text-block.ts';

const LEFT = 56;
const RIGHT = 384;
const HEIGHT = 320;
const [ONE, OTHER] = [138, 302];
/** how far marks and strokes of one of the two reach to either side */
const REACH = 68;

/** Why nothing is compared, for the heading of a picture and of a text. */
export function notComparedWords({ result }: ArmComparison): string {
  return result.kind === 'compared' ? '' : `Not compared: ${result.reason} (${result.found})`;
}

interface Mark {
  readonly person: string;
  readonly arm: Arm;
  readonly x: number;
  readonly y: number;
}

type Places = Readonly<Record<Arm, number>>;

/** Time goes from left to right, so that what is compared against stands first; the left leg stays left. */
function placesOf({ of, first }: StudyFile['comparison']): Places {
  const isTurned = of === 'visits' || (of === 'sides' && first === 'right');
  return isTurned ? { first: OTHER, second: ONE } : { first: ONE, second: OTHER };
}

/** How many stand there, and of how many both are there, where that is not all. */
function countWords({ people, result }: ArmComparison, arm: Arm): string {
  const own = people.filter((one) => one.arm === arm).length;
  const compared = result.kind === 'compared' ? result[arm].n : own;
  return compared === own ? `${own} people` : `${own} people, ${compared} compared`;
}

/** A mark for each person: those of one value stand beside each other, closer where they are many. */
function marksOf({ people }: ArmComparison, place: Places, y: (value: number) => number): Mark[] {
  const keyOf = ({ arm, value }: ArmComparison['people'][number]): string => `${arm} ${Math.round(y(value) / 6)}`;
  const many = new Map<string, number>();
  for (const one of people) many.set(keyOf(one), (many.get(keyOf(one)) ?? 0) + 1);
  const beside = new Map<string, number>();
  return people.map((one) => {
    const key = keyOf(one);
    const taken = beside.get(key) ?? 0;
    beside.set(key, taken + 1);
    const step = Math.min(13, (2 * REACH) / many.get(key)!);
    const shift = Math.ceil(taken / 2) * (taken % 2 === 0 ? 1 : -1) * step;
    return { person: one.person, arm: one.arm, x: place[one.arm] + shift, y: y(one.value) };
  });
}

/** Lines between the two values of the same person. */
function pairsOf(marks: readonly Mark[]): string[] {
  return marks.flatMap((one) => {
    const other = marks.find(({ person, arm }) => person === one.person && arm === 'second');
    return one.arm === 'first' && other !== undefined ? [stroke(one.x, one.y, other.x, other.y, 'hair', 0.6)] : [];
  });
}

/**
 * The value of every person in each of the two as a page in SVG: a ring each in the first, a full dot each in the second, the mean as a
 * stroke, and a line between the two of the same person.
 *
 * @param from - where it comes from, for the file itself
 */
export function peoplePicture(study: StudyFile, comparison: ArmComparison, from: string): string {
  const { people, result } = comparison;
  const values = people.map(({ value }) => value);
  const [least, most] = [Math.min(0, ...values), Math.max(1, ...values)];
  const { description, unit } = outcomeHeading(study, study.outcomes.primary);
  const outcome = `${study.outcomes.primary}: ${description}${unit === '1' ? '' : `, ${unit}`}`;
  const heading = result.kind === 'compared' ? conclusionWords(result, study.comparison) : notComparedWords(comparison);
  const figure = result.kind === 'compared' ? `${contrastWords(study.comparison)}: ${estimateWords(result)}` : '';
  const head = headBlocks(heading, [figure, outcome]);
  const top = head.next + 8;
  const bottom = top + HEIGHT;
  const y = (value: number): number => bottom - ((value - least) / ((most - least) * 1.04)) * HEIGHT;
  const ticks = roundValues(least, most * 1.04, 6);
  const decimals = Math.max(0, decimalsFor((ticks[1] ?? 1) - (ticks[0] ?? 0)) - 1);
  const place = placesOf(study.comparison);
  const marks = marksOf(comparison, place, y);
  const names = (['first', 'second'] as const).map((arm) => {
    const block = { x: place[arm], width: 2 * REACH + 16, anchor: 'middle' } as const;
    const name = textBlock(armWords(study.comparison, arm), { ...block, y: bottom + 26, look: 'word', size: 16 });
    const count = textBlock(countWords(comparison, arm), { ...block, y: name.next, look: 'quiet', size: 14 });
    return { parts: [...name.parts, ...count.parts], next: count.next };
  });
  const end = Math.max(...names.map(({ next }) => next)) + 8;
  return svgPage(
    {
      width: FIGURE_WIDTH,
      height: end + 16,
      name: heading,
      what: `${outcome}. ${heading}. ${figure}`.trim(),
      from,
    },
    [
      ...head.parts,
      ...ticks.flatMap((value) => [
        stroke(LEFT - 6, y(value), LEFT, y(value), 'hair', 1),
        written(LEFT - 10, y(value) + 5, plain(value, decimals), 'quiet', 14, 'end'),
      ]),
      stroke(LEFT, top, LEFT, bottom, 'hair', 1),
      stroke(LEFT, bottom, RIGHT, bottom, 'hair', 1),
      ...(study.comparison.of === 'groups' ? [] : pairsOf(marks)),
      ...marks.map((one) => dot(one.x, one.y, one.arm === 'first' ? 'open' : 'full', 5)),
      ...(result.kind === 'compared' ? (['first', 'second'] as const) : []).map((arm) => {
        const { mean } = result.kind === 'compared' ? result[arm] : { mean: 0 };
        return stroke(place[arm] - REACH, y(mean), place[arm] + REACH, y(mean), 'voice', 2.5);
      }),
      ...names.flatMap(({ parts }) => parts),
      written(16, end, 'each mark is a person; the long stroke is the mean', 'quiet', 14),
    ],
  );
}
