import { expect, test } from 'vitest';
import { recordedLegs } from '../../../apps/dashboard/src/journey/recorded-legs.ts';
import { firstSide } from '../../../apps/dashboard/src/journey/steps.ts';
import { madeSet, madeVisit } from '../../support/made-visit.ts';

const [left, right] = [madeSet('left', null), madeSet('right', null)];

test('names of legs can be changed once one is recorded, and not in a closed visit or one of a single leg', () => {
  expect(recordedLegs(madeVisit(), 'heel-raise')).toEqual([]);
  expect(recordedLegs(madeVisit(left), 'heel-raise')).toEqual(['left']);
  expect(recordedLegs(madeVisit(right, left), 'heel-raise')).toEqual(['left', 'right']);
  expect(recordedLegs(madeVisit(left), 'isometric')).toEqual([]);
  expect(recordedLegs({ ...madeVisit(left, right), closed: true }, 'heel-raise')).toEqual([]);
  expect(recordedLegs({ ...madeVisit(left), only: 'left' }, 'heel-raise')).toEqual([]);
});

test('nothing is renamed while a set runs, and one that was set aside is none', () => {
  expect(recordedLegs(madeVisit(left, { ...right, stoppedAt: null }), 'heel-raise')).toEqual([]);
  expect(recordedLegs(madeVisit({ ...left, setAside: true }, right), 'heel-raise')).toEqual(['right']);
  // the leg that is recorded decides which one comes next
  expect(firstSide(madeVisit(right))).toBe('right');
});
