import {
  FLARE_NUMBERS,
  FULL_RETURN,
  GUIDANCE_RULES,
  KEEP_UP,
  RUN_LOADS,
  RUNNING_NUMBERS,
  START_RUNNING,
} from '@surae/shared';
import { expect, test } from 'vitest';

const tables = [RUNNING_NUMBERS, KEEP_UP, RUN_LOADS, FLARE_NUMBERS];
const held = [...GUIDANCE_RULES, ...START_RUNNING, ...FULL_RETURN].map(({ numbers }) => numbers);
const numbers = [...held, ...tables].flatMap((one) => Object.values(one));
const told = (mark: string) => [
  ...new Set(numbers.filter((one) => one.mark === mark).map(({ id, value, unit }) => `${id} ${value} ${unit}`)),
];

/** Each number as it is published, by how well it is supported: none is better supported than it says. */
const published = {
  // read in the paper that stands beside it
  read: [
    'guidance.heel-lift 12 mm',
    'comparison.ratio-line 0.9 1',
    'guidance.run-growth 0.1 1',
    'guidance.run-window 30 d',
  ],
  // of our own
  computed: ['guidance.flare-confidence 0.95 1'],
  // as quoted elsewhere
  'second-hand': [
    'plan.insertion-lowest 0 deg',
    'comparison.pain-most 5 1',
    'guidance.heavy-slow-from-1 1 1',
    'guidance.heavy-slow-after-1 2 1',
    'guidance.heavy-slow-from-2 2 1',
    'guidance.heavy-slow-after-3 4 1',
    'guidance.heavy-slow-from-4 4 1',
    'guidance.heavy-slow-after-5 6 1',
    'guidance.heavy-slow-from-9 9 1',
    'guidance.heavy-slow-after-12 13 1',
  ],
  // from memory, and not checked against the paper
  'from-memory': [
    'guidance.heavy-slow-from-6 6 1',
    'guidance.heavy-slow-after-8 9 1',
    'guidance.programme-least 84 d',
    'guidance.recovery-days-high 3 d',
    'guidance.recovery-days-medium 2 d',
    'guidance.run-load-medium 2 1',
    'guidance.run-load-high 4 1',
  ],
  // common practice, no source
  'common-practice': [
    'guidance.no-raise 0 1',
    'guidance.range-step-level 3 1',
    'guidance.range-step-lowest -10 deg',
    'guidance.raises-some 1 1',
    'guidance.raises-ten 10 1',
    'guidance.learn-pain 4 1',
    'guidance.raises-twenty 20 1',
    'guidance.load-raises-six 6 1',
    'guidance.load-raises-sixteen 16 1',
    'guidance.load-fewer 2 1',
    'guidance.load-raises-most 25 1',
    'guidance.load-sets 3 1',
    'guidance.load-repetitions 15 1',
    'guidance.load-begin-percent 10 %',
    'guidance.load-trial-least 12 1',
    'guidance.load-trial-most 15 1',
    'guidance.load-reserve 1 1',
    'comparison.pain-most-irritable 3 1',
    'comparison.pain-rise-most 2 1',
    'guidance.missed-in-row 3 1',
    'guidance.planned-least 4 1',
    'guidance.left-out-most 0.3 1',
    'guidance.gap-most 14 d',
    'guidance.level-one 1 1',
    'guidance.hard-days 2 1',
    'guidance.trend-weeks 5 1',
    'guidance.trend-rise 0.25 1',
    'guidance.trend-flat 0 1',
    'guidance.reduce-least 20 %',
    'guidance.reduce-most 30 %',
    'today.morning-rise-most 2 1',
    'morning.eased-above 5 1',
    'stiffness.doubled-over 5 min',
    'guidance.stiffness-longer 0 min',
    'morning.hold-rise 1 1',
    'guidance.share-done-least 0.9 1',
    'guidance.exertion-most 8 1',
    'guidance.morning-most 3 1',
    'guidance.sessions-in-row 2 1',
    'guidance.level-days 7 d',
    'guidance.level-two 2 1',
    'guidance.level-calm 14 d',
    'guidance.level-four 4 1',
    'guidance.level-three 3 1',
    'guidance.level-days-late 28 d',
    'guidance.level-five 5 1',
    'guidance.springs-days 28 d',
    'guidance.springs-pain 2 1',
    'guidance.springs-calm 14 d',
    'guidance.level-six 6 1',
    'guidance.sport-days 14 d',
    'guidance.left-none 0 1',
    'guidance.range-left-none 0 deg',
    'guidance.load-days 28 d',
    'guidance.load-kg-least 2 kg',
    'guidance.load-kg-most 5 kg',
    'guidance.load-percent 5 %',
    'guidance.impact-days 2 d',
    'guidance.calm-days 14 d',
    'guidance.level-long-days 28 d',
    'guidance.plateau-share 0.7 1',
    'guidance.plateau-days 42 d',
    'guidance.stiffness-long 30 min',
    'guidance.inflammatory-years 45 a',
    'guidance.heel-lift-least 10 mm',
    'guidance.heel-lift-most 15 mm',
    'guidance.running-pause-least 7 d',
    'guidance.running-pause-most 14 d',
    'guidance.running-less-least 30 %',
    'guidance.running-less-most 50 %',
    'guidance.running-days-between 1 d',
    'guidance.running-flat-least 14 d',
    'guidance.running-flat-most 28 d',
    'guidance.standing-break 60 min',
    'guidance.standing-bout-less 33 %',
    'guidance.standing-lift-least 10 mm',
    'guidance.standing-lift-most 15 mm',
    'guidance.recovery-days-after-run 2 d',
    'guidance.run-first-total 300 s',
    'guidance.run-parts 5 1',
    'guidance.run-walk-least 60 s',
    'guidance.run-walk-most 120 s',
    'guidance.run-days-between 1 d',
    'guidance.keep-up-least 1 1',
    'guidance.keep-up-most 2 1',
    'guidance.keep-up-months 6 mo',
    'guidance.return-walk-pain 2 1',
    'guidance.return-raises 20 1',
    'guidance.return-ten-pain 2 1',
    'guidance.return-stable 14 d',
    'guidance.return-hop-pain 3 1',
    'guidance.return-hop-rise 0 1',
    'guidance.return-ratio 0.8 1',
    'guidance.return-push 1 1',
    'guidance.return-usual-days 14 d',
    'guidance.return-morning-pain 1 1',
    'guidance.run-floor-time 300 s',
    'guidance.run-floor-way 1000 m',
    'guidance.run-gap 14 d',
    'guidance.run-repeats 0.5 1',
    'guidance.run-story 84 d',
    'guidance.keep-up-usual-days 28 d',
    'guidance.flare-weeks 6 1',
    'guidance.flare-flares 5 1',
    'guidance.flare-steady 10 1',
    'guidance.flare-unknown 0.3 1',
  ],
} as const;

test.each(Object.entries(published))('numbers of the rules that are %s', (mark, expected) => {
  expect(told(mark).sort()).toEqual([...expected].sort());
});

test('every number has one of these marks, one value, and a source that says the same', () => {
  expect(new Set(numbers.map(({ id }) => id)).size).toBe(Object.values(published).flat().length);
  for (const { id, source, mark } of numbers) {
    expect(source.length, id).toBeGreaterThan(5);
    if (mark === 'from-memory') expect(source, id).toContain('memory');
    if (mark === 'second-hand') expect(source, id).toContain('quoted elsewhere');
    if (mark === 'common-practice') expect(source, id).toContain('common practice, no source');
  }
});
