import { foldVisit, type TestChosen, type Visit } from '@surae/casebook';
import { FLOOR, SEATED_PULL, STEP } from '@surae/shared';
import type { Json, StoredDocument } from '@surae/storage';
import { expect, test } from 'vitest';
import { afterChosen, chosenFor, isChosen } from '../../../packages/casebook/src/choice/test-chosen.ts';
import { madePullSet, madePullVisit } from '../../support/made-pull-visit.ts';
import { madeSet, madeVisit } from '../../support/made-visit.ts';
import { sampleDocument } from '../../support/sample-bodies.ts';

const floor: TestChosen = { test: 'heel-raise', protocolId: FLOOR.id, from: 'proposed' };
const push: TestChosen = { test: 'isometric', protocolId: SEATED_PULL.id, from: 'last-time', placement: 'platform' };

test('the latest choice counts for a test, and another test keeps its own', () => {
  const step = { ...floor, protocolId: STEP.id };
  expect(afterChosen(undefined, floor)).toEqual([floor]);
  expect(afterChosen([floor, push], step)).toEqual([push, step]);
  expect(chosenFor({ chosen: [floor, push] }, 'isometric')).toBe(push);
  expect(chosenFor({}, 'heel-raise')).toBeUndefined();
});

test('it is answered once something was chosen or begun, by either test', () => {
  expect(isChosen(madeVisit())).toBe(false);
  expect(isChosen({ ...madeVisit(), chosen: [floor] })).toBe(true);
  expect(isChosen(madeVisit(madeSet('left', null, { setAside: true })))).toBe(true);
  expect(isChosen(madePullVisit(madePullSet('left', [])))).toBe(true);
});

const at = '2026-03-01T09:00:00.000+01:00';
const event = (kind: string, body: object): StoredDocument => sampleDocument(kind, 'v', body as Json, { at });
const fold = (...documents: StoredDocument[]): Visit => foldVisit(event('visit', { personId: 'p' }), documents);
const chose = (choice: TestChosen): StoredDocument => event('visit-choice', { choice });
const setBegun = event('set-begun', { choice: madeSet('left', null).choice, bytesId: 'b' });

test('a choice makes the test the one of the visit', () => {
  expect(fold(chose(push))).toMatchObject({ chosen: [push], tests: ['isometric'] });
  expect(fold(chose(push), chose(floor))).toMatchObject({ tests: ['heel-raise'] });
  expect(fold(setBegun, chose(push))).toMatchObject({ tests: ['heel-raise', 'isometric'] });
});

test('another answer about soreness or what came before asks for the choice again, until something was begun', () => {
  const sore = event('visit-sore', { sore: { left: 'insertion', right: 'no' } });
  expect(fold(chose(floor), sore).chosen).toEqual([]);
  expect(isChosen(fold(chose(floor), sore))).toBe(false);
  expect('chosen' in fold(sore)).toBe(false);
  expect(fold(sore, chose(floor)).chosen).toEqual([floor]);
  expect(fold(chose(floor), setBegun, sore).chosen).toEqual([floor]);
});
