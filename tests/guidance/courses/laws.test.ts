import { LEGS } from '@surae/guidance';
import { GUIDANCE_RULES } from '@surae/shared';
import { COURSE_PEOPLE, type CourseName } from '@surae/simulation';
import { describe, expect, test } from 'vitest';
import { isLong } from '../../support/runs.ts';
import { type CourseDay, courseOf } from './course.ts';

const seeds = Array.from({ length: isLong ? 40 : 1 }, (_, i) => i + 1);
const names = Object.keys(COURSE_PEOPLE) as readonly CourseName[];
const made = new Map<string, readonly CourseDay[]>();

function courses(name: CourseName): readonly (readonly CourseDay[])[] {
  return seeds.map((seed) => {
    const key = `${name} ${seed}`;
    const course = made.get(key) ?? courseOf(COURSE_PEOPLE[name], seed);
    made.set(key, course);
    return course;
  });
}

const ups = new Set(
  GUIDANCE_RULES.filter(({ proposes }) => proposes.touches.includes('increase')).map(({ code }) => code),
);
const isUp = (one: CourseDay): boolean => one.taken.some(({ rule }) => ups.has(rule));
const isEased = (one: CourseDay): boolean =>
  one.taken.some(({ code }) => ['reduce', 'drop', 'lightest'].includes(code));
const planned = (course: readonly CourseDay[]) => course.filter(({ isDone }) => isDone !== null);
const levels = (course: readonly CourseDay[]) => course.map(({ plan }) => plan.level ?? 0);

describe.each(names)('%s', (name) => {
  test('one thing goes up at a time, after two logged sessions at the dose, and one level at a time', () => {
    for (const course of courses(name)) {
      course.forEach((one, day) => {
        expect(one.taken.filter(({ code }) => code !== 'ask').length).toBeLessThanOrEqual(1);
        if (!isUp(one)) return;
        const since = course.slice(0, day).findLastIndex(({ taken }) => taken.some(({ code }) => code !== 'ask'));
        expect(course.slice(since, day).filter(({ isLogged }) => isLogged).length, `day ${day}`).toBeGreaterThan(1);
        const [before, now] = [course[day - 1].plan.level ?? 0, one.plan.level ?? 0];
        expect(now - before, `day ${day}`).toBeLessThanOrEqual(before === 2 ? 2 : 1);
      });
    }
  });

  test('nobody goes down two levels on the sessions of one', () => {
    for (const course of courses(name)) {
      course.forEach((one, day) => {
        if (!one.taken.some(({ code }) => code === 'drop')) return;
        const before = course.slice(0, day).findLastIndex(({ taken }) => taken.some(({ code }) => code === 'drop'));
        if (before < 0) return;
        expect(course.slice(before, day).filter(({ isLogged }) => isLogged).length, `day ${day}`).toBeGreaterThan(1);
      });
    }
  });

  test('no week goes by in which the same is proposed and undone', () => {
    for (const course of courses(name)) {
      course.forEach(({ plan }, day) => {
        const lately = course.slice(Math.max(0, day - 6), day + 1);
        const raised = lately.filter(({ taken }) => taken.some(({ rule }) => rule.startsWith('change-to-'))).length;
        expect(raised, `day ${day}, level ${plan.level}`).toBeLessThanOrEqual(1);
      });
    }
  });
});

test('who is steady comes to heavy slow raises within twelve weeks, nineteen in twenty, and not within three', () => {
  const first = courses('steady').map((course) => levels(course).findIndex((level) => level >= 4));
  const reached = first.filter((day) => day >= 0);
  // of forty seeds two were held back by mornings that rose by chance
  expect(reached.length / first.length).toBeGreaterThanOrEqual(0.95);
  expect(Math.min(...reached)).toBeGreaterThan(21);
});

test('a flare is answered by less within three days, and the load comes back', () => {
  for (const course of courses('flare')) {
    const { day } = COURSE_PEOPLE.flare.setback;
    expect(course.slice(day, day + 4).some(isEased)).toBe(true);
    const before = Math.max(...course.slice(day - 7, day).map(({ load }) => load));
    // what goes up in that week is within the lower level, or what was made less
    const eased = day + course.slice(day).findIndex(isEased);
    expect(Math.max(...course.slice(eased, eased + 7).map(({ load }) => load))).toBeLessThanOrEqual(before);
    expect(Math.max(...course.slice(day + 8).map(({ load }) => load))).toBeGreaterThanOrEqual(before);
    expect(Math.min(...levels(course))).toBeGreaterThan(0);
  }
});

test('who does four in ten is asked about it, and nothing goes up on two weeks of which more was left out than is let go', () => {
  for (const course of courses('few')) {
    expect(course.some(({ taken }) => taken.some(({ code }) => code === 'ask'))).toBe(true);
    course.forEach((one, day) => {
      const lately = planned(course.slice(Math.max(0, day - 14), day));
      const done = lately.filter(({ isDone }) => isDone === true).length;
      if (lately.length >= 4 && done / lately.length < 0.7) expect(isUp(one), `day ${day}`).toBe(false);
    });
    expect(levels(course).at(-1)).toBeLessThanOrEqual(2);
  }
});

test('two sore heel bones never go below level, and go by the leg that bears less', () => {
  for (const course of courses('bothHeels')) {
    for (const { guided, taken, plan } of course) {
      const low = guided.proposals.filter(({ rule }) =>
        rule.proposes.touches.some((touch) => ['below-level', 'step', 'stretch'].includes(touch)),
      );
      expect(low).toEqual([]);
      expect(plan.level).not.toBe(3);
      for (const { rule } of taken.filter((one) => ups.has(one.rule))) {
        for (const leg of LEGS) {
          const step = guided.proposals.find((one) => one.about === 'step' && one.leg === leg);
          expect(step?.rule.code).toBe('step-progress');
        }
        const judged = guided.proposals.filter((one) => one.about === 'change').map((one) => one.rule);
        const [left, right] = judged.map(({ rank }) => rank);
        const own = GUIDANCE_RULES.find(({ code }) => code === rule)?.rank ?? 0;
        expect(own).toBeGreaterThanOrEqual(Math.max(left, right));
      }
    }
  }
});

test('a runner runs only where everything asked for is met, never over the cap, and is told that the race is out of reach', () => {
  for (const course of courses('runner')) {
    const ran = course.filter(({ run }) => run?.ranM != null);
    expect(ran.length).toBeGreaterThan(2);
    let longest = 0;
    for (const { run, day } of ran) {
      expect(run?.next.step).not.toBe('not-yet');
      // a tenth more than the longest, with a first kilometre that may always be run
      expect(run?.ranM ?? 0, `day ${day}`).toBeLessThanOrEqual(Math.max(1000, 1.1 * longest));
      longest = Math.max(longest, run?.ranM ?? 0);
      expect(course[day].isDone).toBeNull();
      const heavyBefore = course[day - 1].isDone === true && course[day - 1].plan.level === 4;
      expect(heavyBefore, `day ${day}`).toBe(false);
    }
    const reach = course.map(({ run }) => run?.reach ?? null).filter((one) => one !== null);
    const { day: race, metres } = COURSE_PEOPLE.runner.race;
    expect(longest < metres && reach.length > 0 && reach[0].held === 'yes', `race on day ${race}`).toBe(false);
    expect(reach.at(-1)?.held).toBe('no');
  }
});

test('who runs again goes on with heavy raises: no fortnight of them without a session', () => {
  let fortnights = 0;
  for (const course of courses('runner')) {
    course.forEach((_, day) => {
      const fortnight = course.slice(day, day + 14);
      if (fortnight.length < 14 || fortnight.some(({ plan }) => (plan.level ?? 0) < 4)) return;
      fortnights++;
      expect(fortnight.filter(({ isDone }) => isDone === true).length, `from day ${day}`).toBeGreaterThan(0);
    });
  }
  expect(fortnights).toBeGreaterThan(10 * seeds.length);
});

test('nobody who runs is sent to heavy raises on the day of a run, or on the day after it', () => {
  let near = 0;
  for (const course of courses('runner')) {
    course.forEach((one, day) => {
      const isNear = [one, course[day - 1]].some((run) => run?.run?.ranM != null);
      if (!isNear || one.plan.level !== 4) return;
      near++;
      expect(one.isDone, `day ${day}`).toBeNull();
    });
  }
  expect(near).toBeGreaterThan(2 * seeds.length);
});

test('who has paused running is not told to keep it, and who runs is not told to begin', () => {
  for (const { guided, run } of courses('runner').flat()) {
    const codes = guided.proposals.map(({ rule }) => rule.code);
    const isBegun = run?.next.step !== 'not-yet' && run?.next.step !== 'first';
    if (!isBegun) expect(codes.filter((code) => ['running-low', 'running-moderate'].includes(code))).toEqual([]);
    else expect(codes).not.toContain('first-run');
  }
});

test('nothing goes up where the morning after one of the last two sessions was not told', () => {
  let untold = 0;
  for (const course of courses('silent')) {
    course.forEach((one, day) => {
      const two = course
        .slice(0, day)
        .filter(({ isLogged }) => isLogged)
        .slice(-2);
      const isTold = two.every((session) => course[session.day + 1].mornings.left !== null);
      if (isTold) return;
      untold++;
      expect(isUp(one), `day ${day}`).toBe(false);
    });
  }
  expect(untold).toBeGreaterThan(20 * seeds.length);
});

test('a line of the safety list that is told in week 3 leaves nothing that loads, and what comes after it begins lower', () => {
  const { day: from, until } = COURSE_PEOPLE.tablets.line;
  for (const course of courses('tablets')) {
    for (const { guided, taken, load } of course.slice(from, until)) {
      expect(guided.locked).toBe(true);
      expect(guided.proposals.filter(({ rule }) => rule.proposes.touches.includes('loading'))).toEqual([]);
      expect([taken, load]).toEqual([[], 0]);
    }
    const after = course.slice(until).find(({ isDone }) => isDone !== null);
    expect(after?.plan.level).toBeLessThan(course[from - 1].plan.level ?? 0);
  }
});

test('without one raise nothing begins before a rupture was looked for, and then it begins calm and goes on', () => {
  for (const course of courses('noRaise')) {
    expect([course[0].guided.locked, course[0].plan.level]).toEqual([true, null]);
    expect(course[1].plan.level).toBe(0);
    expect(Math.max(...levels(course))).toBeGreaterThan(0);
    // what does not go on for weeks is asked about
    const stuck = course.filter(
      ({ plan, day }) => plan.level !== null && plan.level < 4 && day - plan.levelSince >= 28,
    );
    for (const { guided } of stuck) {
      expect(guided.proposals.map(({ rule }) => rule.code)).toEqual(
        expect.arrayContaining([expect.stringMatching(/-long$/)]),
      );
    }
  }
});
