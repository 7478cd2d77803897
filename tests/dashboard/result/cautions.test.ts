import { SAFETY_LIST } from '@surae/shared';
import { expect, test } from 'vitest';
import { cautions, legName } from '../../../apps/dashboard/src/result/cautions.ts';
import { madeReport, madeSet, madeVisit, sureCount } from '../../support/made-visit.ts';

const plain = madeSet('right', madeReport('right', sureCount(25), 'fatigue', { withheld: [], issues: [] }));

test('a plain pair of sets has no caution', () => {
  const left = madeSet('left', madeReport('left', sureCount(22), 'fatigue', { withheld: [], issues: [] }));
  expect(cautions(madeVisit(left, plain))).toEqual([]);
});

test('what kind of result an end makes it, is said for its leg', () => {
  const left = madeSet('left', madeReport('left', sureCount(12), 'pain', { withheld: [], issues: [] }));
  expect(cautions(madeVisit(left, plain))).toEqual([
    { side: 'left', text: 'The count shows what was tolerated before the pain limit, not what the calf could do.' },
  ]);
});

test('warnings of the signal are said once however often they came; notes are left to the list', () => {
  const gap = { code: 'gap', fromS: 1, toS: 2 } as const;
  const report = madeReport('left', sureCount(22), 'fatigue', {
    withheld: ['no-heel-lever', 'no-body-mass', 'no-ankle-geometry'],
    gate: { usable: 'cannot_tell', reasons: ['gaps'] },
    effort: { good: 'no', signs: [], reason: 'stopped-before-signs-of-fatigue' },
    issues: [
      { ...gap, severity: 'warning' },
      { ...gap, severity: 'warning' },
      { code: 'spikes', severity: 'note', fromS: 1, toS: 2 },
    ],
  });
  expect(cautions(madeVisit(madeSet('left', report), plain)).map(({ text }) => text)).toEqual([
    'Stopped before signs of fatigue: ask about pain, worry, balance or a misunderstanding.',
    'Too much of the set is lost in gaps to compare it with another.',
    'Samples are missing; a repetition with too long a gap cannot be judged.',
    'Work and power are not shown: enter the body mass.',
  ]);
});

test('what holds for both legs is said once, without a leg', () => {
  const changes = { withheld: ['no-body-mass'], issues: [] } as const;
  const visit = madeVisit(
    madeSet('left', madeReport('left', sureCount(22), 'fatigue', changes)),
    madeSet('right', madeReport('right', sureCount(25), 'technical', changes)),
  );
  expect(cautions(visit)).toEqual([
    { side: null, text: 'Work and power are not shown: enter the body mass.' },
    { side: 'right', text: 'The test is incomplete; its count is not interpreted.' },
  ]);
});

test('a caution that was ticked before the test stands on the result', () => {
  const { id, ask } = SAFETY_LIST.find(({ effect }) => effect === 'caution')!;
  const safety = {
    listVersion: '1',
    seenWhole: true,
    ticked: [id],
    overridden: [],
    at: '2026-03-01T09:26:00.000+01:00',
  };
  const [first] = cautions({ ...madeVisit(plain), safety });
  expect(first?.side).toBeNull();
  expect(first?.text).toContain(ask);
  // and it goes on to stand there when the list was clear on the day of the second leg
  const clear = { ...safety, ticked: [], at: '2026-03-02T09:26:00.000+01:00' };
  const later = cautions({ ...madeVisit(plain), safety: clear, earlierSafety: [safety] });
  expect(later[0]?.text).toContain(ask);
});

test('a leg has its name', () => {
  expect([legName('left'), legName('right')]).toEqual(['Left', 'Right']);
});
