import { expect, test } from 'vitest';
import { AssessmentError } from '../../../apps/dashboard/src/result/assessment.ts';
import { Assessments } from '../../../apps/dashboard/src/result/assessments.ts';

interface Leg {
  readonly id: string;
  readonly report: object | null;
}

const leg: Leg = { id: 'a', report: null };
/** Lets what is under way come to its end. */
async function settled(): Promise<void> {
  for (let turn = 0; turn < 5; turn += 1) await Promise.resolve();
}

test('what is missing is begun once, and is under way until its report is there', async () => {
  const asked: string[] = [];
  let drawn = 0;
  const all = new Assessments<Leg>({ requestUpdate: () => (drawn += 1) }, ({ id }) => {
    asked.push(id);
    return Promise.resolve();
  });
  expect([all.stateOf(leg), all.isAnyRunning([leg])]).toEqual([undefined, false]);
  all.begin([leg]);
  all.begin([leg]);
  await settled();
  expect([asked, drawn]).toEqual([['a'], 1]);
  expect([all.stateOf(leg), all.isAnyRunning([leg])]).toEqual(['running', true]);
  expect(all.isAnyRunning([{ ...leg, report: {} }])).toBe(false);
});

test('what fails says why, is not begun again by itself, and is tried again when somebody asks', async () => {
  const faults: Error[] = [new AssessmentError('bytes-missing', 'gone'), new Error('odd')];
  const all = new Assessments<Leg>({ requestUpdate: () => {} }, () => {
    const fault = faults.shift();
    return fault === undefined ? Promise.resolve() : Promise.reject(fault);
  });
  all.begin([leg]);
  await settled();
  expect(all.stateOf(leg)).toMatchObject({ code: 'bytes-missing', message: 'gone' });
  all.begin([leg]);
  expect(faults).toHaveLength(1);
  await all.run(leg);
  expect(all.stateOf(leg)).toMatchObject({ code: 'unexpected', message: 'Error: odd' });
  await all.run(leg);
  expect(all.stateOf(leg)).toBe('running');
});
