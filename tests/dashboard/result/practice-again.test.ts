import { assess, counterInput, defaultSettings, type Report } from '@surae/analysis';
import type { Person, Visit } from '@surae/casebook';
import { FLOOR } from '@surae/shared';
import { simulateSet } from '@surae/simulation';
import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { recordedStream } from '../../../apps/dashboard/src/demo/recorded-stream.ts';
import { assessSet, type FinalPass } from '../../../apps/dashboard/src/result/assessment.ts';
import { practiceAgain, practiceHeights } from '../../../apps/dashboard/src/result/practice-again.ts';
import { madeSet, madeVisit } from '../../support/made-visit.ts';

const person: Person = { id: 'p', name: 'A 1', bodyMassKg: 70, heelLeverM: 0.18, demo: false };
const final: FinalPass = (trace, request) => Promise.resolve(assess(trace, request, defaultSettings()));

async function recorded(store: MemoryStore, count: number, topPitchRad: number): Promise<string> {
  const { trace } = simulateSet({
    seed: 7,
    placement: 'heel',
    level: 'clean',
    count,
    heelLeverM: 0.18,
    person: { topPitchRad },
  });
  return recordedStream(await store.openBytes('raises', null), counterInput({ groups: trace.groups }, 'heel'));
}

test('a set is held against practice raises that are assessed again from their own bytes', async () => {
  const store = new MemoryStore();
  const set = { ...madeSet('left', null), bytesId: await recorded(store, 10, 0.5) };
  const choice = { ...set.choice, protocolId: FLOOR.id };
  const found = [
    { heightM: 0.3, heightUM: 0.01 },
    { heightM: 0.3, heightUM: 0.01 },
  ];
  const practice = {
    id: 'practice',
    choice,
    bytesId: await recorded(store, 3, 0.62),
    begunAt: '2026-03-01T09:28:00.000+01:00',
    stoppedAt: '2026-03-01T09:29:00.000+01:00',
    raises: found,
  };
  const visit: Visit = { ...madeVisit(set), practice: [practice] };
  const read = (id: string) => store.bytes(id);
  const again = await practiceAgain(visit, set, person, read, final);
  expect(again).toHaveLength(3);
  // not what was written down when they were recorded
  for (const { heightM } of again) expect(heightM).toBeLessThan(0.2);
  const bytes = await store.bytes(set.bytesId);
  const held = await assessSet(set, person, bytes, final, { practice: again });
  const alone = await assessSet(set, person, bytes, final);
  const best = again.map(({ heightM }) => heightM).sort((a, b) => b - a);
  expect(held.reference).toMatchObject({ rule: 'best-two-of-familiarisation', raised: false });
  expect(held.reference!.heightM).toBeCloseTo((best[0] + best[1]) / 2, 9);
  expect(alone.reference!.rule).toBe('best-two-of-first-repetitions');
  expect(held.protocol.fingerprint).not.toBe(alone.protocol.fingerprint);
  expect(held.reference!.heightM).toBeGreaterThan(alone.reference!.heightM!);
  // bytes that are gone leave what was found then; without practice there is nothing
  expect(await practiceAgain(visit, set, person, () => Promise.resolve(undefined), final)).toEqual(found);
  expect(await practiceAgain(madeVisit(set), set, person, read, final)).toEqual([]);
});

test('a height that cannot be told is none, a rise of the body takes its place, and three count', () => {
  const raise = (heightM: number | null, riseM: number | null) => ({
    heightM,
    heightUM: heightM && 0.01,
    riseM,
    riseUM: riseM && 0.02,
  });
  const of = (...raises: object[]) => practiceHeights({ repetitions: raises } as unknown as Report);
  expect(of(raise(0.1, null), raise(null, 0.05), raise(null, null))).toEqual([
    { heightM: 0.1, heightUM: 0.01 },
    { heightM: 0.05, heightUM: 0.02 },
  ]);
  expect(of(...Array.from({ length: 5 }, () => raise(0.1, null)))).toHaveLength(3);
});
