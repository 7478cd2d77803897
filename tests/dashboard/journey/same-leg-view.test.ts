import type { Visit, VisitSet } from '@surae/casebook';
import { expect, test } from 'vitest';
import { sameLegView } from '../../../apps/dashboard/src/journey/same-leg-view.ts';
import { madeReport, madeSet, madeVisit } from '../../support/made-visit.ts';

const left = madeSet('left', madeReport('left', {}));
const right = madeSet('right', madeReport('right', {}));
const view = (sets: readonly VisitSet[], changes: Partial<Visit> = {}) =>
  sameLegView({ ...madeVisit(...sets), ...changes }, 'heel-raise');

test('it is asked of the later one, once both legs are done and nobody answered', () => {
  expect(view([left, right])).toMatchObject({ kind: 'asked', setId: 'set-right', side: 'right' });
  expect(view([right, left])).toMatchObject({ kind: 'asked', setId: 'set-left', side: 'left' });
  expect(view([left])).toBeNull();
  expect(view([left, { ...right, end: null }])).toBeNull();
  expect(view([left, { ...right, sameLeg: 'no' }])).toBeNull();
  expect(view([left, right], { closed: true })).toBeNull();
  expect(view([left, right], { only: 'left' })).toBeNull();
  expect(sameLegView(madeVisit(left, right), 'isometric')).toBeNull();
});

test('once it was told, it says which one counts, and whether the other leg was tested since', () => {
  const aside = { setAside: true, setAsideWhy: 'same-leg', setAsideBy: 'answer' } as const;
  const second = { ...right, choice: { ...right.choice, side: 'left' }, sameLeg: 'yes' } as const;
  const first = view([left, { ...second, ...aside }]);
  expect(first).toMatchObject({ kind: 'told', side: 'left', counts: 'first', isOtherDone: false, undo: 'answer' });
  expect(view([{ ...left, ...aside }, second])).toMatchObject({ counts: 'second', setId: 'set-right' });
  expect(view([left, { ...second, ...aside }, { ...right, id: 'third' }])).toMatchObject({ isOtherDone: true });
  // set aside for another reason since: nothing is left to choose
  expect(view([left, { ...second, setAside: true, setAsideWhy: 'set-up' }])).toBeNull();
});
