import type { Report } from '@surae/analysis';
import { FLOOR } from '@surae/shared';
import { expect, test } from 'vitest';
import {
  besideSets,
  type ConclusionOf,
  conclusionsOf,
  robustLines,
} from '../../../apps/dashboard/src/result/recount-conclusion.ts';
import { made } from '../../support/legs-visit.ts';
import { toldReport } from '../../support/told-visit.ts';

async function given(): Promise<ConclusionOf> {
  return made(
    { day: '2026-03-02', left: { count: 30 }, right: { count: 12 } },
    { day: '2026-03-30', left: { count: 30 }, right: { count: 28 } },
  );
}
const by = (side: 'left' | 'right', count: number): Report => toldReport(side, { count, protocol: FLOOR });

test('a set is held beside the other leg of the visit and beside the last one of its leg that was done alike', async () => {
  const of = await given();
  const right = of.visit.sets.find(({ choice }) => choice.side === 'right')!;
  const { other, before } = besideSets(right, of);
  expect(other?.choice.side).toBe('left');
  expect(before?.id).toBe(of.earlier[0].sets.find(({ choice }) => choice.side === 'right')!.id);
  expect(conclusionsOf(right, of, new Map())).toEqual({ less: expect.any(String) as string, more: 'yes' });
});

test('counted by other criteria alone it is held beside nothing; with the others counted alike it is', async () => {
  const of = await given();
  const right = of.visit.sets.find(({ choice }) => choice.side === 'right')!;
  const { other, before } = besideSets(right, of);
  const alone = new Map([[right.id, by('right', 10)]]);
  expect(conclusionsOf(right, of, alone)).toEqual({ less: null, more: null });
  const all = new Map([...alone, [other!.id, by('left', 30)], [before!.id, by('right', 30)]]);
  expect(conclusionsOf(right, of, all)).toEqual({ less: 'yes', more: 'no' });
});

test('what was kept is not touched by a look under other criteria', async () => {
  const of = await given();
  const right = of.visit.sets.find(({ choice }) => choice.side === 'right')!;
  const before = JSON.stringify(of);
  conclusionsOf(right, of, new Map([[right.id, by('right', 10)]]));
  expect(JSON.stringify(of)).toBe(before);
});

test('a conclusion is robust where both criteria give one answer, and hangs on them where they are opposite', () => {
  const robust = (...of: Parameters<typeof robustLines>) => robustLines(...of).map((line) => line.robust);
  const open = { less: null, more: null };
  expect(robust({ less: 'yes', more: 'yes' }, { less: 'yes', more: 'no' }, [])).toEqual(['yes', 'no']);
  expect(robust({ ...open, less: 'cannot_tell' }, { ...open, less: 'yes' }, [])).toEqual(['cannot_tell']);
  expect(robust({ ...open, less: 'yes' }, open, [])).toEqual(['blocked']);
  expect(robust(open, open, [])).toEqual([]);
});

test('a recording that is gone leaves its conclusion open, and says which one', () => {
  const [line, ...rest] = robustLines({ less: 'yes', more: null }, { less: null, more: null }, ['other-leg']);
  expect([line.robust, rest]).toEqual(['cannot_tell', []]);
  expect(line.text).toContain('the other leg');
});
