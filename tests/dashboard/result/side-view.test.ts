import {
  compareValues,
  type MeasuredValue,
  RATIO_BLOCKS,
  type SideBlock,
  type SideCircumstances,
  VALUE_BLOCKS,
} from '@surae/analysis';
import { RATIO_BLOCK_SENTENCES, RATIO_UNBLOCK_SENTENCES, VALUE_BLOCK_SENTENCES } from '@surae/shared';
import { expect, test } from 'vitest';
import { type SideView, sideView } from '../../../apps/dashboard/src/result/side-view.ts';
import type { ValueWords } from '../../../apps/dashboard/src/result/value-words.ts';
import { JUDGING_WORDS } from '../../support/judging-words.ts';

const rules = { ratioLine: 0.9, plainNoMost: 0.2, plainYesLeast: 0.8 };
const words = { unit: 'repetitions', decimals: 0, isCount: true };
const asked: SideCircumstances = { oneSidedSport: false, legLengthRaise: false, ageYears: 38 };
const of = (value: number, u = 2.25): MeasuredValue => ({ value, u, unit: '1', convention: 'scored repetitions' });
const soreRight = { over: 'right', under: 'left', why: 'sore-over-other' } as const;
const neither = { over: 'left', under: 'right', why: 'left-over-right' } as const;

function viewOf(
  left: number,
  right: number,
  {
    blocks = [],
    direction = soreRight,
    u = 2.25,
    circumstances = asked,
    told = words,
  }: {
    readonly blocks?: readonly SideBlock[];
    readonly direction?: typeof soreRight | typeof neither;
    readonly u?: number;
    readonly circumstances?: SideCircumstances;
    readonly told?: ValueWords;
  } = {},
): SideView {
  const comparison = compareValues({ left: of(left, u), right: of(right, u) }, blocks, direction, circumstances, rules);
  return sideView({
    comparison,
    values: { left, right },
    zone: 'possible',
    error: null,
    underOthers: [],
    hangsOnReliability: null,
    words: told,
  });
}

test.each([
  [27, 19, 'Yes, the right leg does less: 19 against 27.'],
  [27, 30, 'No, the right leg does not do less: 30 against 27.'],
  [27, 25, 'Cannot tell whether the right leg does less: 25 against 27.'],
])('left %i, right %i, right sore: %s', (left, right, lead) => {
  expect(viewOf(left, right).lead).toBe(lead);
});

test('where neither leg is the sore one, the answer is about the one that does less', () => {
  expect(viewOf(27, 19, { direction: neither }).lead).toBe('Yes, the right leg does less: 19 against 27.');
  expect(viewOf(19, 27, { direction: neither }).lead).toBe('Yes, the left leg does less: 19 against 27.');
  expect(viewOf(40, 40, { direction: neither, u: 1 }).lead).toBe('No, neither leg does less: left 40, right 40.');
});

test('a percentage never stands without its interval, and what holds even so stands with it', () => {
  for (const [left, right] of [
    [27, 19],
    [27, 27],
    [8, 40],
  ] as const) {
    const { lines, lead, note } = viewOf(left, right);
    expect(note).toBe('The other leg may be low too.');
    expect(lead).not.toMatch(/%/);
    const ratios = lines.filter((line) => / over /.test(line));
    expect(ratios).toHaveLength(1);
    expect(ratios[0]).toMatch(/\d+ % \(95 %: \d+ to \d+ %\)\. The other leg may be low too\.$/);
  }
});

test('an equal result says so, and no probability is shown as certain', () => {
  expect(viewOf(27, 27).lines).toContainEqual(expect.stringMatching(/^Both did the same number/));
  expect(viewOf(40, 10, { u: 1 }).lines).toContainEqual(expect.stringMatching(/probability is over 0\.99\./));
  expect(viewOf(20, 40, { u: 1 }).lines).toContainEqual(expect.stringMatching(/probability is under 0\.01\./));
});

test('cautions about the person go with the ratio', () => {
  const { lines } = viewOf(27, 19, { circumstances: { ...asked, oneSidedSport: true } });
  expect(lines).toContain('A sport that loads one leg more can make the legs differ without harm.');
});

test.each([...RATIO_BLOCKS, ...VALUE_BLOCKS])('%s: no figure, its reason and what would lift it', (code) => {
  const view = viewOf(27, 19, { blocks: [code] });
  const reasons = { ...RATIO_BLOCK_SENTENCES, ...VALUE_BLOCK_SENTENCES };
  expect(view.ratio).toBeNull();
  expect(view.blocks).toEqual([{ why: reasons[code].text, unblock: expect.stringMatching(/^[A-Z].*\.$/) as string }]);
  expect(view.note).toBe('The other leg may be low too.');
  expect(JSON.stringify(view)).not.toMatch(/\d|%/);
  for (const word of JUDGING_WORDS) expect(JSON.stringify(view)).not.toMatch(word);
});

test('the first reason stands in the answer, and how many more there are', () => {
  const lead = (...blocks: readonly SideBlock[]): string => viewOf(27, 19, { blocks }).lead;
  expect(lead('short-rest')).toBe('No ratio of the two legs. The rest between the legs was shorter than two minutes.');
  expect(lead('short-rest', 'nerve-signs')).toMatch(/One more reason stands against one\.$/);
  expect(lead('short-rest', 'nerve-signs', 'fixed-test')).toMatch(/ 2 more reasons stand against one\.$/);
  expect(lead('nerve-signs', 'both-sides-sore')).toMatch(/^Both legs are sore: no ratio/);
  expect(RATIO_UNBLOCK_SENTENCES['short-rest'].text).toBe(viewOf(27, 19, { blocks: ['short-rest'] }).blocks[0].unblock);
});

test('a quantity has its unit, is less and not fewer, and stands against its own past where both legs are sore', () => {
  const told = { unit: 'N', decimals: 0, isCount: false };
  const { lead, lines } = viewOf(1425, 1150, { u: 42.6, told });
  expect(lead).toBe('Yes, the right leg does less: 1150 N against 1425 N.');
  expect(lines[1]).toMatch(/^Right did 275 N less than left \(95 %: −\d+ to −\d+ N\)\.$/);
  expect(viewOf(1150, 1150, { u: 42.6, told }).lines[1]).toMatch(/^Both did the same \(95 %: −\d+ to \+\d+ N\)\.$/);
  expect(viewOf(1425, 1150, { blocks: ['both-sides-sore'], told }).lead).toBe(
    'Both legs are sore: no ratio, each leg against its own past.',
  );
});
