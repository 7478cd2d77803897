import type { SideRatio } from '@surae/analysis';
import { toldSide } from '@surae/casebook';
import { expect, test } from 'vitest';

const ratio = (why: SideRatio['direction']['why'], left: number, right: number): SideRatio =>
  ({
    direction: { over: 'left', under: 'right', why },
    underLine: [
      { side: 'left', probability: left, verdict: 'no' },
      { side: 'right', probability: right, verdict: 'yes' },
    ],
  }) as unknown as SideRatio;

test('the sore leg is told of; where there is none, the one that more likely does less', () => {
  expect(toldSide(ratio('sore-over-other', 0.1, 0.9)).side).toBe('left');
  expect(toldSide(ratio('left-over-right', 0.1, 0.9)).side).toBe('right');
  expect(toldSide(ratio('left-over-right', 0.9, 0.1)).side).toBe('left');
  expect(toldSide(ratio('left-over-right', 0.5, 0.5)).side).toBe('left');
});
