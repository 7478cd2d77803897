import { expect, test } from 'vitest';
import { safetyGiven } from '../../../apps/dashboard/src/advice/safety-given.ts';
import { advisedVisit, inMarch } from '../../support/advised-person.ts';

const { safety } = advisedVisit();
const asked = safety!;
const line = 'safety.fluoroquinolone';
const other = 'safety.clot';

function given(changes: Partial<typeof asked> | null) {
  return safetyGiven({ id: 'v', safety: changes === null ? null : { ...asked, ...changes } });
}

test('a line is clear, ticked, or ticked with a reason, with the day and the visit of the answer', () => {
  const facts = given({ ticked: [line, other], overridden: [{ id: line, reason: 'agreed with the doctor' }] });
  const from = { what: 'safety-list', day: inMarch(31), visitId: 'v' };
  expect(facts['safety.rupture']).toEqual({ value: 'clear', from });
  expect(facts[other]).toEqual({ value: 'ticked', from });
  expect(facts[line]).toEqual({ value: 'reasoned', from });
  const blank = given({ ticked: [line], overridden: [{ id: line, reason: ' ' }] });
  expect(blank[line]).toMatchObject({ value: 'ticked' });
});

test.each([
  ['not-asked', null],
  ['not-seen-whole', { seenWhole: false }],
  ['other-list', { listVersion: 'another' }],
  ['unknown-line', { ticked: ['safety.of-tomorrow'] }],
] as const)('a line that is not ticked is not clear: %s', (missing, changes) => {
  expect(Object.values(given(changes)).every((one) => 'missing' in one && one.missing === missing)).toBe(true);
});

test('a line that is ticked is ticked, however the list was gone through', () => {
  expect(given({ seenWhole: false, ticked: [other] })[other]).toMatchObject({ value: 'ticked' });
});
