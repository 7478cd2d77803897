import { choiceFacts } from '@surae/casebook';
import { CHOICE_RULES, INCLINE_10, SEATED_PULL, STRAIGHT_PULL } from '@surae/shared';
import { expect, test } from 'vitest';
import {
  anyProtocol,
  blockLines,
  goneOverLines,
  gradeLine,
  lastLine,
  surfaceText,
} from '../../../apps/dashboard/src/journey/choice-lines.ts';
import { HIGH, visitAtChoice } from '../../support/choice-visit.ts';

test('every rule has a sentence, with the legs that it is about', () => {
  for (const rule of Object.keys(CHOICE_RULES) as (keyof typeof CHOICE_RULES)[]) {
    expect(blockLines([{ rule, legs: ['left'] }])[0], rule).not.toMatch(/\{/);
  }
  expect(blockLines([{ rule: 'insertion-not-floor', legs: ['right'] }])[0]).toContain('(right leg)');
  expect(blockLines([{ rule: 'insertion-not-floor', legs: ['left', 'right'] }])[0]).toContain('(both legs)');
});

test('a leg that is not sore is not graded; one of which answers are missing says how many, and how it is treated', () => {
  const legsOf = (right: object) => choiceFacts(visitAtChoice({ left: 'no', right: 'mid-portion' }, right), []).legs;
  expect(gradeLine('left', legsOf({}).left)).toBeUndefined();
  expect(gradeLine('right', legsOf({}).right)).toBe(
    'Right tendon: irritability not graded, treated as moderate irritability; answers missing: 6 of 6.',
  );
  expect(gradeLine('right', legsOf(HIGH).right)).toBe('Right tendon: high irritability.');
});

test('the last time is told by its day, surface, place and counts, as far as there are any', () => {
  const last = {
    test: 'heel-raise',
    protocolId: INCLINE_10.id,
    placement: 'foot',
    at: '2026-01-05T09:00:00+01:00',
  } as const;
  expect(lastLine(INCLINE_10, { ...last, counts: { left: 24, right: null } })).toBe(
    '5 Jan 2026: board of 10 degrees, toes up, sensor on top of the foot. Left 24, right none repetitions.',
  );
  expect(lastLine(SEATED_PULL, { ...last, placement: 'a new place', counts: { left: null, right: null } })).toBe(
    '5 Jan 2026: seated, a new place.',
  );
});

test('a protocol of either test is found by its id', () => {
  expect(anyProtocol(STRAIGHT_PULL.id)).toBe(STRAIGHT_PULL);
  expect(anyProtocol(INCLINE_10.id)).toBe(INCLINE_10);
  expect(anyProtocol('none')).toBeUndefined();
  expect(surfaceText(STRAIGHT_PULL)).toBe('standing');
});

test('a rule that was gone over stands with its reason, one of another version as it was stored', () => {
  const gone = { rule: 'insertion-not-floor', legs: ['left'] } as const;
  expect(goneOverLines({ goneOver: [{ ...gone, reason: 'tried-today' }] })[0]).toContain(
    'tried today without more pain',
  );
  expect(goneOverLines({ goneOver: [{ ...gone, reason: 'of tomorrow' }] })[0]).toContain('of tomorrow');
  expect(goneOverLines({})).toEqual([]);
});
