import type { Visit } from '@surae/casebook';
import { FLOOR, LEGS_NEXT_WORDS, LEGS_WORDS, SAFETY_LIST, SAFETY_LIST_VERSION } from '@surae/shared';
import { expect, test } from 'vitest';
import { legsFile } from '../../../apps/dashboard/src/legs/legs-file.ts';
import { canAndCannot, type LegsView, legsTitle, legsView } from '../../../apps/dashboard/src/legs/legs-view.ts';
import { twoLines } from '../../../apps/dashboard/src/legs/two-lines.ts';
import { twoMarks } from '../../../apps/dashboard/src/legs/two-marks.ts';
import { comparisonsOf } from '../../../apps/dashboard/src/result/comparisons.ts';
import { summarySentence } from '../../../apps/dashboard/src/result/summary-sentence.ts';
import { legsShown, twoLegFigures } from '../../../apps/dashboard/src/result/two-legs.ts';
import { JUDGING_WORDS } from '../../support/judging-words.ts';
import { made } from '../../support/legs-visit.ts';
import type { ToldVisit } from '../../support/told-visit.ts';

async function viewed(...visits: readonly ToldVisit[]): Promise<LegsView> {
  const { visit, person, earlier } = await made(...visits);
  return legsView(visit, person, earlier);
}

const BEGIN: ToldVisit = { day: '2026-03-02', left: { count: 27 }, right: { count: 19, pain: 3 } };
const bothSore = { left: 'insertion', right: 'insertion' } as const;

// worked case 1: 8 apart, by 2.25 real, by 6.7 (Byrne 2017) cannot tell
test('27 and 19: a difference of this size is more than the ups and downs, and hangs on the study', async () => {
  const { tests, day, notes } = await viewed(BEGIN);
  expect(tests.map(({ sentences }) => sentences)).toEqual([
    ['Your left leg did 27, your right leg did 19.', `${LEGS_WORDS['zone-likely-real'].text} ${LEGS_WORDS.hangs.text}`],
  ]);
  expect([day, notes]).toEqual(['Tested on 2 Mar 2026', [LEGS_WORDS['not-live'].text]]);
});

test('22 and 25 can come from the ups and downs: the test cannot tell the legs apart', async () => {
  const { tests } = await viewed({ day: '2026-03-02', left: { count: 22 }, right: { count: 25 } });
  expect(tests[0]?.sentences.slice(0, 2)).toEqual([
    'Your left leg did 22, your right leg did 25.',
    `${LEGS_WORDS['zone-cannot-tell'].text} ${LEGS_WORDS.alike.text}`,
  ]);
});

test('of one leg alone nothing is said of another: no sentence, no mark, no line, no ratio, for either reader', async () => {
  for (const [only, other] of [
    ['left', 'right'],
    ['right', 'left'],
  ] as const) {
    const day = (count: number): Partial<ToldVisit> => ({ [only]: { count } });
    const told = await made({ day: '2026-03-02', ...day(19) }, { day: '2026-04-27', ...day(24) });
    const { person } = told;
    const visit: Visit = { ...told.visit, only };
    const earlier = told.earlier.map((one): Visit => ({ ...one, only }));
    const view = legsView(visit, person, earlier);
    const [{ sentences, figures, lines, words }] = view.tests;
    expect(sentences[0]).toBe(`Your ${only} leg did 24.`);
    const pictures = [twoMarks(figures)!, twoLines(lines, words, legsShown(figures))!];
    const summary = summarySentence(visit);
    expect(summary).toBe(`${only === 'left' ? 'Left' : 'Right'} did 24.`);
    const said = [
      ...sentences,
      ...canAndCannot(view),
      legsTitle(view),
      summary,
      JSON.stringify(pictures),
      String(legsFile(view).content).replace(/<style>[^]*?<\/style>/, ''),
    ];
    for (const text of said) {
      expect(text).not.toMatch(
        new RegExp(`${other} leg|${other === 'left' ? 'Left' : 'Right'}\\b|two legs|other leg|%`),
      );
    }
    expect(JSON.stringify(pictures)).not.toContain(`mark ${other}`);
    const { isOneLeg, pasts, side } = comparisonsOf(visit, person, earlier);
    expect([isOneLeg, pasts.map((past) => past.side), side.ratio]).toEqual([true, [only], null]);
    expect(pasts[0].lead).toMatch(/5 more than on 2 Mar 2026/);
  }
  const { visit, person, earlier } = await made(BEGIN);
  expect(comparisonsOf(visit, person, earlier).isOneLeg).toBe(false);
  expect(legsTitle(legsView(visit, person, earlier))).toBe('My two legs');
});

test('legs are never told to be alike where the result page says that one does less', async () => {
  const told: string[] = [];
  for (let count = 6; count <= 27; count += 1) {
    for (const less of [1, 2, 3, 4, 5]) {
      const { visit, person, earlier } = await made({ ...BEGIN, left: { count: count + less }, right: { count } });
      const { side } = comparisonsOf(visit, person, earlier);
      const sentence = legsView(visit, person, earlier).tests[0].sentences[1];
      const isAlike = sentence.includes(LEGS_WORDS.alike.text);
      const isYes = side.lead.startsWith('Yes');
      expect(isAlike && isYes, `${count + less} and ${count}`).toBe(false);
      told.push(`${isYes} ${sentence.startsWith(LEGS_WORDS['zone-cannot-tell'].text)}`);
    }
  }
  // the one where it matters is among them
  expect(told).toContain('true true');
});

test('what is said of a difference is what the result page says of it', async () => {
  const ofPage = {
    'zone-likely-real': /is larger than the usual wobble/,
    'zone-possible': /may be real, and can come/,
    'zone-cannot-tell': /this size can come from ordinary/,
  } as const;
  const found = new Set<string>();
  for (const count of [13, 17, 19, 21, 22, 23, 24, 25, 27, 31, 34]) {
    const { visit, person, earlier } = await made({ ...BEGIN, right: { count } });
    const { side } = comparisonsOf(visit, person, earlier);
    const [, said = ''] = legsView(visit, person, earlier).tests[0].sentences;
    for (const [code, pattern] of Object.entries(ofPage) as [keyof typeof ofPage, RegExp][]) {
      const isSaid = said.startsWith(LEGS_WORDS[code].text);
      if (isSaid) found.add(code);
      expect([count, code, isSaid]).toEqual([count, code, side.lines.some((text) => pattern.test(text))]);
    }
  }
  expect(found.size).toBe(3);
});

// worked case 2: both insertions sore, 9 stopped for pain, 16
test('both sore, one stopped for pain at 9: no comparison of the legs, both reasons, each against its own start', async () => {
  const visit = (day: string, left: number, right: number): ToldVisit => ({
    day,
    sore: bothSore,
    left: { count: left, reason: 'pain', pain: 6, protocol: FLOOR },
    right: { count: right, pain: 3, protocol: FLOOR },
  });
  const { tests } = await viewed(visit('2026-01-05', 8, 10), visit('2026-03-02', 9, 13), visit('2026-03-30', 9, 16));
  const [{ sentences, lines }] = tests as [LegsView['tests'][number]];
  expect(sentences.slice(0, 3)).toEqual([
    'Your left leg stopped for pain at 9, your right leg did 16.',
    'We did not compare because you stopped for pain: that is useful to know too.',
    LEGS_WORDS['both-sore'].text,
  ]);
  expect(sentences).toContainEqual(expect.stringMatching(/^Your right leg: 6 more than on 5 Jan 2026/));
  expect(lines.map(({ side, points }) => [side, points.map(({ value }) => value)])).toEqual([['right', [10, 13, 16]]]);
});

test('one leg alone, and legs that were not tested alike, are not compared', async () => {
  const one = await viewed({ day: '2026-03-02', right: { count: 25 } });
  expect(one.tests[0]?.sentences).toEqual([
    'Your left leg was not tested, your right leg did 25.',
    LEGS_WORDS['one-leg'].text,
  ]);
  expect(one.tests[0]?.figures.left.kind).toBe('open');
  const unlike = await viewed({ ...BEGIN, right: { count: 19, protocol: FLOOR } });
  expect(unlike.tests[0]?.sentences[1]).toBe(LEGS_WORDS['not-compared'].text);
});

test('the marks are those of the first axis of the result page', async () => {
  const { visit, person, earlier } = await made(BEGIN);
  const [figures] = twoLegFigures(visit);
  expect(legsView(visit, person, earlier).tests[0]?.figures).toEqual({ ...figures, title: LEGS_WORDS.count.text });
});

test('raises and pushes are two tests, newtons are explained, and what was never done is no test', async () => {
  const pushes = { left: { netN: 1425 }, right: { netN: 1150 } };
  const both = await viewed({ ...BEGIN, pushes });
  expect(both.tests.map(({ title }) => title)).toEqual(['Heel raises', 'Pushes']);
  expect(both.tests[1]?.figures).toMatchObject({ title: 'How hard each leg pushed, in N', unit: 'N' });
  expect(both.tests[1]?.sentences[0]).toBe('Your left leg reached 1425 N, your right leg reached 1150 N.');
  expect(both.tests[1]?.sentences.at(-1)).toBe(LEGS_WORDS.newton.text);
  expect((await viewed({ day: '2026-03-02', pushes })).tests.map(({ title }) => title)).toEqual(['Pushes']);
  expect((await viewed({ day: '2026-03-02' })).tests).toEqual([]);
});

test('nothing in it judges, is a percentage, or names anybody', async () => {
  const texts = [
    JSON.stringify(await viewed(BEGIN, { day: '2026-04-27', left: { count: 27 }, right: { count: 24 } })),
    JSON.stringify(await viewed({ ...BEGIN, sore: bothSore, left: { count: 9, reason: 'pain', pain: 6 } })),
    JSON.stringify(await viewed({ ...BEGIN, right: { count: 60, reason: 'cap' } })),
  ];
  for (const text of texts) {
    for (const word of [...JUDGING_WORDS, /%/, /Nameless/, /1988/, /NaN/]) expect(text).not.toMatch(word);
  }
});

test('somebody whose raises were counted by hand did them, and is told how they were counted', async () => {
  const { visit, person, earlier } = await made(BEGIN);
  const sets = visit.sets.map((set) => ({
    ...set,
    choice: { ...set.choice, origin: 'by-hand', placement: 'hand' } as const,
  }));
  expect(legsView({ ...visit, sets }, person, earlier).notes).toEqual([LEGS_WORDS['by-hand'].text]);
});

test('somebody who was not tested reads what comes next, line by line, and of a visit without a test nothing else', async () => {
  const { visit, person, earlier } = await made(BEGIN);
  const at = visit.begunAt;
  const answer = { listVersion: SAFETY_LIST_VERSION, seenWhole: true, overridden: [], at };
  const view = (ticked: readonly string[], sets = [] as Visit['sets']): LegsView =>
    legsView({ ...visit, sets, resultSeen: true, safety: { ...answer, ticked } }, person, earlier);
  const { tests, day, notes } = view(['safety.bone', 'safety.rupture']);
  expect([tests, day]).toEqual([[], 'Visit of 2 Mar 2026']);
  expect(notes).toEqual([
    LEGS_NEXT_WORDS['not-tested'].text,
    LEGS_NEXT_WORDS['safety.rupture'].text,
    LEGS_NEXT_WORDS['safety.bone'].text,
  ]);
  expect(view([]).notes).toEqual([]);
  expect(view(['safety.rupture'], visit.sets).notes).toEqual([LEGS_WORDS['not-live'].text]);
});

test('every line of the safety list that keeps from a test has its words for who was not tested', () => {
  const locks = SAFETY_LIST.filter(({ effect }) => effect === 'do-not-test').map(({ id }) => id);
  expect(Object.keys(LEGS_NEXT_WORDS).filter((code) => code !== 'not-tested')).toEqual(locks);
});
