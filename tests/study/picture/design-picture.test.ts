import { expect, test } from 'vitest';
import { designAnswer } from '../../../packages/study/src/design/design-answer.ts';
import { DESIGN_QUESTIONS } from '../../../packages/study/src/design/design-request.ts';
import { designPicture } from '../../../packages/study/src/picture/design-picture.ts';
import { requestOf } from '../../support/told-design.ts';

const ranged = designAnswer(requestOf('groups', { difference: [2, 3, 4], sd: [4, 5, 7] }));

test('what is not known has lines that are told apart by their strokes, each with its number', () => {
  const picture = designPicture(ranged, 'made so');
  expect(picture.match(/<path class="ink"/g)).toHaveLength(6);
  expect(picture.match(/stroke-dasharray="9 5"/g)).toHaveLength(2);
  expect(picture.match(/stroke-dasharray="2 4"/g)).toHaveLength(2);
  for (const words of ['as expected: 45 in each group', 'at best: ', 'at worst: ', 'wished: 0.80']) {
    expect(picture).toContain(words);
  }
  expect(picture).toContain('<metadata>made so</metadata>');
});

test('where all is certain there is one line', () => {
  const picture = designPicture(designAnswer(requestOf('error', { above: 0.3 })), '');
  expect(picture.match(/<path class="ink"/g)).toHaveLength(2);
  expect(picture).not.toContain('at best');
});

test('nothing is drawn outside of the page, whatever is asked', () => {
  const usual = {
    difference: [0.01, 3, 4],
    margin: 4,
    sd: [1, 5, 50],
    'sd-change': 4,
    correlation: 0.7,
    sem: 2.25,
    within: 2,
    width: 0.2,
    icc: 0.85,
    least: 0.6,
    change: 4,
    above: 0.3,
  };
  for (const question of DESIGN_QUESTIONS) {
    const own = Object.fromEntries(
      Object.entries(usual).filter(([key]) => question.inputs.some((input) => input.key === key)),
    );
    const picture = designPicture(designAnswer(requestOf(question.id, own)), '');
    expect(picture).not.toContain('NaN');
    const height = Number(/height="([\d.]+)" role/.exec(picture)![1]);
    const places = [...picture.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)];
    expect(places.length).toBeGreaterThan(4);
    for (const [, x, y] of places) {
      expect(Number(x)).toBeGreaterThanOrEqual(0);
      expect(Number(x)).toBeLessThanOrEqual(400);
      expect(Number(y)).toBeGreaterThanOrEqual(0);
      expect(Number(y)).toBeLessThanOrEqual(height);
    }
  }
});
