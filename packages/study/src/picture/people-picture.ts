import type { ArmComparison } from '../compare/compare-arms.ts';
import type { Arm } from '../compare/person-values.ts';
import type { StudyFile } from '../declared/study-document.ts';
import { outcomeHeading } from '../quality/quality-table.ts';
import { armWords, conclusionWords, contrastWords, estimateWords } from './conclusion-words.ts';
import { decimalsFor, dot, plain, roundValues, stroke, svgPage, written } from './svg-page.ts';

const WIDTH = 720;
const HEIGHT = 560;
const FIELD = { left: 84, right: 640, top: 110, bottom: 470 } as const;
const PLACE: Readonly<Record<Arm, number>> = { first: 220, second: 500 };

/** Why nothing is compared, for the heading of a picture and of a text. */
export function notComparedWords({ result }: ArmComparison): string {
  return result.kind === 'compared' ? '' : `Not compared: ${result.reason} (${result.found})`;
}

/**
 * The value of every person in each of the two as a page in SVG: a ring each in the first, a full dot each in the second, the mean as a
 * stroke, and a line between the two of the same person.
 *
 * @param from - where it comes from, for the file itself
 */
export function peoplePicture(study: StudyFile, comparison: ArmComparison, from: string): string {
  const { people, result } = comparison;
  const { of } = study.comparison;
  const values = people.map(({ value }) => value);
  const [least, most] = [Math.min(0, ...values), Math.max(1, ...values)];
  const y = (value: number): number =>
    FIELD.bottom - ((value - least) / ((most - least) * 1.04)) * (FIELD.bottom - FIELD.top);
  const { description, unit } = outcomeHeading(study, study.outcomes.primary);
  const tail = unit === '1' ? '' : `, ${unit}`;
  const heading = result.kind === 'compared' ? conclusionWords(result, study.comparison) : notComparedWords(comparison);
  const figure = result.kind === 'compared' ? `${contrastWords(study.comparison)}: ${estimateWords(result)}` : '';
  const ticks = roundValues(least, most * 1.04, 6);
  const decimals = Math.max(0, decimalsFor((ticks[1] ?? 1) - (ticks[0] ?? 0)) - 1);
  /** people of one value stand beside each other */
  const beside = new Map<string, number>();
  const points = people.map((one) => {
    const key = `${one.arm} ${Math.round(y(one.value) / 6)}`;
    const taken = beside.get(key) ?? 0;
    beside.set(key, taken + 1);
    const shift = Math.ceil(taken / 2) * (taken % 2 === 0 ? 1 : -1) * 13;
    return { ...one, x: PLACE[one.arm] + shift, y: y(one.value) };
  });
  const pairs =
    of === 'groups'
      ? []
      : points.flatMap((one) => {
          const other = points.find(({ person, arm }) => person === one.person && arm === 'second');
          return one.arm === 'first' && other !== undefined
            ? [stroke(one.x, one.y, other.x, other.y, 'hair', 0.6)]
            : [];
        });
  const arms = result.kind === 'compared' ? (['first', 'second'] as const) : [];
  return svgPage(
    {
      width: WIDTH,
      height: HEIGHT,
      name: heading,
      what: `${study.outcomes.primary}: ${description}${tail}. ${heading}. ${figure}`.trim(),
      from,
    },
    [
      written(FIELD.left, 40, heading, 'word', 20),
      written(FIELD.left, 66, `${study.outcomes.primary}: ${description}${tail}`, 'quiet'),
      written(FIELD.left, 88, figure, 'quiet'),
      ...ticks.flatMap((value) => [
        stroke(FIELD.left - 6, y(value), FIELD.left, y(value), 'hair', 1),
        written(FIELD.left - 12, y(value) + 5, plain(value, decimals), 'quiet', 14, 'end'),
      ]),
      stroke(FIELD.left, FIELD.top, FIELD.left, FIELD.bottom, 'hair', 1),
      stroke(FIELD.left, FIELD.bottom, FIELD.right, FIELD.bottom, 'hair', 1),
      ...pairs,
      ...points.map((one) => dot(one.x, one.y, one.arm === 'first' ? 'open' : 'full', 5)),
      ...arms.flatMap((arm) => {
        const { mean } = result.kind === 'compared' ? result[arm] : { mean: 0 };
        return [stroke(PLACE[arm] - 70, y(mean), PLACE[arm] + 70, y(mean), 'voice', 2.5)];
      }),
      ...(['first', 'second'] as const).flatMap((arm) => {
        const own = people.filter((one) => one.arm === arm).length;
        return [
          written(PLACE[arm], FIELD.bottom + 28, armWords(study.comparison, arm), 'word', 16, 'middle'),
          written(PLACE[arm], FIELD.bottom + 50, `${own} people`, 'quiet', 14, 'middle'),
        ];
      }),
      written(FIELD.left, FIELD.bottom + 78, 'each mark is a person; the long stroke is the mean', 'quiet', 14),
    ],
  );
}
