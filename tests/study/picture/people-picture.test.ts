import { expect, test } from 'vitest';
import { compareArms } from '../../../packages/study/src/compare/compare-arms.ts';
import type { StudyFile } from '../../../packages/study/src/declared/study-document.ts';
import { notComparedWords, peoplePicture } from '../../../packages/study/src/picture/people-picture.ts';
import { qualityRows } from '../../../packages/study/src/quality/quality-rows.ts';
import type { TrialFacts } from '../../../packages/study/src/quality/trial-facts.ts';
import { declaredStudy } from '../../support/declared-study.ts';
import { studyTrial } from '../../support/study-trials.ts';

function drawn(study: StudyFile, trials: readonly TrialFacts[]) {
  const comparison = compareArms(study, qualityRows(study, trials, new Map()));
  return { comparison, svg: peoplePicture(study, comparison, 'made so') };
}

const groups = [18, 20, 22].flatMap((one) => [
  studyTrial(`c${one}.csv`, { person: `c${one}`, arm: 'cycling' }, one),
  studyTrial(`w${one}.csv`, { person: `w${one}`, arm: 'walking' }, one - 9),
]);

test('a mark for each person, rings and dots, and the means where they are', () => {
  const { svg } = drawn(declaredStudy(), groups);
  expect(svg.match(/<circle class="open"/g)).toHaveLength(3);
  expect(svg.match(/<circle class="full"/g)).toHaveLength(3);
  const means = [...svg.matchAll(/<line class="voice" x1="[\d.]+" y1="([\d.]+)"/g)].map(([, y]) => Number(y));
  const rings = [...svg.matchAll(/<circle class="open" cx="[\d.]+" cy="([\d.]+)"/g)].map(([, y]) => Number(y));
  expect(means[0]).toBe([...rings].sort((a, b) => a - b)[1]);
  expect(svg).toContain('>cycling is higher than walking</text>');
  expect(svg).toContain('>3 people</text>');
});

test('people of one value stand beside each other, and the two of one person are joined', () => {
  const study = declaredStudy({
    comparison: { ...declaredStudy().comparison, of: 'sides', manifest: null, first: 'left', second: 'right' },
  });
  const legs = [1, 2, 3].flatMap((person) => [
    studyTrial(`l${person}.csv`, { person: `p${person}`, side: 'left' }, 20),
    studyTrial(`r${person}.csv`, { person: `p${person}`, side: 'right' }, 15 + person),
  ]);
  const { svg } = drawn(study, legs);
  const rings = [...svg.matchAll(/<circle class="open" cx="([\d.]+)"/g)].map(([, x]) => x);
  expect(new Set(rings).size).toBe(3);
  expect(svg.match(/<line class="hair"[^>]*stroke-width="0.6"/g)).toHaveLength(3);
});

test('where nothing is compared the reason is the heading', () => {
  const { svg, comparison } = drawn(declaredStudy(), groups.slice(0, 2));
  expect(notComparedWords(comparison)).toBe('Not compared: too-few (1 and 1)');
  expect(svg).toContain('>Not compared: too-few (1 and 1)</text>');
  expect(drawn(declaredStudy(), []).svg).not.toMatch(/NaN|Infinity|undefined/);
});

test('what is compared against stands on the left of a later visit, the left leg stays left, and who is alone is counted apart', () => {
  const { comparison } = declaredStudy();
  const visits = declaredStudy({
    comparison: { ...comparison, of: 'visits', manifest: null, first: '2', second: '1' },
  });
  const trials = [1, 2, 3, 4].flatMap((person) => [
    studyTrial(`a${person}.csv`, { person: `p${person}`, visit: '1' }, 10 + person),
    ...(person === 4 ? [] : [studyTrial(`b${person}.csv`, { person: `p${person}`, visit: '2' }, 10 + 2 * person)]),
  ]);
  const placeOf = (svg: string, name: string): number =>
    Number(new RegExp(`x="([\\d.]+)"[^>]*>${name}<`).exec(svg)![1]);
  const { svg } = drawn(visits, trials);
  expect(placeOf(svg, 'visit 1')).toBeLessThan(placeOf(svg, 'visit 2'));
  expect(svg).toContain('>4 people, 3 compared</text>');
  const sides = declaredStudy({
    comparison: { ...comparison, of: 'sides', manifest: null, first: 'right', second: 'left' },
  });
  const legs = drawn(
    sides,
    [1, 2, 3].flatMap((person) => [
      studyTrial(`l${person}.csv`, { person: `p${person}`, side: 'left' }, 20),
      studyTrial(`r${person}.csv`, { person: `p${person}`, side: 'right' }, 15 + person),
    ]),
  ).svg;
  expect(placeOf(legs, 'the left leg')).toBeLessThan(placeOf(legs, 'the right leg'));
});
