import { expect, test } from 'vitest';
import { hashOf, routeOf } from '../../apps/dashboard/src/route.ts';

test('no hash, and a bare one, are the start', () => {
  for (const hash of ['', '#', '#/', '#//']) expect(routeOf(hash), hash).toEqual({ page: 'start' });
});

test('a visit is named by its id, whatever characters it has', () => {
  for (const visitId of ['a1', 'with space', 'ä/ö?#&%']) {
    for (const page of ['visit', 'legs'] as const) {
      expect(routeOf(hashOf({ page, visitId }))).toEqual({ page, visitId });
    }
  }
  expect(hashOf({ page: 'visit', visitId: 'a/b' })).toBe('#/visit/a%2Fb');
});

test('the course of a person is named by the id of the person', () => {
  expect(routeOf(hashOf({ page: 'course', personId: 'a/b' }))).toEqual({ page: 'course', personId: 'a/b' });
  expect(routeOf('#/course')).toEqual({ page: 'lost' });
});

test('the page of the legs is shown, or given at once in a way that is known', () => {
  for (const at of ['print', 'file', 'code'] as const) {
    expect(routeOf(hashOf({ page: 'legs', visitId: 'a/b', at }))).toEqual({ page: 'legs', visitId: 'a/b', at });
  }
  expect(hashOf({ page: 'legs', visitId: 'a', at: 'print' })).toBe('#/legs/a/print');
  for (const hash of ['#/legs/a/fax', '#/visit/a/print', '#/legs/%E0%A4%A/print']) {
    expect(routeOf(hash), hash).toEqual({ page: 'lost' });
  }
});

test('the errors of measurement of the clinic have a place of their own', () => {
  expect(routeOf(hashOf({ page: 'own-errors' }))).toEqual({ page: 'own-errors' });
  expect(hashOf({ page: 'own-errors' })).toBe('#/own-errors');
  expect(routeOf(hashOf({ page: 'export' }))).toEqual({ page: 'export' });
  expect(routeOf(hashOf({ page: 'rules' }))).toEqual({ page: 'rules' });
});

test('the sensors have a place of their own, and one that leads back to a visit; so has a description', () => {
  for (const route of [
    { page: 'sensors', visitId: null },
    { page: 'sensors', visitId: 'a/b' },
    { page: 'describe', descriptionId: null },
    { page: 'describe', descriptionId: 'c d' },
    { page: 'episode', personId: 'a/b' },
    { page: 'design', asked: null },
    { page: 'design', asked: 'groups.;sd.expected=2,5' },
    { page: 'report', visitId: 'a/b' },
  ] as const) {
    expect(routeOf(hashOf(route))).toEqual(route);
  }
  expect([hashOf({ page: 'sensors', visitId: null }), hashOf({ page: 'sensors', visitId: 'a' })]).toEqual([
    '#/sensors',
    '#/sensors/a',
  ]);
});

test('any other place is lost, also one whose id cannot be read', () => {
  for (const hash of [
    '#/visit',
    '#/own-errors/a',
    '#/visit/a/b',
    '#/legs',
    '#/elsewhere',
    '#/visit/%E0%A4%A',
    '#/sensors/a/b',
  ]) {
    expect(routeOf(hash), hash).toEqual({ page: 'lost' });
  }
});

test('the start and a lost place lead to the start', () => {
  expect([hashOf({ page: 'start' }), hashOf({ page: 'lost' })]).toEqual(['#/', '#/']);
});

test('a study has a way in, an id and a part', () => {
  for (const [studyId, part] of [
    [null, null],
    ['a/b', null],
    ['a/b', 'quality'],
  ] as const) {
    expect(routeOf(hashOf({ page: 'study', studyId, part }))).toEqual({ page: 'study', studyId, part });
  }
  expect(hashOf({ page: 'study', studyId: 'a', part: 'quality' })).toBe('#/study/a/quality');
  expect(routeOf('#/study/a/b/c')).toEqual({ page: 'lost' });
});
