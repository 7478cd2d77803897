import { expect, test } from 'vitest';
import { keptSetUp, type SetUpNow } from '../../../apps/dashboard/src/live/kept-set-up.ts';

const now: SetUpNow = {
  lights: [{ name: 'zero', state: 'failing', reason: 'no-zero', figures: { minutes: 3 } }],
  zero: null,
  certificate: null,
  answers: [],
  readAs: {},
  open: [],
  restLoad: null,
  up: null,
};

test('what was not answered, asked or taken leaves no trace', () => {
  expect(keptSetUp(now)).toEqual({
    lights: [{ name: 'zero', state: 'failing', reason: 'no-zero' }],
    zero: null,
    certificate: null,
  });
});

test('what was, is kept', () => {
  const seen = { answer: null, confidence: 0, evidence: 'efforts', figures: {} };
  const answers = [{ sensor: 'cell', subject: 'unit', about: 'force', answer: 'kgf', seen, at: '2026' }] as const;
  const restLoad = { loadN: 60, uN: 0.3, spanS: 2, at: '2026' };
  const more = { answers, readAs: { force: 9.80665 }, open: ['sign force'], restLoad, up: [0, 0, 1] } as const;
  expect(keptSetUp({ ...now, ...more })).toMatchObject(more);
});
