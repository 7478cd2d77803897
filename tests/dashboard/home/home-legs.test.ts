import { type Handout, handoutCode, handoutOfCode } from '@surae/exchange';
import { HOME_WORDS, LEGS_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { handoutOf } from '../../../apps/dashboard/src/home/handout-of.ts';
import { homeLegs } from '../../../apps/dashboard/src/home/home-legs.ts';
import { legsSheet } from '../../../apps/dashboard/src/legs/legs-sheet.ts';
import { type LegsView, legsView } from '../../../apps/dashboard/src/legs/legs-view.ts';
import type { Picture } from '../../../apps/dashboard/src/legs/picture.ts';
import type { SheetPart } from '../../../apps/dashboard/src/sheet/sheet.ts';
import { HOME_HANDOUT } from '../../support/home-address.ts';
import { made } from '../../support/legs-visit.ts';
import type { ToldVisit } from '../../support/told-visit.ts';

interface Pages {
  readonly view: LegsView;
  readonly clinic: readonly SheetPart[];
  readonly home: readonly SheetPart[];
  readonly code: string;
}

/** The page of the clinic, and the page that is opened from its code. */
async function pagesOf(...visits: readonly ToldVisit[]): Promise<Pages> {
  const { visit, person, earlier } = await made(...visits);
  const view = legsView(visit, person, earlier);
  const code = handoutCode(handoutOf(visit, null, [], view.tests));
  return { view, code, clinic: legsSheet(view, ''), home: homeLegs(handoutOfCode(code)) };
}

const flat = (parts: readonly SheetPart[]): readonly SheetPart[] =>
  parts.flatMap((part) => (part.kind === 'section' ? flat(part.parts) : [part]));

function pictures(parts: readonly SheetPart[]): readonly Picture[] {
  return flat(parts).flatMap((part) => (part.kind === 'figure' ? [part.picture] : []));
}

const texts = (parts: readonly SheetPart[]): readonly string[] =>
  flat(parts).flatMap((part) => ('text' in part && part.text !== undefined ? [part.text] : []));

const both = (day: string, left: number, right: number, forces?: readonly [number, number]): ToldVisit => ({
  day,
  left: { count: left },
  right: { count: right },
  ...(forces === undefined ? {} : { pushes: { left: { netN: forces[0] }, right: { netN: forces[1] } } }),
});

const course = [both('2026-03-02', 27, 19), both('2026-03-30', 26, 21), both('2026-04-27', 27, 24)];

test('twelve weeks of raises: the pictures are those of the clinic, and so is what is said of each leg over time', async () => {
  const { view, clinic, home } = await pagesOf(...course);
  // a code holds tenths, which no eye sees in a picture
  expect(pictures(home).map(({ label }) => label)).toEqual(pictures(clinic).map(({ label }) => label));
  expect(pictures(home).map(({ marks }) => marks.length)).toEqual(pictures(clinic).map(({ marks }) => marks.length));
  expect(pictures(home)).toHaveLength(2);
  const said = view.tests[0].sentences;
  const [lead, beside, ...changes] = said;
  expect(changes.length).toBeGreaterThan(1);
  for (const sentence of [lead, ...changes]) expect(texts(home)).toContain(sentence);
  // the one thing that the code does not carry, which the page says
  expect(texts(home)).not.toContain(beside);
  expect(texts(home)).toContain(HOME_WORDS['not-in-code'].text);
});

test('pushes beside raises: a heading each, the same sentences, the same pictures', async () => {
  const { view, clinic, home, code } = await pagesOf(
    both('2026-03-02', 27, 19, [1425, 1150]),
    both('2026-04-27', 27, 24, [1500, 1180]),
  );
  expect(view.tests).toHaveLength(2);
  const drawn = pictures(home);
  expect(drawn.map(({ label }) => label)).toEqual(pictures(clinic).map(({ label }) => label));
  expect(drawn).toHaveLength(4);
  for (const { title, sentences } of view.tests)
    expect(texts(home)).toEqual(expect.arrayContaining([title, sentences[0]]));
  expect(texts(home)).toContain(LEGS_WORDS.newton.text);
  expect(code.length).toBeLessThan(330);
});

test('pushes alone are told without a word of raises', async () => {
  const { home } = await pagesOf({ day: '2026-03-02', pushes: { left: { netN: 1425 }, right: { netN: 1150 } } });
  expect(texts(home)).toContain(LEGS_WORDS.isometric.text);
  expect(texts(home)).not.toContain(LEGS_WORDS['heel-raise'].text);
  expect(pictures(home)).toHaveLength(1);
});

test('a first test has no line and no change, and one leg has nothing that is missing', async () => {
  const { home } = await pagesOf(both('2026-03-02', 27, 19));
  expect(pictures(home)).toHaveLength(1);
  const one: Handout = { ...HOME_HANDOUT, legs: { ...HOME_HANDOUT.legs, left: null }, weeks: [] };
  expect(texts(homeLegs(one))).not.toContain(HOME_WORDS['not-in-code'].text);
});

test('a code from before says that pushes and weeks are not in it', () => {
  const told = texts(homeLegs({ ...HOME_HANDOUT, weeks: null }));
  expect(told).toContain(HOME_WORDS['not-in-old-code'].text);
  expect(told).not.toContain(HOME_WORDS['not-in-code'].text);
});
