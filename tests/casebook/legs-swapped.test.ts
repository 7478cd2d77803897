import type { Json, StoredDocument } from '@surae/storage';
import { expect, test } from 'vitest';
import { swappedAt } from '../../packages/casebook/src/legs-swapped.ts';
import { practiceFor } from '../../packages/casebook/src/practice.ts';
import { pullSetOf } from '../../packages/casebook/src/pull-events.ts';
import { foldVisit, setOf } from '../../packages/casebook/src/visit-events.ts';
import { madeReport } from '../support/made-visit.ts';

let sequence = 0;
function document(kind: string, body: object, id = `d${sequence + 1}`): StoredDocument {
  sequence += 1;
  const at = `2026-03-01T09:00:${String(sequence % 60).padStart(2, '0')}Z`;
  return { id, sequence, hash: '', kind, schema: 1, about: 'v', author: 'test', at, body: body as Json };
}
const begun = document('visit', { personId: 'p' }, 'v');
const choice = (side: string) => ({
  side,
  protocolId: 'single-leg.floor',
  protocolFingerprint: 'f',
  placement: 'heel',
  origin: 'live',
});
const set = (side: 'left' | 'right', count: number): StoredDocument[] => [
  document('set-begun', { choice: choice(side), bytesId: `bytes-${side}` }, side),
  document('set-stopped', { setId: side, liveCount: count }),
  document('set-end', { setId: side, end: { reason: 'fatigue', painPeak: 0, exertion: 9 } }),
  document('set-result', { setId: side, report: madeReport(side, { scored: count }), settingsHash: 'h' }),
];
const swap = (of = 'heel-raise') => document('legs-swapped', { test: of });

test('what was recorded has the name of the other leg, and is the same recording', () => {
  const before = [...set('left', 22), ...set('right', 9)];
  const visit = foldVisit(begun, [...before, swap()]);
  for (const [side, was, count] of [
    ['left', 'right', 9],
    ['right', 'left', 22],
  ] as const) {
    const now = setOf(visit, side)!;
    expect(now).toMatchObject({ id: was, bytesId: `bytes-${was}`, choice: { side } });
    expect(now.report).toMatchObject({ side, count: { scored: count } });
  }
  // nothing that is stored was changed: the swap is one more document
  expect(before[0].body).toMatchObject({ choice: { side: 'left' } });
  expect(visit.sets).toHaveLength(2);
});

test('after the first leg the second one is asked under its own name, and a late result gets the name that counts by then', () => {
  const first = set('left', 22);
  const visit = foldVisit(
    begun,
    [...first.slice(0, 3), swap(), first[3], ...set('right', 9)].map((one) => one),
  );
  expect(setOf(visit, 'right')?.report?.side).toBe('right');
  const late = foldVisit(begun, [...first.slice(0, 3), swap(), first[3]]);
  expect(setOf(late, 'right')?.report).toMatchObject({ side: 'right', count: { scored: 22 } });
  expect(setOf(late, 'left')).toBeUndefined();
});

test('told once more it is as it was, and both are kept with their times', () => {
  const told = [...set('left', 22), swap(), swap()];
  const visit = foldVisit(begun, told);
  expect(setOf(visit, 'left')).toMatchObject({ id: 'left', swapped: false, report: { side: 'left' } });
  expect(visit.swaps).toHaveLength(2);
  expect(swappedAt(visit, 'heel-raise')).toBeNull();
  const once = foldVisit(begun, told.slice(0, -1));
  expect(swappedAt(once, 'heel-raise')).toBe(told.at(-2)?.at);
  expect(swappedAt(once, 'isometric')).toBeNull();
});

test('practice goes with its leg, one test says nothing of the other, and a report that knows no leg stays so', () => {
  const practice = [
    document('practice-begun', { choice: choice('left'), bytesId: 'b' }, 'practice'),
    document('practice-stopped', {
      practiceId: 'practice',
      raises: [
        { heightM: 0.1, heightUM: 0 },
        { heightM: 0.1, heightUM: 0 },
      ],
    }),
  ];
  const pulls = [document('pull-begun', { choice: { ...choice('left'), placement: 'platform' } }, 'pull')];
  const raises = foldVisit(begun, [...practice, ...pulls, ...set('left', 22), swap()]);
  expect(practiceFor(raises, { side: 'right', placement: 'heel', origin: 'live' })?.id).toBe('practice');
  expect(pullSetOf(raises, 'left')?.id).toBe('pull');
  const pushes = foldVisit(begun, [...pulls, ...set('left', 22), swap('isometric')]);
  expect([pullSetOf(pushes, 'right')?.id, setOf(pushes, 'left')?.id]).toEqual(['pull', 'left']);
  const nameless = document('set-result', {
    setId: 'left',
    report: madeReport('left', {}, 'fatigue', { side: null }),
    settingsHash: 'h',
  });
  expect(setOf(foldVisit(begun, [...set('left', 22).slice(0, 3), nameless, swap()]), 'right')?.report?.side).toBeNull();
});
