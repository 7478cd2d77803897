import type { LastFlare } from '@surae/shared';
import { expect, test } from 'vitest';
import { historyBefore } from '../../packages/casebook/src/copied-forward.ts';
import { isTold, noHistory } from '../../packages/casebook/src/history.ts';
import { readBody } from '../../packages/casebook/src/kinds/read-body.ts';
import { lastFlareOf, withFlareNow, withLastFlare } from '../../packages/casebook/src/last-flare.ts';
import { madeVisit } from '../support/made-visit.ts';
import { legTold } from '../support/told-visit.ts';

const at = (day: string): string => `${day}T09:00:00.000+01:00`;

function visit(day: string, left: Partial<ReturnType<typeof legTold>> = {}) {
  const legs = { ...noHistory.legs, left: { ...legTold(null), ...left } };
  const sore = { left: 'mid-portion', right: 'no' } as const;
  return { ...madeVisit(), begunAt: at(day), sore, history: { legs, about: null } };
}

const told = (lastFlare: LastFlare) => ({ lastFlare });
const now = { irritability: legTold(null, { flare: 'yes' }).irritability };
const none = { irritability: legTold(null, { flare: 'no' }).irritability };

test('nothing told is nothing known, and no flare now says nothing of the days before', () => {
  expect(lastFlareOf(visit('2026-03-10'), [], 'left')).toEqual({ answer: null, since: null, days: null });
  expect(lastFlareOf(visit('2026-03-10', none), [], 'left').days).toBeNull();
  expect(lastFlareOf({ ...madeVisit(), sore: { left: 'no', right: 'no' } }, [], 'left').days).toBeNull();
});

test('an answer is a range of days, and a flare now counts before whatever else was told', () => {
  expect(lastFlareOf(visit('2026-03-10', told('within-a-week')), [], 'left').days).toEqual({ least: 0, under: 7 });
  const longer = lastFlareOf(visit('2026-03-10', told('longer-ago-or-never')), [], 'left');
  expect(longer.days).toEqual({ least: 7, under: Number.POSITIVE_INFINITY });
  expect(lastFlareOf(visit('2026-03-10', { ...now, ...told('longer-ago-or-never') }), [], 'left')).toEqual({
    answer: 'now',
    since: null,
    days: { least: 0, under: 1 },
  });
});

test('an earlier visit that tells of a flare bounds the days, whatever is told today', () => {
  const flare = visit('2026-03-06', now);
  const today = visit('2026-03-10', told('longer-ago-or-never'));
  expect(lastFlareOf(today, [flare], 'left')).toEqual({
    answer: 'longer-ago-or-never',
    since: at('2026-03-06'),
    days: { least: 7, under: 5 },
  });
  expect(lastFlareOf(visit('2026-03-10'), [flare], 'left').days).toEqual({ least: 0, under: 5 });
  // what was nearer today stands, and one of long ago bounds nothing near
  expect(lastFlareOf(visit('2026-03-10', told('within-two-days')), [flare], 'left').since).toBeNull();
  expect(lastFlareOf(visit('2026-03-10'), [visit('2026-01-06', now)], 'left').days).toEqual({ least: 0, under: 64 });
  expect(lastFlareOf(today, [visit('2026-03-06', told('longer-ago-or-never'))], 'left').since).toBeNull();
  expect(lastFlareOf(today, [flare], 'right').days).toBeNull();
});

test('of a sore leg both questions say the same', () => {
  const leg = legTold('none', { painNow: 3 });
  const since = withLastFlare(leg, 'within-a-week', true);
  expect([since.lastFlare, since.irritability.flare, since.irritability.painNow]).toEqual(['within-a-week', 'no', 3]);
  expect(withLastFlare(leg, 'now', true).irritability.flare).toBe('yes');
  expect(withLastFlare(leg, 'within-a-week', false).irritability.flare).toBeNull();
  expect(withFlareNow(since, 'yes').lastFlare).toBe('now');
  expect(withFlareNow(since, 'no').lastFlare).toBe('within-a-week');
  expect('lastFlare' in withFlareNow(withLastFlare(leg, 'now', true), 'no')).toBe(false);
});

test('an answer that is taken back leaves nothing behind, and what was told elsewhere stays', () => {
  expect(withLastFlare(withLastFlare(legTold('none'), 'now', true), null, true)).toEqual(legTold('none'));
  expect(withLastFlare(legTold('none', { flare: 'no' }), null, true)).toEqual(legTold('none', { flare: 'no' }));
});

test('it is something told, of that day alone, and a member that older documents do without', () => {
  const today = visit('2026-03-10', told('within-a-week'));
  expect(isTold(today.history)).toBe(true);
  expect(historyBefore([today])).toBeNull();
  const injured = visit('2026-03-10', { ...told('within-a-week'), injury: 'none' });
  expect(historyBefore([injured])!.history.legs.left).toEqual(legTold('none'));
  const reads = (history: object): boolean =>
    readBody({
      id: 'one',
      kind: 'visit-history',
      schema: 1,
      about: 'visit',
      author: 'KL',
      at: at('2026-03-10'),
      body: JSON.parse(JSON.stringify({ history })) as Parameters<typeof readBody>[0]['body'],
      sequence: 1,
      hash: '',
    }).ok;
  expect([reads(noHistory), reads(today.history)]).toEqual([true, true]);
  expect(reads(visit('2026-03-10', { lastFlare: 'yesterday' as LastFlare }).history)).toBe(false);
});
