import type { Visit } from '@surae/casebook';
import { clinicRules } from '@surae/guidance';
import { ACTIVITY_WORDS, ADVICE_WORDS, GUIDANCE_RULES, GUIDANCE_SENTENCES } from '@surae/shared';
import { expect, test } from 'vitest';
import { activityFor } from '../../../apps/dashboard/src/advice/activity-cards.ts';
import {
  advisedPerson,
  advisedVisit,
  inMarch,
  madeMorningChecks,
  madeRun,
  type Past,
} from '../../support/advised-person.ts';
import { madeRunLimit } from '../../support/plan-items.ts';
import { MODERATE } from '../../support/told-visit.ts';

const today = inMarch(31);
const activity = (past: Past = {}, changes: Partial<Visit> = {}) =>
  activityFor(advisedPerson(past), advisedVisit(changes), today);
const running = (past?: Past, changes?: Partial<Visit>) => activity(past, changes).cards[0];
const safety = advisedVisit().safety!;
const told = advisedVisit().history!;
const high: Partial<Visit> = {
  history: {
    ...told,
    legs: { ...told.legs, right: { ...told.legs.right, irritability: { ...MODERATE, peakPain: 7 } } },
  },
};

test('a runner of moderate irritability is proposed less, with whose rule it is, its mark and what would change it', () => {
  const card = running({ runs: [madeRun(28)] });
  expect(card).toMatchObject({
    about: 'running',
    proposedBy: 'guidance.running-moderate/1/common-practice/right/-',
    standing: 'stands',
  });
  const titles = card.why.map(({ title }) => title);
  for (const code of ['why-from', 'why-rule', 'why-sure', 'why-whose', 'why-change'] as const)
    expect(titles).toContain(ADVICE_WORDS[code].text);
  expect(titles.at(-1)).toBe(ACTIVITY_WORDS['why-numbers'].text);
  expect(card.why.flatMap(({ lines }) => lines).join(' ')).toContain('Common practice, no source.');
});

test('high irritability pauses runs: no cap and no next run stand beside it', () => {
  const { cards, parts } = activity({ runs: [madeRun(28)] }, high);
  expect(cards[0]?.title).toMatch(/no running for 7 to 14 days/);
  expect(cards[0]?.lines.map(({ of, code }) => code ?? of)).toEqual(['running', 'cycle-swim']);
  expect(parts.map(({ code }) => code)).not.toEqual(expect.arrayContaining(['cap']));
  expect(cards[1]?.lines.map(({ code }) => code)).toContain('no-ladders');
});

test('under a lock no run is proposed, nor a cap, and a pause still is', () => {
  const ticked = { safety: { ...safety, ticked: ['safety.fluoroquinolone'] } };
  const { cards, parts } = activity({ runs: [madeRun(28)] }, ticked);
  expect(cards[0]).toMatchObject({ title: ACTIVITY_WORDS.locked.text, lines: [], proposedBy: null });
  expect(parts).toEqual([]);
  const paused = activity({ runs: [madeRun(28)] }, { ...ticked, ...high }).cards[0];
  // neither cycling nor a test of what it bears stands beside it
  expect(paused?.lines.map(({ of, code }) => code ?? of)).toEqual(['running']);
  expect([paused?.title, ...(paused?.also ?? [])].join(' ')).not.toMatch(/cycle|bears/);
  expect(paused?.lines.find(({ of }) => of === 'running')?.run?.mostS).toBe(0);
  // a list that was not gone through is a lock too
  expect(activity({}, { safety: null }).cards[0]?.lines).toEqual([]);
});

test('who paused and has not met what is asked for is told to go by the list', () => {
  const card = running({ plans: [{ day: 20, items: [madeRunLimit({ mostS: 0 })] }] });
  expect(card).toMatchObject({ title: ACTIVITY_WORDS['begin-list'].text, proposedBy: null, lines: [] });
});

test('of whom it is not known whether they run no next run is told beside what is proposed, and of who pauses it is', () => {
  const codes = (changes: Partial<Visit>, past: Past = {}) => activity(past, changes).parts.map(({ code }) => code);
  const answer = (answer: string): Partial<Visit> => ({
    factsTold: [{ fact: 'running-now', leg: null, answer, at: `${today}T09:10:00+02:00` }],
  });
  expect(codes({})).not.toContain('next');
  expect(codes(answer('running'))).not.toContain('next');
  expect(codes(answer('paused'))).toContain('next');
  expect(codes({}, { runs: [madeRun(28)] })).toContain('next');
});

test('on the day after a run the rest before heavy raises is told with its mark', () => {
  const part = activity({ runs: [madeRun(30, { pain: { left: 0, right: 0 } })] }).parts.find(
    ({ code }) => code === 'recovery',
  );
  const rule = GUIDANCE_SENTENCES['recovery-after-run'].text.replace('{days}', '2');
  expect(part?.lines).toEqual([`${rule} Common practice, no source.`]);
});

test('both legs sore: it goes by the more irritable one, and says so', () => {
  const legs = { left: { ...told.legs.left, irritability: MODERATE }, right: high.history!.legs.right };
  const changes = { sore: { left: 'mid-portion', right: 'mid-portion' }, history: { ...told, legs } } as const;
  const card = running({ runs: [madeRun(28)] }, changes);
  expect(card.proposedBy).toMatch(/running-high.*\/right\//);
  expect(card.also).toContain(ACTIVITY_WORDS.governs.text.replace('{leg}', 'right leg'));
});

test('the cap is open until somebody says that every run of its days is written down, and that is asked', () => {
  const runs = [madeRun(28)];
  const open = activity({ runs });
  expect([open.asked, open.noted]).toEqual([{ from: inMarch(1), until: inMarch(30) }, null]);
  const cap = (of: ReturnType<typeof activity>) => of.parts.find(({ code }) => code === 'cap')?.lines ?? [];
  expect(cap(open).some((line) => line.includes('cannot be told'))).toBe(true);
  const whole = activity({ runs, runsWhole: [{ from: inMarch(1), until: inMarch(30) }] });
  expect([whole.asked, whole.noted]).toEqual([null, 'whole-0']);
  expect(cap(whole).some((line) => line.includes('cannot be told'))).toBe(false);
  // a day less is not all of them
  expect(activity({ runs, runsWhole: [{ from: inMarch(2), until: inMarch(30) }] }).asked).not.toBeNull();
  // a pause has no cap, and asks nothing
  expect(activity({ runs }, high).asked).toBeNull();
});

test("what goes by a clinic's own rule says so on the card of running too", () => {
  const own = {
    number: 'guidance.running-less-least',
    unit: '%',
    published: 30,
    value: 40,
    reason: 'runners',
    by: 'K4',
  };
  const { rules } = clinicRules(GUIDANCE_RULES, [{ ...own, day: inMarch(2) }]);
  const [card] = activityFor(advisedPerson(), advisedVisit(), today, rules).cards;
  expect(card?.title).toContain('40 to 50 % less');
  expect(card?.also[0]).toMatch(/^By a rule of this clinic: .* is 40 % since 2 Mar 2026\. As published it is 30 %\.$/);
  expect(running().also).toEqual([]);
});

test("the cap of a run goes by the clinic's own share, in the line, beside the cap and in why; so does the next run", () => {
  const number = {
    number: 'guidance.run-growth',
    unit: '1',
    published: 0.1,
    value: 0.05,
    reason: 'ours grow slowly',
    by: 'K4',
    day: inMarch(2),
  };
  const { rules } = clinicRules(GUIDANCE_RULES, [number]);
  const low = {
    provokedBy: 'fast-or-heavy-load',
    peakPain: 1,
    settles: 'under-12-hours',
    stiffness: 'under-10-minutes',
    restPain: 'none',
    trend: 'steady-or-better',
  } as const;
  const legs = { ...told.legs, right: { ...told.legs.right, irritability: { ...MODERATE, ...low } } };
  const past = { runs: [madeRun(26), madeRun(28)], mornings: madeMorningChecks(10, 31) };
  const of = (used?: typeof rules) =>
    activityFor(advisedPerson(past), advisedVisit({ history: { ...told, legs } }), today, used);
  const minutes = ({ cards }: ReturnType<typeof of>) => cards[0]?.lines.find(({ run }) => run != null)?.run?.mostS;
  // half an hour: 33 min by a tenth, 31.5 by a twentieth, in whole minutes
  expect([minutes(of()), minutes(of(rules))]).toEqual([1980, 1860]);
  const [card] = of(rules).cards;
  const said =
    'By a rule of this clinic: Share by which a run may be longer than the longest before it is 0.05 since 2 Mar 2026. As published it is 0.1.';
  expect(card?.also).toContain(said);
  const cap = of(rules).parts.find(({ code }) => code === 'cap')?.lines ?? [];
  expect(cap[0]).toMatch(/^31 min: 5 % over the longest/);
  expect(cap).toContain(said);
  expect(of(rules).parts.find(({ code }) => code === 'next')?.lines[0]).toContain('31 min');
  const whose = card?.why.find(({ title }) => title === ADVICE_WORDS['why-whose'].text)?.lines.join(' ');
  expect(whose).toContain('K4');
  expect(whose).toContain('ours grow slowly');
  // as published nothing of it is said
  expect(JSON.stringify(of())).not.toContain('By a rule of this clinic');
});

test('a rest that a clinic made longer is looked for as far back as it reaches', () => {
  const number = {
    number: 'guidance.recovery-days-high',
    unit: 'd',
    published: 3,
    value: 5,
    reason: 'ours rest longer',
    by: 'K4',
    day: inMarch(2),
  };
  const { rules } = clinicRules(GUIDANCE_RULES, [number]);
  // a run of five days ago that loaded the tendon heavily, four days before a light one of yesterday
  const runs = [madeRun(27, { pain: { left: 0, right: 6 } }), madeRun(30, { pain: { left: 0, right: 0 } })];
  const of = (used?: typeof rules) =>
    activityFor(advisedPerson({ runs }), advisedVisit(), today, used).parts.find(({ code }) => code === 'recovery')
      ?.lines ?? [];
  expect(of().join(' ')).not.toContain('heavily');
  expect(of(rules).join(' ')).toContain('loaded the tendon heavily, 5 days');
});
