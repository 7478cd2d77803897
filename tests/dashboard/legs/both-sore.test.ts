import type { SoreSides } from '@surae/casebook';
import { expect, test } from 'vitest';
import { bothSoreLeg, paceSentence } from '../../../apps/dashboard/src/legs/both-sore.ts';
import { legsView } from '../../../apps/dashboard/src/legs/legs-view.ts';
import { comparedRaises } from '../../../apps/dashboard/src/result/comparisons.ts';
import { coursePerson } from '../../support/course-person.ts';
import { JUDGING_WORDS } from '../../support/judging-words.ts';
import { legTold, MODERATE } from '../../support/told-visit.ts';

const both: SoreSides = { left: 'mid-portion', right: 'mid-portion' };
const history = {
  legs: { left: legTold('none', { ...MODERATE, flare: 'yes' }), right: legTold('none', { ...MODERATE, peakPain: 7 }) },
  about: [],
};

async function given(...counts: readonly (readonly [left: number, right: number])[]) {
  const { book, personId, read } = await coursePerson(
    ...counts.map(([left, right], at) => ({
      day: `2026-03-0${at + 2}`,
      sore: both,
      history,
      left: { count: left },
      right: { count: right },
    })),
  );
  const body = { on: '2026-01-01', test: 'heel-raise', side: 'both', value: 30, unit: 'repetitions' };
  await book.log.add(personId, { kind: 'target', body });
  const all = (await read()).visits;
  const { visit, person } = all[all.length - 1];
  const earlier = all.slice(0, -1).map((one) => one.visit);
  return { visit, person, earlier };
}

test('who was tested reads of a sorer start, of other people and of the target, in plain words', async () => {
  const { visit, person, earlier } = await given([12, 35]);
  const compared = comparedRaises(visit, person, earlier);
  const [left, right] = (['left', 'right'] as const).map((side) => bothSoreLeg(visit, side, 'heel-raise', compared));
  expect(left[0]).toMatch(/^Your left leg: this first test was on a sorer day/);
  expect(left.at(-1)).toBe('Your left leg: you work toward 30 repetitions, and are on the way.');
  expect(right.at(-1)).toBe('Your right leg: you have reached the 30 repetitions you work toward.');
  expect(right.join(' ')).not.toMatch(/sorer/);
  expect(paceSentence(compared)).toBe('Your right leg is the touchier one, so it sets the pace.');
  const said = legsView(visit, person, earlier).tests.flatMap(({ sentences }) => sentences);
  expect(said).toEqual(expect.arrayContaining([...left, ...right]));
  for (const word of JUDGING_WORDS) expect(said.join(' ')).not.toMatch(word);
  expect(said.join(' ')).not.toMatch(/%/);
});

test('nothing of it is said where one leg is sore', async () => {
  const { read } = await coursePerson({ day: '2026-03-02', left: { count: 20 }, right: { count: 18 } });
  const [{ visit, person }] = (await read()).visits;
  expect(bothSoreLeg(visit, 'left', 'heel-raise', comparedRaises(visit, person, []))).toEqual([]);
});
