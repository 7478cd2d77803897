import type { Visit } from '@surae/casebook';
import { clinicRules } from '@surae/guidance';
import { ADVICE_WORDS, GUIDANCE_RULES, GUIDANCE_SENTENCES, GUIDANCE_SETTLED_BY } from '@surae/shared';
import { expect, test } from 'vitest';
import { type Advice, type AdviceCard, adviceFor } from '../../../apps/dashboard/src/advice/advice-cards.ts';
import {
  advisedPerson,
  advisedVisit,
  inMarch,
  liveSet,
  madeDone,
  madeMorningChecks,
  type Past,
} from '../../support/advised-person.ts';
import { madeExercise } from '../../support/plan-items.ts';

const today = inMarch(31);

function advised(changes: Partial<Visit> = {}, past: Past = {}): Advice {
  return adviceFor(advisedPerson(past), advisedVisit(changes), today);
}

function right(changes: Partial<Visit> = {}, past: Past = {}): AdviceCard {
  return advised(changes, past).cards.find(({ leg }) => leg === 'right')!;
}

function part({ why }: AdviceCard, title: { readonly text: string }): readonly string[] {
  return why.find((one) => one.title === title.text)?.lines ?? [];
}

const safety = advisedVisit().safety!;
const proposedBy = 'guidance.start-single/1/common-practice/right/single';
const line = madeExercise('one-leg-raise', {
  side: 'right',
  repetitions: 10,
  perWeek: 7,
  from: inMarch(20),
  proposedBy,
});
const plans = [{ day: 20, items: [line] }];
const done = Array.from({ length: 11 }, (_, i) => madeDone('item-20-0', 20 + i));
const mornings = madeMorningChecks(1, 31);

test('of each leg a start is proposed, the left one first, with its lines and how its load is found', () => {
  const { cards, nextSteps } = advised();
  expect(nextSteps).toEqual([]);
  expect(cards.map(({ leg, standing }) => [leg, standing])).toEqual([
    ['left', 'stands'],
    ['right', 'stands'],
  ]);
  const [, own] = cards;
  expect(own?.title).toBe(GUIDANCE_SENTENCES['start-single'].text);
  expect(own?.proposedBy).toBe(proposedBy);
  expect(own?.lines.map(({ code, side, sets, repetitions, load }) => [code, side, sets, repetitions, load])).toEqual([
    // two fewer than the 14 that counted
    ['one-leg-raise', 'right', 3, 12, null],
    ['seated-raise', 'both', 3, 15, null],
  ]);
  for (const item of own?.lines ?? []) {
    expect([item.proposedBy, item.decision, item.from]).toEqual([proposedBy, 'accepted', today]);
  }
  expect(own?.also).toHaveLength(1);
});

test('what is done with both legs goes by the sore one', () => {
  const [left] = advised().cards;
  expect(left?.lines.map(({ code, side }) => [code, side])).toEqual([['loaded-one-leg-raise', 'left']]);
  expect(left?.lines[0]?.load).toEqual({ value: 5, unit: 'kg' });
  expect(part(left, ADVICE_WORDS['why-blocked'])).toEqual([
    'Seated heel raises: done with both legs, so it goes by the more careful leg',
  ]);
});

test('a visit of one leg has a proposal for that leg alone', () => {
  expect(advised({ only: 'left' }).cards.map(({ leg }) => leg)).toEqual(['left']);
});

test.each([
  ['a ticked line', { safety: { ...safety, ticked: ['safety.fluoroquinolone'] } }],
  ['a list that was not gone through', { safety: null }],
  ['a list of which the end was not in view', { safety: { ...safety, seenWhole: false } }],
  [
    'a raise that is lost suddenly',
    { ladder: { left: { answers: [], sudden: null }, right: { answers: [1, 1, 'could-not' as const], sudden: true } } },
  ],
  ['no raise at all on one leg', { sets: [liveSet('left', 27), liveSet('right', 0)] }],
] as const)('under a lock nothing that loads is proposed, only the next step: %s', (_, changes) => {
  const { cards, nextSteps } = advised(changes);
  expect(cards).toEqual([]);
  expect(nextSteps.length).toBeGreaterThan(0);
});

test('a ticked line says its own next step, and a list that was not asked that it is to be', () => {
  const ticked = advised({ safety: { ...safety, ticked: ['safety.fluoroquinolone'] } });
  expect(ticked.nextSteps.join(' ')).toMatch(/No loading test and no loading plan until the prescriber was asked/);
  expect(advised({ safety: null }).nextSteps).toEqual([GUIDANCE_SETTLED_BY.line.text]);
});

const { right: told } = advisedVisit().history!.legs;
const bothTold = { legs: { left: told, right: told }, about: [] };
const bothFourteen = [liveSet('left', 14), liveSet('right', 14)];

test('what is done with both legs waits for a sore leg of which it is not known where it begins', () => {
  const sore = { left: 'mid-portion', right: 'mid-portion' } as const;
  const codes = (changes: Partial<Visit>) =>
    right({ sore, sets: bothFourteen, ...changes }).lines.map(({ code }) => code);
  expect(codes({ history: bothTold })).toEqual(['one-leg-raise', 'seated-raise']);
  expect(codes({})).toEqual(['one-leg-raise']);
});

test.each(['insertion', 'both-places'] as const)(
  'a tendon that is sore at the %s is proposed no heel below level',
  (sore) => {
    const { cards } = advised({ sore: { left: sore, right: sore }, history: bothTold, sets: bothFourteen });
    const lines = cards.flatMap((one) => one.lines);
    expect(lines.length).toBeGreaterThan(2);
    for (const { code, lowestFootDeg } of lines) {
      expect(lowestFootDeg, String(code)).toBeGreaterThanOrEqual(0);
      expect(code).not.toBe('step-raise');
    }
  },
);

test('a simulated set gives no proposal, and the card says that it tests nobody', () => {
  const set = liveSet('right', 14);
  const own = right({
    sets: [{ ...set, choice: { ...set.choice, origin: 'simulated' } }],
    ladder: { left: { answers: [], sudden: null }, right: { answers: [], sudden: null } },
  });
  expect([own.proposedBy, own.standing, own.lines]).toEqual([null, null, []]);
  expect(own.title).toBe(ADVICE_WORDS['nothing-simulated'].text);
});

test('an answer that is missing keeps a level from being proposed, and is told with what would settle it', () => {
  const { history } = advisedVisit();
  const irritability = { ...history!.legs.right.irritability, settles: null };
  const own = right({
    history: { ...history!, legs: { ...history!.legs, right: { ...history!.legs.right, irritability } } },
  });
  expect(own.standing).toBeNull();
  // what would settle it stands on the card itself
  expect(own.also).toEqual(part(own, ADVICE_WORDS['why-lacking']));
  expect(part(own, ADVICE_WORDS['why-lacking'])).toContain(
    `Pain and stiffness back to usual by the next morning: not known (not asked in this visit). ${GUIDANCE_SETTLED_BY['settles-overnight'].text}`,
  );
});

test('a count that ended for pain waits, since the leg may be able to do more', () => {
  const end = { reason: 'pain', painPeak: 3, exertion: 5 } as const;
  const own = right({ sets: [liveSet('right', 8, { end })] });
  expect([own.standing, own.title]).toEqual(['waits', GUIDANCE_SENTENCES['start-learn'].text]);
  expect(own.sure).toBe(ADVICE_WORDS.waits.text);
  expect(part(own, ADVICE_WORDS['why-lacking']).join(' ')).toMatch(/its bounds lie on both sides/);
});

test('that a leg that is not sore is trained too stands among its other ways with lines, and not a second time below', () => {
  const title = GUIDANCE_SENTENCES['train-both'].text;
  const left = advised().cards.find(({ leg }) => leg === 'left')!;
  expect(left.options.filter((one) => one.title === title)).toHaveLength(1);
  expect(left.beside.filter((one) => one.startsWith(title))).toEqual([]);
});

test('why tells what was read with its place, the source in plain words, whose rule it is, and what would change it', () => {
  const own = right();
  expect(part(own, ADVICE_WORDS['why-from'])).toContain(
    'Single-leg raises that counted, at body weight: 14 (the heel raise test, in this visit)',
  );
  const rules = part(own, ADVICE_WORDS['why-rule']).join(' ');
  expect(rules).toMatch(/Silbernagel 2020 J Athl Train 55:438, table 2; adapted\. Read in the paper\./);
  expect(rules).toContain(
    'Numbers in it: 10 (Raises on one leg that ask for the floor level), 20 (Raises on one leg that ask for the heavy level). Common practice, no source.',
  );
  expect(part(own, ADVICE_WORDS['why-whose'])).toEqual([ADVICE_WORDS.ours.text.replace('{version}', '1')]);
  expect(part(own, ADVICE_WORDS['why-change'])[0]).toMatch(/^At least 20 raises that count/);
  expect(part(own, ADVICE_WORDS['why-sure'])).toEqual([ADVICE_WORDS.stands.text]);
});

test('with a programme under way no start is proposed: one variable goes up where all went as planned', () => {
  const own = right({}, { plans, done, mornings });
  expect(own.title).toBe(GUIDANCE_SENTENCES['change-repetitions'].text);
  expect(own.lines.map(({ code, repetitions, sets, load }) => [code, repetitions, sets, load])).toEqual([
    ['one-leg-raise', 11, 3, null],
  ]);
  expect(own.proposedBy).toMatch(/^guidance\.change-repetitions\/1\/.*\/right\/single$/);
});

test('a morning that was too much is answered by less, on the same lines', () => {
  const worse = mornings.map((one) => (one.on === inMarch(31) ? { ...one, pain: { left: 1, right: 5 } } : one));
  const own = right({}, { plans, done, mornings: worse });
  expect(own.title).toMatch(/^Suggestion: 20 to 30 % less/);
  expect(own.lines.map(({ repetitions }) => repetitions)).toEqual([8]);
});

test('sessions without a log are asked about, and nothing else is proposed', () => {
  const own = right({}, { plans, done: done.slice(0, 6), mornings });
  expect(own.title).toMatch(/^Ask why first/);
  expect([own.lines, own.none]).toEqual([[], null]);
});

test('days that were too much lead one level down, where the level is known', () => {
  const hard = done.map((one) => (Number(one.on.slice(8)) > 28 ? { ...one, painDuring: 7 } : one));
  const own = right({}, { plans, done: hard, mornings });
  expect(own.title).toMatch(/^Suggestion: go one level down/);
  expect(own.lines.map(({ code }) => code)).toEqual(['two-leg-raise', 'seated-raise', 'one-leg-lowering']);
  expect(own.proposedBy).toMatch(/^guidance\.step-drop\//);
  const byHand = [{ day: 20, items: [{ ...line, proposedBy: null }] }];
  const unknown = right({}, { plans: byHand, done: hard, mornings });
  // one level down of which one is not known: less of the same, which waits
  expect([unknown.lines.length, unknown.title.includes('one level down')]).toEqual([1, false]);
});

test('what is asked or tried beside it says how well it is supported, and is no line', () => {
  const own = right();
  expect(own.beside).toEqual(['Suggestion: heel lifts of 12 mm can be tried. Read in the paper.']);
  const tried = advisedVisit({ id: 'before', begunAt: `${inMarch(19)}T09:00:00.000+01:00` });
  const { beside } = right({}, { visits: [tried], mornings: madeMorningChecks(10, 20) });
  expect(beside.join(' ')).toMatch(/Next rung to try: raises on one leg at the edge of a step/);
  const heel = right(
    { sore: { left: 'no', right: 'insertion' } },
    { visits: [tried], mornings: madeMorningChecks(10, 20) },
  );
  expect(heel.beside.join(' ')).not.toMatch(/step/);
});

test('a line of the safety list that asks for a note is told once, of the person, and what rests on no answer is not', () => {
  const { beside } = advised({ safety: { ...safety, ticked: ['safety.inflammatory'] } });
  expect(advised().beside).toEqual([]);
  expect(beside).toHaveLength(1);
  expect(beside[0]).toMatch(/^A line of the safety list asks for a note/);
});

test("what goes by a clinic's own rule says so on its card and in its reasons, and the version that is kept tells it", () => {
  const own = { number: 'guidance.raises-ten', unit: '1', published: 10, value: 15, reason: 'older people', by: 'K4' };
  const { rules } = clinicRules(GUIDANCE_RULES, [{ ...own, day: inMarch(2) }]);
  const { cards } = adviceFor(advisedPerson(), advisedVisit(), today, rules);
  const card = cards.find(({ leg }) => leg === 'right')!;
  expect(card.title).toBe(GUIDANCE_SENTENCES['start-learn'].text);
  expect(card.edited).toEqual([
    'By a rule of this clinic: Raises on one leg that ask for the floor level is 15 since 2 Mar 2026. As published it is 10.',
  ]);
  expect(card.proposedBy).toMatch(/^guidance\.start-learn\/1\+2026-03-02\/common-practice\/right\/learn$/);
  expect(card.lines[0]?.proposedBy).toBe(card.proposedBy);
  expect(part(card, ADVICE_WORDS['why-whose'])[0]).toContain('Reason: older people');
  expect(right().edited).toEqual([]);
});

const none = [liveSet('left', 27), liveSet('right', 0)];
const lookedAt = (answer: string) => ({
  factsTold: [{ fact: 'rupture-looked', leg: 'right', answer, at: `${inMarch(31)}T09:10:00.000+02:00` }] as const,
});

test('not one raise is a lock that opens where the signs of a rupture were looked for and not found', () => {
  const locked = advised({ sets: none });
  expect(locked.asks.map(({ fact, leg, answer }) => [fact, leg, answer])).toEqual([['rupture-looked', 'right', null]]);
  const open = right({ sets: none, ...lookedAt('clear') });
  expect(open.title).toBe(GUIDANCE_SENTENCES['start-calm'].text);
  expect(open.asks).toMatchObject([{ fact: 'rupture-looked', answer: 'clear' }]);
  const found = advised({ sets: none, ...lookedAt('suspected') });
  expect([found.cards, found.asks.map(({ answer }) => answer)]).toEqual([[], ['suspected']]);
});

test('why sessions were missed is asked on the card, and an answer lets the dose go on', () => {
  const few = done.slice(0, 6);
  const asked = right({}, { plans, done: few, mornings });
  expect(asked.title).toMatch(/^Ask why first/);
  expect(asked.asks.map(({ fact }) => fact)).toContain('missed-asked');
  const told = { fact: 'missed-asked', leg: 'right', answer: 'ill', at: `${inMarch(31)}T09:10:00.000+02:00` } as const;
  const after = right({ factsTold: [told] }, { plans, done: few, mornings });
  expect(after.title).not.toMatch(/^Ask why first/);
  expect(after.asks.find(({ fact }) => fact === 'missed-asked')?.answer).toBe('ill');
});

test('a change that waits for something that a tap settles asks it, and no more than comes before it', () => {
  const full = { ...line, repetitions: 15 };
  const before = {
    plans: [{ day: 20, items: [full] }],
    done: done.map((one) => ({ ...one, repetitions: 15 })),
    mornings,
  };
  const { left, right: own } = advisedVisit().history!.legs;
  const legs = { left, right: { ...own, lastFlare: 'longer-ago-or-never' as const } };
  const facts = right({ history: { legs, about: [] } }, before).asks.map(({ fact }) => fact);
  expect(facts).toEqual(['level-two-met']);
});

test('what was made less comes back as it was', () => {
  const eased = { ...line, repetitions: 8, proposedBy: 'guidance.step-reduce/1/common-practice/right/single' };
  const less = [
    { day: 10, items: [{ ...line, repetitions: 12 }] },
    { day: 20, items: [eased] },
  ];
  const card = right({}, { plans: less, done: done.map((one) => ({ ...one, repetitions: 8 })), mornings });
  expect(card.title).toBe(GUIDANCE_SENTENCES['change-back'].text);
  expect(card.lines.map(({ repetitions, from }) => [repetitions, from])).toEqual([[12, today]]);
});
