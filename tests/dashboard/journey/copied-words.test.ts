import { HISTORY_WORDS, SORENESS_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import {
  copiedSorenessWords,
  sameHistoryWords,
  sameSorenessWords,
} from '../../../apps/dashboard/src/journey/copied-words.ts';
import { ALL_TOLD, legTold } from '../../support/told-visit.ts';

const at = '2026-03-01T09:30:00.000+01:00';

test('a press says beforehand what it takes over, and from where', () => {
  const sore = { left: 'no', right: 'insertion' } as const;
  expect(sameSorenessWords({ sore, from: 'visit', at })).toBe(
    'As on 1 Mar 2026: left not sore, right at the heel bone',
  );
  expect(sameSorenessWords({ sore: { ...sore, left: null }, from: 'episode', at })).toBe(
    'As the episode says: left not told, right at the heel bone',
  );
  expect(copiedSorenessWords({ sore, from: 'visit', at })).toContain('the visit of 1 Mar 2026');
  expect(copiedSorenessWords({ sore, from: 'episode', at })).toBe(SORENESS_WORDS['copied-episode'].text);
});

test('what lasts is said answer by answer, without those that were not asked', () => {
  const legs = { left: legTold('over-a-year'), right: legTold(null) };
  expect(sameHistoryWords({ history: { legs, about: ['one-sided-sport'] }, begunAt: at })).toBe(
    `As on 1 Mar 2026 (left leg: over twelve months ago; ${HISTORY_WORDS['one-sided-sport'].text})`,
  );
  expect(sameHistoryWords({ history: ALL_TOLD, begunAt: at })).toBe(
    'As on 1 Mar 2026 (left leg: none; right leg: none; none of these)',
  );
  expect(sameHistoryWords({ history: { legs, about: null }, begunAt: at })).not.toContain(';');
});
