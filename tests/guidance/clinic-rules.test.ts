import { boundOf, clinicRules, type OwnNumber, ownNumberFault, propose, ruleFaults } from '@surae/guidance';
import { GUIDANCE_FACTS, GUIDANCE_RULES, RULE_NUMBER_BOUNDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { madeFacts } from '../support/guidance-facts.ts';

const published = new Map(GUIDANCE_RULES.flatMap(({ numbers }) => Object.values(numbers)).map((one) => [one.id, one]));

function own(number: string, value: number, changes: Partial<OwnNumber> = {}): OwnNumber {
  const { unit, value: was } = published.get(number)!;
  return { number, unit, published: was, value, reason: 'our people', by: 'K4', day: '2026-03-02', ...changes };
}

test('a number is changed in every rule that holds it, and each says so with who, when, why and what is published', () => {
  const { rules, notUsed } = clinicRules(GUIDANCE_RULES, [own('guidance.raises-ten', 8)]);
  const changed = rules.filter(({ edits }) => edits !== undefined);
  const holding = GUIDANCE_RULES.filter((one) =>
    Object.values(one.numbers).some(({ id }) => id === 'guidance.raises-ten'),
  );
  expect(changed.map(({ code }) => code)).toEqual(holding.map(({ code }) => code));
  expect(changed.length).toBeGreaterThan(3);
  const start = rules.find(({ code }) => code === 'start-learn')!;
  expect(start.edits).toEqual([{ number: 'ten', by: 'K4', day: '2026-03-02', was: 10, reason: 'our people' }]);
  expect([start.numbers['ten']?.value, start.version]).toEqual([8, '1+2026-03-02']);
  expect(notUsed).toEqual([]);
  // nobody else's rule is touched
  const others = rules.filter(({ edits }) => edits === undefined);
  expect(others.every((one) => GUIDANCE_RULES.includes(one))).toBe(true);
});

test('of one number the last change counts, and one that says what is published changes nothing', () => {
  const twice = clinicRules(GUIDANCE_RULES, [own('guidance.raises-ten', 8), own('guidance.raises-ten', 9)]);
  expect(twice.rules.find(({ code }) => code === 'start-learn')?.numbers['ten']?.value).toBe(9);
  expect(clinicRules(GUIDANCE_RULES, [own('guidance.raises-ten', 10)]).rules).toEqual(GUIDANCE_RULES);
});

test.each([
  ['no such number', { ...own('guidance.raises-ten', 8), number: 'guidance.raises-eleven' }, 'unknown-number'],
  ['another unit', own('guidance.raises-ten', 8, { unit: 'd' }), 'other-unit'],
  [
    'a published number that is another one by now',
    own('guidance.raises-ten', 8, { published: 12 }),
    'other-published',
  ],
  ['too far', own('guidance.raises-ten', 40), 'out-of-bounds'],
  ['no number', own('guidance.raises-ten', Number.NaN), 'out-of-bounds'],
  ['between two steps', own('guidance.raises-ten', 8.5), 'off-step'],
  ['the raise that asks for a rupture', own('guidance.no-raise', 1), 'lock'],
  ['a heel below level', own('plan.insertion-lowest', -10), 'heel-bone'],
  ['a level', own('guidance.level-four', 2), 'name'],
  ['none', own('guidance.trend-flat', 2), 'none'],
  ['the flare of the list of people', own('today.morning-rise-most', 4), 'elsewhere'],
])('%s is kept and not used, with why, and the published one stands', (_, one, why) => {
  expect(ownNumberFault(one, GUIDANCE_RULES)).toBe(why);
  const { rules, notUsed } = clinicRules(GUIDANCE_RULES, [one]);
  expect(rules).toEqual(GUIDANCE_RULES);
  expect(notUsed).toEqual([{ own: one, why }]);
});

/** Every number of a clinic at one end of its bounds. */
function atEnds(end: 'least' | 'most'): readonly OwnNumber[] {
  return RULE_NUMBER_BOUNDS.map((bound) => own(bound.number, bound[end]));
}

const ends = ['least', 'most'] as const;

test.each(ends)('at their %s all numbers can be used, and leave a set of rules without a fault', (end) => {
  const { rules, notUsed } = clinicRules(GUIDANCE_RULES, atEnds(end));
  expect(notUsed).toEqual([]);
  expect(ruleFaults(rules, GUIDANCE_FACTS)).toEqual([]);
});

test.each(ends.flatMap((ten) => ends.map((twenty) => [ten, twenty] as const)))(
  'no count of raises falls between two levels or two loads: ten at its %s, twenty at its %s',
  (ten, twenty) => {
    const of = (number: string, end: 'least' | 'most'): OwnNumber => {
      const bound = boundOf(number);
      if (bound === null || typeof bound === 'string') throw new Error(number);
      return own(number, bound[end]);
    };
    const { rules } = clinicRules(GUIDANCE_RULES, [
      of('guidance.raises-ten', ten),
      of('guidance.raises-twenty', twenty),
      of('guidance.load-raises-six', ten),
      of('guidance.load-raises-sixteen', twenty),
      of('guidance.load-raises-most', ten),
    ]);
    for (let raises = 0; raises <= 45; raises += 1) {
      const leg = { place: 'no', 'valid-raises': raises, 'pain-double-raise': 0, 'pain-single-raise': 0 } as const;
      const told = { ...leg, 'rupture-looked': 'clear', 'programme-begun': 'no' };
      const { proposals } = propose(madeFacts(told, told, { 'sore-legs': 'none' }), rules, GUIDANCE_FACTS);
      const codes = proposals.filter((one) => one.leg === 'left').map(({ about }) => about);
      expect(
        codes.filter((one) => one === 'start-level'),
        `${raises} raises`,
      ).toHaveLength(1);
      expect(
        codes.filter((one) => one === 'load'),
        `${raises} raises`,
      ).toHaveLength(1);
    }
  },
);

test.each(ends)('no change at its %s opens a lock, or lets a sore heel bone below level', (end) => {
  const { rules } = clinicRules(GUIDANCE_RULES, atEnds(end));
  const given = [
    madeFacts({ 'valid-raises': 0 }),
    madeFacts({ 'valid-raises': 14, 'rupture-looked': 'suspected' }),
    madeFacts({ place: 'insertion', 'valid-raises': 14, 'days-since-heavy': 1 }),
    madeFacts({ 'valid-raises': 14 }, {}, { 'safety.fluoroquinolone': 'ticked' }),
    madeFacts({ 'valid-raises': 14 }, {}, { 'safety.clot': { missing: 'not-asked' } }),
  ];
  const standing = (which: typeof rules) =>
    given.map((one) => {
      const { blocks, locked } = propose(one, which, GUIDANCE_FACTS);
      return [locked, blocks.map(({ rule, leg, held }) => `${rule.code} ${leg} ${held}`)];
    });
  expect(standing(rules)).toEqual(standing(GUIDANCE_RULES));
});
