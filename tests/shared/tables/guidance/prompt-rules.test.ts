import { propose } from '@surae/guidance';
import { GUIDANCE_FACTS, GUIDANCE_RULES, TOLERANCE_RUNGS } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { madeFacts } from '../../../support/guidance-facts.ts';

type Told = Record<string, string | number>;

const told = (about: string, left: Told, person: Told = {}) =>
  propose(madeFacts(left, {}, person), GUIDANCE_RULES, GUIDANCE_FACTS)
    .proposals.filter((one) => one.about === about && one.leg === 'left')
    .map(({ rule }) => rule.proposes.code);

const plateau: Told = { 'changed-six-weeks': 'no', 'share-six-weeks': 0.7, 'days-in-programme': 42 };
const inflamed: Told = { 'rest-pain': 'present', 'morning-stiffness': 31 };

describe('what is looked at', () => {
  // de Vos 2021, Br J Sports Med 55:1125, from memory; the rest common practice, no source
  test.each([
    ['plateau', plateau, true],
    ['plateau', { ...plateau, 'share-six-weeks': 0.69 }, false],
    ['plateau', { ...plateau, 'days-in-programme': 41 }, false],
    ['plateau', { ...plateau, 'changed-six-weeks': 'yes' }, false],
    ['twelve-weeks', { 'important-change': 'no', 'days-in-programme': 84 }, true],
    ['twelve-weeks', { 'important-change': 'no', 'days-in-programme': 83 }, false],
    ['go-on', { 'days-in-programme': 83 }, true],
    ['go-on', { 'days-in-programme': 84 }, false],
    ['flare', { 'morning-rise-last': 3 }, true],
    ['flare', { 'morning-rise-last': 2 }, false],
    ['week-rising', { 'week-trend': 'rising' }, true],
    ['inflammatory', inflamed, true],
    ['inflammatory', { ...inflamed, 'morning-stiffness': 30 }, false],
    ['inflammatory', { ...inflamed, 'rest-pain': 'none' }, false],
    ['heel-lift-middle', { place: 'mid-portion' }, true],
    ['heel-lift-flare', { place: 'insertion', irritability: 'high' }, true],
    ['heel-lift-flare', { place: 'insertion', irritability: 'moderate' }, false],
    ['heel-lift-flare', { place: 'insertion', irritability: 'low', 'morning-now': 'flare' }, true],
    ['heel-lift-flare', { place: 'insertion', irritability: 'low', 'morning-now': 'no-flare' }, false],
    ['heel-lift-flare', { place: 'insertion', 'morning-now': 'flare' }, true],
    ['heel-lift-flare', { place: 'mid-portion', irritability: 'high', 'morning-now': 'flare' }, false],
  ] as const)('%s with %o: %s', (code, left, expected) => {
    expect(told('prompt', left, { 'both-heel-bones': 'yes' }).includes(code)).toBe(expected);
  });

  // the safety list asks at the same age; whoever may be under it is asked
  test.each([
    ['yes', 44, true],
    ['yes', 45, false],
    ['no', 44, false],
  ])('both heel bones sore: %s, at %d years or more: %s', (both, years, expected) => {
    const codes = told('prompt', {}, { 'both-heel-bones': both, 'age-at-least': years });
    expect(codes.includes('inflammatory-young')).toBe(expected);
  });

  test('is told under a lock too, but for what speaks of loading that goes on, of more of it, or of a test', () => {
    const long = { ...plateau, 'days-in-programme': 83, 'level-now': 2, 'days-at-level': 28 };
    const both = { 'both-heel-bones': 'yes' };
    expect(told('prompt', { ...long, ...inflamed }, both)).toEqual(
      expect.arrayContaining(['plateau', 'go-on', 'level-long', 'inflammatory']),
    );
    const locked = told('prompt', { ...long, ...inflamed }, { ...both, 'safety.clot': 'ticked' });
    expect(locked).toContain('inflammatory');
    for (const code of ['plateau', 'go-on', 'level-long']) expect(locked).not.toContain(code);
    const calm = { 'level-now': 0, 'days-at-level': 14 };
    expect(told('prompt', calm)).toContain('calm-long');
    expect(told('prompt', calm, { 'safety.fluoroquinolone': 'ticked' })).not.toContain('calm-long');
  });
});

describe('the rung to try next', () => {
  const apart = { 'days-since-heavy': 3, 'days-since-bounces': 3 } as const;
  const next = (held: string, place = 'mid-portion', days: Told = apart) =>
    told('rung', { 'rung-held': held, place, ...days })[0] ?? 'none';

  test('is the one over the rung that is held', () => {
    const codes = TOLERANCE_RUNGS.map(({ code }) => code);
    expect(codes.slice(0, -1).map((code) => next(code))).toEqual(codes.slice(1));
    expect(next('hops-forward')).toBe('none');
  });

  test('leaves out the step for a heel that is sore at the bone, or not known', () => {
    expect(next('single-floor', 'insertion')).toBe('single-loaded');
    expect(next('single-floor', 'both-places')).toBe('single-loaded');
  });

  test.each(['days-since-heavy', 'days-since-bounces'])(
    'with impact waits two days by %s, and where it is not known',
    (fact) => {
      const other = Object.fromEntries(Object.entries(apart).filter(([code]) => code !== fact));
      const after = (days: Told) => next('single-loaded', 'mid-portion', { ...other, ...days });
      expect([after({ [fact]: 3 }), after({ [fact]: 2 })]).toEqual(['quick-rebounds', 'quick-rebounds']);
      expect([after({ [fact]: 1.9 }), after({ [fact]: 0 }), after({})]).toEqual(['none', 'none', 'none']);
    },
  );
});
