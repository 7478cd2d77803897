import { CRITERION_IDS, OBSERVABILITY, type ObservingPlacement } from '@surae/shared';
import { expect, test } from 'vitest';

const seen = (subject: string, placement: ObservingPlacement) =>
  OBSERVABILITY.find((entry) => entry.subject === subject)?.by[placement];

test('every criterion, the count and both heights have one row', () => {
  const subjects = OBSERVABILITY.map((entry) => entry.subject);
  expect([...subjects].sort()).toEqual([...CRITERION_IDS, 'count', 'heel-height', 'body-rise'].sort());
});

test('a string at the heel and a foot see the heel; trunk and platform see the body', () => {
  expect((['heel', 'foot', 'trunk', 'platform'] as const).map((placement) => seen('height', placement))).toEqual([
    'measured',
    'measured',
    'not-observed',
    'not-observed',
  ]);
  expect((['heel', 'foot', 'trunk', 'platform'] as const).map((placement) => seen('body-rise', placement))).toEqual([
    'inferred',
    'inferred',
    'measured',
    'measured',
  ]);
});

test('no single placement measures the knee, and none sees the other foot', () => {
  for (const placement of ['heel', 'foot', 'trunk', 'platform'] as const) {
    expect(seen('knee', placement)).not.toBe('measured');
    expect(seen('other-foot', placement)).toBe('not-observed');
  }
});

test('only a platform sees the hands, only the trunk sees a lean', () => {
  expect(
    (['heel', 'foot', 'trunk', 'platform'] as const).filter((placement) => seen('hands', placement) === 'measured'),
  ).toEqual(['platform']);
  expect(
    (['heel', 'foot', 'trunk', 'platform'] as const).filter((placement) => seen('lean', placement) === 'measured'),
  ).toEqual(['trunk']);
});
