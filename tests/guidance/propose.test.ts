import { type GivenFacts, type Guidance, propose } from '@surae/guidance';
import { GUIDANCE_FACTS, GUIDANCE_RULES } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { clearList, known, madeFacts } from '../support/guidance-facts.ts';

const guided = (given: GivenFacts): Guidance => propose(given, GUIDANCE_RULES, GUIDANCE_FACTS);
const level = (given: GivenFacts, leg: 'left' | 'right' = 'left') => {
  const one = guided(given).proposals.find((each) => each.about === 'start-level' && each.leg === leg);
  return one === undefined ? null : [one.rule.proposes.code, one.standing];
};

const quiet = {
  place: 'mid-portion',
  irritability: 'low',
  'pain-double-raise': 0,
  'pain-single-raise': 1,
  'settles-overnight': 'yes',
};

const without = (fact: keyof typeof quiet) =>
  Object.fromEntries(Object.entries(quiet).filter(([code]) => code !== fact));

describe('a start level', () => {
  test('is the lowest that holds, with the answers it rests on', () => {
    const { proposals } = guided(madeFacts({ ...quiet, 'valid-raises': 12 }));
    const one = proposals.find(({ about }) => about === 'start-level');
    expect(one).toMatchObject({ leg: 'left', standing: 'stands', rule: { code: 'start-single' }, notRuledOut: [] });
    expect(one?.trace.used.map(({ fact }) => fact)).toContain('valid-raises');
  });

  test('goes by the lower of two that both hold', () => {
    expect(level(madeFacts({ ...quiet, 'valid-raises': 12, 'pain-single-raise': 4 }))).toEqual(['learn', 'stands']);
  });

  test('waits where a lower one is not ruled out, and says for what', () => {
    const rest = without('pain-double-raise');
    const one = guided(madeFacts({ ...rest, 'valid-raises': 12 })).proposals.find(
      ({ about }) => about === 'start-level',
    );
    expect([one?.rule.code, one?.standing]).toEqual(['start-single', 'waits']);
    expect(one?.notRuledOut.map(({ rule, missing }) => [rule.code, missing])).toEqual([
      ['start-calm', ['pain-double-raise']],
    ]);
  });

  test('whose count lies on both sides of a limit goes to the lower one, and waits', () => {
    expect(level(madeFacts({ ...quiet, 'valid-raises': known(19, { low: 18, high: 21 }) }))).toEqual([
      'single',
      'waits',
    ]);
  });

  test('is none where nothing is known', () => {
    const found = guided(madeFacts({}));
    expect(found.proposals.filter(({ about }) => about === 'start-level')).toEqual([]);
    expect(found.lacking.map(({ rule }) => rule.code)).toContain('start-single');
  });

  test('of a leg that is not graded is treated as moderate where that holds back, and is not let into the heavy one', () => {
    const rest = without('irritability');
    const twelve = guided(madeFacts({ ...rest, 'valid-raises': 12 }));
    expect(twelve.proposals.find(({ about }) => about === 'start-level')).toMatchObject({ standing: 'stands' });
    expect(level(madeFacts({ ...rest, 'valid-raises': 25 }))).toBeNull();
  });

  test('of both legs is that of the leg that governs', () => {
    const given = madeFacts({ ...quiet, irritability: 'high', 'valid-raises': 9 }, { ...quiet, 'valid-raises': 16 });
    expect([level(given, 'left'), level(given, 'right')]).toEqual([
      ['calm', 'stands'],
      ['single', 'stands'],
    ]);
    const together = (person: Record<string, string>) =>
      guided({ ...given, person: { ...given.person, ...madeFacts({}, {}, person).person } }).together[0];
    expect(together({ 'sore-legs': 'left' })).toMatchObject({ rule: { code: 'start-calm' }, standing: 'stands' });
    expect(together({ 'sore-legs': 'right' })).toMatchObject({ rule: { code: 'start-single' }, standing: 'stands' });
    expect(together({ 'sore-legs': 'both' })).toMatchObject({ rule: { code: 'start-calm' }, legs: ['left'] });
  });

  test('of both legs waits as long as one that governs has none', () => {
    const given = madeFacts({ ...quiet, 'valid-raises': 12 }, {}, { 'sore-legs': 'both' });
    expect(guided(given).together[0]).toMatchObject({ rule: { code: 'start-single' }, standing: 'waits' });
  });
});

describe('what stands against loading', () => {
  const twelve = { ...quiet, 'valid-raises': 12 };
  const loads = (given: GivenFacts) =>
    guided(given).proposals.filter(({ rule }) => rule.proposes.touches.includes('loading'));

  test('leaves nothing that loads, and says what it keeps back and why', () => {
    const given = madeFacts(twelve, twelve, { 'safety.fluoroquinolone': 'ticked' });
    const found = guided(given);
    expect(found.locked).toBe(true);
    expect(loads(given)).toEqual([]);
    const [one] = found.blocked.filter(({ trace }) => trace.rule.about === 'start-level');
    expect(one?.by.map(({ rule }) => rule.proposes.code)).toEqual(['safety.fluoroquinolone']);
  });

  test.each(Object.keys(clearList))(
    '%s that was not asked keeps from loading as if it were ticked, where a tick does',
    (line) => {
      const ticked = guided(madeFacts(twelve, twelve, { [line]: 'ticked' }));
      const missing = guided(madeFacts(twelve, twelve, { [line]: { missing: 'not-asked' } }));
      expect(missing.locked).toBe(ticked.locked);
    },
  );

  test('a raise that is not there opens the list of a rupture first, on either leg', () => {
    const none = { ...quiet, 'valid-raises': 0 };
    expect(guided(madeFacts(none, twelve)).blocks.map(({ rule }) => rule.code)).toContain('lock-no-raise');
    expect(loads(madeFacts(twelve, none))).toEqual([]);
    expect(loads(madeFacts({ ...none, 'rupture-looked': 'suspected' }, twelve))).toEqual([]);
    expect(level(madeFacts({ ...none, 'rupture-looked': 'clear' }, twelve))).toEqual(['calm', 'stands']);
  });

  test('a line that may be gone over opens with a reason, and one that may not does not', () => {
    expect(guided(madeFacts(twelve, {}, { 'safety.bone': 'reasoned' })).locked).toBe(false);
    expect(guided(madeFacts(twelve, {}, { 'safety.clot': 'reasoned' })).locked).toBe(true);
  });
});

describe('a heel that is sore at the bone', () => {
  const range = (place: string | null) =>
    guided(madeFacts({ 'level-now': 3, ...(place === null ? {} : { place }) })).proposals.filter(
      ({ about, leg }) => about === 'range' && leg === 'left',
    );

  test.each(['insertion', 'both-places'])('%s: goes no lower than level', (place) => {
    expect(range(place).map(({ rule }) => [rule.code, rule.numbers['lowest'].value])).toEqual([['range-level', 0]]);
  });

  test('a place that is not known is offered nothing below level', () => {
    expect(range(null)).toEqual([]);
    expect(range('mid-portion').map(({ rule }) => rule.numbers['lowest'].value)).toEqual([-10]);
  });
});
