import type { FlareThreshold } from '@surae/guidance';
import { FLARE_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import type { FlarePast } from '../../../apps/dashboard/src/course/flare-past.ts';
import { flareHead, flareRest, flareRows, flareSentences } from '../../../apps/dashboard/src/course/flare-words.ts';
import { inMarch } from '../../support/advised-person.ts';

const ground = { weeks: 7.57, flares: 6, steady: 16, unknown: 3 };
const yes: FlareThreshold = {
  held: 'yes',
  ground,
  threshold: 7.15,
  interval: [6.7, 7.52],
  confidence: 0.95,
  doubts: ['days-not-independent', 'tolerance-unchanged', 'load-only'],
};
const no: FlareThreshold = { held: 'cannot-tell', ground: { ...ground, flares: 1 }, missing: ['few-flares'] };
const past = (found: FlareThreshold, kind: FlarePast['kind'] = 'exercises'): FlarePast => ({
  side: 'right',
  kind,
  found,
  unlogged: [],
  oftenNotSaid: false,
  sessions: [
    { on: inMarch(3), load: 4.5, isFlare: false },
    { on: inMarch(5), load: null, isFlare: true },
    { on: inMarch(7), load: 7.5, isFlare: null },
  ],
});

test('a threshold never stands without its interval, what it rests on and what it cannot say', () => {
  expect(flareSentences(past(yes))).toEqual([
    'About 7.2 min of a raise (95 %: 6.7 to 7.5 min of a raise).',
    'What it rests on: weeks 7.6, flares 6, steady mornings 16, days of which load or morning is not known 3.',
    FLARE_WORDS['cannot-say'].text,
  ]);
});

test('without one every reason is told with what is asked for, and what there is so far', () => {
  const told = flareSentences(past({ ...no, missing: ['few-flares', 'few-weeks'] }));
  expect(told).toHaveLength(3);
  expect(told[0]).toMatch(/at least 5 flares/);
  expect(told[1]).toMatch(/at least 6 weeks/);
  expect(told[2]).toMatch(/^So far: weeks 7\.6, flares 1, /);
  for (const line of told) expect(line).not.toMatch(/\d min/);
});

test('what is not known is a word in the table', () => {
  expect(flareRows(past(no, 'running'))).toEqual([
    ['7 Mar 2026', '7.5 min of running', 'not known'],
    ['5 Mar 2026', 'not known', 'flare next morning'],
    ['3 Mar 2026', '4.5 min of running', 'steady next morning'],
  ]);
  expect(flareHead(past(no, 'running'))).toBe('Right, running');
});

test('what it takes for granted is told where one is found, and what a flare is always', () => {
  expect(flareRest([past(yes), past(yes)])).toHaveLength(5);
  const [flare, source, ...rest] = flareRest([past(no)]);
  expect(rest).toEqual([]);
  expect(flare).toMatch(/pain above 5 of 10, or more than 2 above/);
  expect(source).toMatch(/Venzon and Moolgavkar 1988.*Common practice, no source\.$/);
});

test('planned sessions without a log are told as not known, whether a threshold is told or not', () => {
  const one = { ...past(yes), unlogged: [inMarch(5)] };
  expect(flareSentences(one)[2]).toMatch(/^One planned session has no log\. Nobody knows its load/);
  const many = { ...past(no), unlogged: [5, 9, 11, 13].map(inMarch), oftenNotSaid: true };
  const told = flareSentences(many);
  expect(told.at(-2)).toMatch(/^Planned sessions without a log: 4\. .*no days without load\.$/);
  expect(told.at(-1)).toMatch(/does not say how often/);
  // such a day is due by then, and no day on which something was done
  expect(flareRows(many)[1]).toEqual(['5 Mar 2026', 'due by then, not written down', 'flare next morning']);
});
