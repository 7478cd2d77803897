import { expect, test } from 'vitest';
import { analysesOf } from '../../../packages/study/src/multiverse/analyses.ts';
import { type Multiverse, multiverse } from '../../../packages/study/src/multiverse/multiverse.ts';
import { changedWords, estimatesPicture } from '../../../packages/study/src/picture/estimates-picture.ts';
import { declaredStudy } from '../../support/declared-study.ts';
import { studyTrial } from '../../support/study-trials.ts';

const study = declaredStudy({
  choices: [
    { parameter: 'perPerson', values: ['greatest'], why: 'why' },
    { parameter: 'protocol.heightFraction', values: [0.6, 0.9], why: 'why' },
    { parameter: 'scale', values: ['ratio'], why: 'why' },
  ],
});

function trials(ahead: number) {
  return [20, 22, 19, 21, 25].flatMap((one, at) => [
    studyTrial(`c${at}.csv`, { person: `c${at}`, arm: 'cycling' }, one + ahead),
    studyTrial(`w${at}.csv`, { person: `w${at}`, arm: 'walking' }, one),
  ]);
}

function found(declaredAhead = 8): Multiverse {
  const of = new Map([
    ['as declared', trials(declaredAhead)],
    ['protocol.heightFraction=0.6', trials(12)],
    ['protocol.heightFraction=0.9', trials(0)],
  ]);
  return multiverse(study, analysesOf(study), of, new Map());
}

/** Places of the marks from left to right as they come in the file: kind and x. */
function marks(svg: string): { kind: string; x: number }[] {
  const field = svg.slice(svg.indexOf('class="hair"'));
  return [
    ...field.matchAll(/<circle class="(full|open)" cx="([\d.]+)"|<path class="voice" d="M[\d.]+ [\d.]+L([\d.]+)/g),
  ].map(([, kind, x, declared]) => ({ kind: kind ?? 'declared', x: Number(x ?? declared) }));
}

test('every analysis on the declared scale has a mark, in the order of the estimates, with its kind told by its shape', () => {
  const svg = estimatesPicture(study, found(), 'made so');
  const drawn = marks(svg);
  expect(drawn.map(({ kind }) => kind)).toEqual(['open', 'open', 'full', 'full', 'full', 'declared']);
  // the declared one is drawn last, over the others, and stands where 8 is: between 0 and 12
  const xs = drawn.map(({ x }) => x);
  expect(xs[0]).toBe(xs[1]);
  expect(xs[5]).toBe(xs[2]);
  expect((xs[5] - xs[0]) / (xs[4] - xs[0])).toBeCloseTo(8 / 12, 2);
  expect(svg).toContain('>as declared: they differ</text>');
  expect(svg).toContain('>perPerson greatest, heightFraction 0.6</text>');
  expect(svg).toContain('6 on the other scale stand in the table alone');
});

test('a sentence says how many, in the page and for who does not see it', () => {
  const svg = estimatesPicture(study, found(), 'made <so>');
  expect(changedWords(found())).toBe('4 of 12 analyses say something else than the declared one');
  expect(svg).toContain('<title id="name">4 of 12 analyses say something else than the declared one</title>');
  expect(svg).toMatch(
    /<desc id="what">cycling less walking, count\.scored: .* Declared: 8\.0 \(4\.6 to 11\.4\)\.<\/desc>/,
  );
  expect(svg).toContain('<metadata>made &lt;so&gt;</metadata>');
});

test('a difference within the margin is a stroke, and is said', () => {
  const wide = declaredStudy({ ...study, comparison: { ...study.comparison, margin: 30 } });
  const of = new Map(analysesOf(wide).map(({ assessment }) => [assessment.key, trials(0)]));
  const svg = estimatesPicture(wide, multiverse(wide, analysesOf(wide), of, new Map()), '');
  expect(svg).toContain('>as declared: differ by less than the margin</text>');
  expect(marks(svg).map(({ kind }) => kind)).toEqual(['declared']);
});

test('where the declared analysis says nothing that is said, and the page is whole', () => {
  const none = new Map(analysesOf(study).map(({ assessment }) => [assessment.key, []]));
  const nothing = multiverse(study, analysesOf(study), none, new Map());
  expect(changedWords(nothing)).toBe('The declared analysis says nothing; 0 of 12 do');
  const svg = estimatesPicture(study, nothing, '');
  expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  expect(svg.endsWith('</svg>\n')).toBe(true);
});
