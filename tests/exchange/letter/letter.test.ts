import { assess, defaultSettings } from '@surae/analysis';
import { letterOf, type StudyTrial } from '@surae/exchange';
import { FLOOR } from '@surae/shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pushTrial, raiseTrial, studyPerson, studyTrial, studyVisit } from '../../support/made-study.ts';
import { steadyTaps } from '../../support/tapped.ts';

const visit = studyVisit();
const trials = [raiseTrial(), pushTrial(), studyTrial({ key: 'x', side: 'right' })];
const { text, html } = letterOf(studyPerson(), visit, trials);
const plain = text.replaceAll('\u00A0', ' ');

/** What holds figures: pieces that no line breaks in. */
const PIECE = /[^\s\u00A0]+(?:\u00A0[^\s\u00A0]+)+/g;

/** Figures of a letter that stand without interval, ± or the words that there is none; the day of the visit is no figure. */
function nakedFigures(letter: string): string[] {
  const pieces = letter.match(PIECE) ?? [];
  const rest = letter.replace(PIECE, '').replace('2026-03-01', '');
  return [...pieces.filter((piece) => !/interval|±|as\u00A0told/.test(piece)), ...(rest.match(/\d+/g) ?? [])];
}

test('no figure stands without its uncertainty', () => {
  expect(nakedFigures(text)).toEqual([]);
  expect(text.match(PIECE)?.length).toBeGreaterThanOrEqual(5);
  expect(nakedFigures('22 repetitions')).toEqual(['22']);
});

test('the words are those of the job: what was done, why it ended, what was not measured, the scope', () => {
  expect(plain).toContain('Left leg, heel raises: 3 (95 % interval');
  expect(plain).toContain('Stopped for fatigue.');
  expect(plain).toContain('Right leg, isometric pushes: ');
  expect(plain).toContain('N (standard uncertainty)');
  expect(plain).toContain('Right leg, heel raises: not measured.');
  expect(plain).toContain('can come from normal variation');
  expect(plain).toContain("Supports a clinician's judgement. Not a diagnosis.");
  expect(plain).not.toMatch(/deficit|weak|healthy|injured|only managed|normal leg|significant/i);
});

test('pain that was not told is not told, and never none', () => {
  const letter = (changes: Partial<StudyTrial>): string =>
    letterOf(undefined, visit, [raiseTrial(changes)]).text.replaceAll('\u00A0', ' ');
  expect(letter({ painPeak: null })).toContain('Greatest pain: not told.');
  expect(letter({ painPeak: 0 })).toContain('Greatest pain: 0 of 10 (as told');
});

test('a test that was taken back gives no figure', () => {
  const taken = letterOf(undefined, visit, [raiseTrial({ setAside: true })]).text;
  expect(taken).toContain('Taken back, not counted: Left leg, heel raises.');
  expect(taken.match(PIECE)).toBeNull();
});

test('on the page a figure is taken whole or not at all, and nothing of a name is a tag', () => {
  expect(html).toContain('user-select: all');
  const figures = [...html.matchAll(/<span class="figure">([^<]*)<\/span>/g)].map(([, figure]) => figure);
  expect(figures).toEqual(text.match(PIECE)?.map((figure) => figure.replaceAll('"', '&quot;')));
  fc.assert(
    fc.property(fc.string(), (name) => {
      const page = letterOf(studyPerson({ name: `<b>${name}</b>` }), visit, []).html;
      expect(page).not.toContain('<b>');
      expect(page.match(/<(?!\/?(?:!doctype|html|head|meta|title|style|body|h1|p|span)\b)/g)).toBeNull();
    }),
  );
});

test('a count by hand is called one, with its interval, and what it leaves open', () => {
  const request = { placement: 'hand', side: 'left', protocol: FLOOR, subject: {} } as const;
  const report = assess(steadyTaps(22), request, defaultSettings());
  const letter = letterOf(undefined, visit, [raiseTrial({ result: { test: 'heel-raise', report } })]);
  const said = letter.text.replaceAll('\u00A0', ' ');
  expect(said).toContain('Left leg, heel raises counted by hand: 22 (95 % interval 20 to 24) repetitions.');
  expect(said).toContain('Counted by hand, without a sensor');
  expect(said).not.toContain('meet the protocol');
  expect(nakedFigures(letter.text)).toEqual([]);
});
