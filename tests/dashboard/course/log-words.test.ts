import { expect, test } from 'vitest';
import { declinedWords, episodeWords, logWords, planWords } from '../../../apps/dashboard/src/course/log-words.ts';
import { madePlanItem } from '../../support/plan-items.ts';

const on = '2026-03-04';

test('what was not told is said to be so, and is no zero', () => {
  expect(logWords({ kind: 'morning-check', body: { on, pain: { left: 3, right: null }, stiffnessMin: null } })).toBe(
    'Pain: left 3, right not told of 10. Stiff: not told.',
  );
});

test('minutes of stiffness are told as the answer that they lie in', () => {
  const pain = { left: 0, right: 0 };
  expect(logWords({ kind: 'morning-check', body: { on, pain, stiffnessMin: 5 } })).toMatch(
    /Stiff: under 10 minutes\.$/,
  );
  expect(logWords({ kind: 'morning-check', body: { on, pain, stiffnessMin: 0 } })).toMatch(/Stiff: not at all\.$/);
});

test('a run is told by what was told of it', () => {
  const pain = { left: 1, right: 2 };
  expect(logWords({ kind: 'run', body: { on, durationS: 1500, distanceM: null, pain } })).toBe(
    '25 min. Pain: left 1, right 2 of 10.',
  );
  expect(logWords({ kind: 'run', body: { on, durationS: 1530, distanceM: 4300, pain } })).toMatch(
    /^25\.5 min, 4\.3 km\. /,
  );
});

test('steps a minute and hours on the feet are told with their unit', () => {
  const pain = { left: null, right: null };
  expect(logWords({ kind: 'run', body: { on, durationS: 1500, distanceM: null, pain, cadencePerMin: 168 } })).toMatch(
    /^25 min, 168 steps a minute\. /,
  );
  expect(logWords({ kind: 'on-feet', body: { on, hours: 7.5 } })).toBe('7.5 hours standing or walking.');
});

test('what was done and what was planned are told alike', () => {
  const dose = {
    what: 'slow raises',
    side: 'left',
    load: { value: 10, unit: 'kg' },
    sets: 3,
    repetitions: 15,
  } as const;
  const body = { ...dose, planItemId: null, on, painDuring: 2, exertion: null };
  expect(logWords({ kind: 'done-item', body })).toBe(
    'Slow raises, left, 3 times 15, with 10 kg. Pain during it: 2 of 10.',
  );
  const item = madePlanItem({
    ...dose,
    perWeek: 3,
    from: on,
    until: null,
    proposedBy: null,
    decision: 'declined',
    why: null,
  });
  expect(planWords(item)).toBe('Slow raises, left, 3 times 15, with 10 kg, 3 times a week, not taken on.');
});

test('what a rule proposed says which rule, and so does what was declined', () => {
  const proposedBy = 'guidance.start-single/1/common-practice/right/single';
  const item = madePlanItem({ side: 'right', proposedBy, decision: 'changed' });
  expect(planWords(item)).toBe(
    'Slow raises, right, proposed by a rule (guidance.start-single, version 1), changed by the clinician.',
  );
  expect(declinedWords({ proposedBy, reason: 'wish' })).toBe(
    'Proposal declined (guidance.start-single, version 1, right): the patient wants another way.',
  );
  // a reason of a newer version is told by its code
  expect(declinedWords({ proposedBy, reason: 'of-tomorrow' as 'wish' })).toMatch(/: of-tomorrow\.$/);
});

test('a complaint', () => {
  const sore = { left: 'insertion', right: null } as const;
  const open = { onset: null, story: null, goal: null, loads: null };
  expect(episodeWords({ ...open, sore, began: '2026-01', over: null })).toEqual([
    'Left: at the heel bone, right: not asked.',
    'It began 2026-01.',
  ]);
});
