import { cohenKappa } from '@surae/analysis';
import { expect, test } from 'vitest';
import { blindAgreement } from '../../../packages/study/src/blind/blind-agreement.ts';
import { blindDefaults } from '../../../packages/study/src/blind/blind-defaults.ts';
import type { BlindStep, BlindVerdict } from '../../../packages/study/src/blind/blind-step.ts';
import type { AutomaticCount } from '../../../packages/study/src/blind/told-counts.ts';
import { bookAfter, keyOf, LOCK, OPEN } from '../../support/blind-raters.ts';

const COUNT = 12;
const truth = (trial: string): number => 10 + (Number(/\d+/.exec(trial)![0]) % 7);
const automatic: AutomaticCount[] = Array.from({ length: COUNT }, (_, at) => ({
  trial: `t${at}.csv`,
  count: truth(`t${at}.csv`),
  verdicts: (['yes', 'no'] as const).map((word, place) => ((at + place) % 3 === 0 ? 'cannot_tell' : word)),
  topsS: [2, 4],
}));

type Says = (trial: string, showing: 1 | 2) => { readonly count: number; readonly verdicts: readonly BlindVerdict[] };

function rater(name: string, says: Says, count = COUNT, after: readonly BlindStep[] = [LOCK, OPEN]) {
  const key = keyOf(name, count);
  const steps = key.items.flatMap(({ item, trial, showing }): BlindStep[] => {
    const { count: counted, verdicts } = says(trial, showing);
    return [
      { step: 'count', item, count: counted },
      ...verdicts.map((verdict, at) => ({ step: 'verdict', item, repetition: at + 1, verdict }) as const),
    ];
  });
  return { key, book: bookAfter(key, [...steps, ...after]) };
}

const own: Says = (trial) => {
  const found = automatic.find((one) => one.trial === trial)!;
  return { count: found.count, verdicts: found.verdicts };
};

test('raters who say what the machine says agree wholly, whichever way the recordings were shown', () => {
  const pairs = blindAgreement([rater('ada', own), rater('ben', own)], automatic, blindDefaults);
  expect(pairs.map(({ kind, first, second }) => [kind, first, second])).toEqual([
    ['within-rater', 'ada', 'ada, second showing'],
    ['within-rater', 'ben', 'ben, second showing'],
    ['between-raters', 'ada', 'ben'],
    ['with-automatic', 'ada', 'automatic'],
    ['with-automatic', 'ben', 'automatic'],
  ]);
  const between = pairs[2];
  expect(between).toMatchObject({ sets: COUNT, same: COUNT, bias: 0, repetitions: 2 * COUNT, observed: 1 });
  expect(between.icc).toMatchObject({ kind: 'given', value: 1 });
  expect(between.kappa).toMatchObject({ kind: 'given', value: 1, interval: null });
  expect(between.sem).toEqual({ kind: 'not-given', reason: 'all-alike' });
  expect(pairs[0].sets).toBe(COUNT / 2);
});

test('a rater who counts two too many is biased by two; ICC(2,1) and the error are those of a table made by hand', () => {
  const more: Says = (trial) => ({ ...own(trial, 1), count: truth(trial) + 2 });
  const [pair] = blindAgreement([rater('ada', more)], automatic, blindDefaults).slice(1);
  expect(pair).toMatchObject({ kind: 'with-automatic', bias: 2, same: 0, withinOne: 0, sets: COUNT });
  // Shrout & Fleiss (1979): with no residual, (BMS) / (BMS + k JMS / n) of n subjects by k = 2 raters
  const counts = automatic.map(({ count }) => count + 1);
  const mean = counts.reduce((sum, one) => sum + one, 0) / COUNT;
  const bms = (2 * counts.reduce((sum, one) => sum + (one - mean) ** 2, 0)) / (COUNT - 1);
  const jms = 2 * COUNT;
  const icc = pair.icc.kind === 'given' ? pair.icc.value : Number.NaN;
  expect(icc).toBeCloseTo(bms / (bms + (2 * jms) / COUNT), 12);
});

test('limits stand 1.96 standard deviations of the differences from their mean; alike differences and few recordings have none', () => {
  const uneven: Says = (trial) => ({ ...own(trial, 1), count: truth(trial) + (Number(/\d+/.exec(trial)![0]) % 3) });
  const { limits } = blindAgreement([rater('ada', uneven)], automatic, blindDefaults)[1];
  const differences = automatic.map(({ trial }) => Number(/\d+/.exec(trial)![0]) % 3);
  const mean = differences.reduce((sum, one) => sum + one, 0) / COUNT;
  const sd = Math.sqrt(differences.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (COUNT - 1));
  // Bland & Altman (1986), Lancet i:307-310
  expect(limits?.bias.value).toBeCloseTo(mean, 12);
  expect([limits?.lower.value, limits?.upper.value]).toEqual([
    expect.closeTo(mean - 1.96 * sd, 12),
    expect.closeTo(mean + 1.96 * sd, 12),
  ]);
  expect(blindAgreement([rater('ada', own)], automatic, blindDefaults)[1].limits).toBe(null);
  expect(blindAgreement([rater('ada', uneven, 4)], automatic.slice(0, 4), blindDefaults)[1].limits).toBe(null);
});

test('kappa is that of the verdicts of the same repetitions of the same recordings', () => {
  const strict: Says = (trial) => ({
    ...own(trial, 1),
    verdicts: own(trial, 1).verdicts.map((word, at) => (at === 0 && truth(trial) > 13 ? 'no' : word)),
  });
  const pair = blindAgreement([rater('ada', strict)], automatic, blindDefaults)[1];
  const names = automatic.map(({ trial }) => trial);
  const [one, other] = [strict, own].map((says) => names.flatMap((trial) => says(trial, 1).verdicts));
  const { kappa, interval } = cohenKappa(one, other, 0.95);
  expect(pair.kappa).toEqual({ kind: 'given', value: kappa, interval });
  expect(pair.kappa).not.toMatchObject({ value: 1 });
});

test('of too few recordings or repetitions no figure is given, and the reason is', () => {
  const few = automatic.slice(0, 4);
  const pair = blindAgreement([rater('ada', own, 4)], few, blindDefaults)[1];
  expect(pair).toMatchObject({ sets: 4, repetitions: 8, observed: 1 });
  expect([pair.icc, pair.sem, pair.kappa]).toEqual(Array(3).fill({ kind: 'not-given', reason: 'too-few' }));
  const one: Says = (trial) => ({ count: truth(trial), verdicts: ['yes', 'yes'] });
  const alike = blindAgreement([rater('ada', one), rater('ben', one)], automatic, blindDefaults)[2];
  expect(alike.kappa).toEqual({ kind: 'not-given', reason: 'all-alike' });
});

test('what was not counted is left out and never taken as nothing', () => {
  const key = keyOf('ada', COUNT);
  const steps: BlindStep[] = key.items
    .slice(0, 9)
    .map(({ item, trial }) => ({ step: 'count', item, count: truth(trial) }));
  const pairs = blindAgreement([{ key, book: bookAfter(key, [...steps, LOCK, OPEN]) }], automatic, blindDefaults);
  const firsts = key.items.slice(0, 9).filter(({ showing }) => showing === 1).length;
  expect(pairs[1]).toMatchObject({ sets: firsts, repetitions: 0, bias: 0, observed: null });
});

test('what was said after an early opening is left out', () => {
  const key = keyOf('ada', COUNT);
  const steps = key.items.map(({ item, trial }): BlindStep => ({ step: 'count', item, count: truth(trial) }));
  const book = bookAfter(key, [...steps.slice(0, 10), OPEN, ...steps.slice(10), LOCK]);
  const firsts = key.items.slice(0, 10).filter(({ showing }) => showing === 1).length;
  expect(blindAgreement([{ key, book }], automatic, blindDefaults)[1].sets).toBe(firsts);
});

test('nothing is worked out before the verdicts are locked and the names opened', () => {
  const open = (after: readonly BlindStep[]) => () =>
    blindAgreement([rater('ada', own, COUNT, after)], automatic, blindDefaults);
  expect(open([])).toThrow('ada: expected locked verdicts and opened names, got verdicts that are not locked');
  expect(open([OPEN])).toThrow('verdicts that are not locked');
  expect(open([LOCK])).toThrow('names that are not opened');
});

test('raters who mark are held against each other and the machine by the time of their marks', () => {
  const marker = (name: string, shiftS: number, isShort: boolean) => {
    const key = keyOf(name, COUNT);
    const steps = key.items.flatMap(({ item, trial }): BlindStep[] => {
      const { verdicts } = own(trial, 1);
      const marks = verdicts.map((_, at) => {
        // marks in the order of the last repetition first: their numbers are not those of the machine
        const place = verdicts.length - 1 - at;
        return {
          step: 'mark',
          item,
          repetition: at + 1,
          atS: 2 + 2 * place + shiftS,
          verdict: verdicts[place],
        } as const;
      });
      return [...(isShort ? marks.slice(0, 1) : marks), { step: 'count', item, count: truth(trial) }];
    });
    return { key, book: bookAfter(key, [...steps, LOCK, OPEN]) };
  };
  const [whole, short, far] = [marker('ada', 0.4, false), marker('ben', -0.4, true), marker('ben', 0.6, false)];
  const pairs = blindAgreement([whole, short], automatic, blindDefaults);
  const [within, , between, withMachine, shortWithMachine] = pairs;
  expect(within).toMatchObject({ repetitions: COUNT, firstAlone: 0, secondAlone: 0, observed: 1 });
  // 0.8 s apart: each has marks that the other has not
  expect(between).toMatchObject({ repetitions: 0, firstAlone: 2 * COUNT, secondAlone: COUNT });
  expect(withMachine).toMatchObject({ repetitions: 2 * COUNT, firstAlone: 0, secondAlone: 0, observed: 1 });
  expect(withMachine.kappa).toMatchObject({ kind: 'given', value: 1 });
  expect(shortWithMachine).toMatchObject({ repetitions: COUNT, firstAlone: 0, secondAlone: COUNT });
  expect(blindAgreement([far], automatic, blindDefaults)[1]).toMatchObject({ repetitions: 0, firstAlone: 2 * COUNT });
  // who filled in numbers that were shown stands at the tops of the machine
  const byNumber = rater('ben', own);
  const mixed = blindAgreement([whole, byNumber], automatic, blindDefaults)[2];
  expect(mixed).toMatchObject({ repetitions: 2 * COUNT, firstAlone: 0, secondAlone: 0, observed: 1 });
});
