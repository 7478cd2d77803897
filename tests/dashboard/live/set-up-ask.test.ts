import type { Light, Trace } from '@surae/analysis';
import { cannotTell, type SensorAnswerEntry, sensorKey, type Visit } from '@surae/casebook';
import { expect, test } from 'vitest';
import type { LookedFor } from '../../../apps/dashboard/src/live/sensor-findings.ts';
import { sensorQuestions } from '../../../apps/dashboard/src/live/sensor-questions.ts';
import {
  answersOf,
  earlierUp,
  elsewhere,
  isGravitySteady,
  isSignAnswered,
  openKeys,
  placeOf,
  SensorLook,
  wornUp,
} from '../../../apps/dashboard/src/live/set-up-ask.ts';

const told = { route: 'serial', kindName: 'Invented', deviceName: 'port 1' } as const;
const key = sensorKey(told);
const seated = { key, placement: 'foot', side: 'left' } as const;

function answered(subject: SensorAnswerEntry['subject'], about: string, answer: string): SensorAnswerEntry {
  const seen = { answer: null, confidence: 0, evidence: 'no-effort', figures: {} };
  return { sensor: key, subject, about, answer, seen, at: '2026-03-01T09:00:00.000+01:00' };
}

function setWith(choice: object, setAside = false): Visit['sets'][number] {
  const whole = { side: 'left', placement: 'foot', sensor: told, setUp: { up: [0, 0, 1] }, ...choice };
  return { choice: whole, setAside } as unknown as Visit['sets'][number];
}

test('up is as in the last set of the same leg, place and sensor, unless somebody answered', () => {
  const sets = [
    setWith({ setUp: { up: [0, 1, 0] } }),
    setWith({}),
    setWith({ side: 'right', setUp: { up: [1, 0, 0] } }),
    setWith({ setUp: { up: [-1, 0, 0] } }, true),
    setWith({ sensor: { ...told, deviceName: 'port 2' }, setUp: { up: [-1, 0, 0] } }),
    setWith({ placement: 'trunk', setUp: { up: [-1, 0, 0] } }),
  ];
  expect(earlierUp({ sets }, seated)).toEqual([0, 0, 1]);
  expect(earlierUp({ sets: [] }, seated)).toBeNull();
  expect(wornUp([], seated, [0, 0, 1])).toEqual([0, 0, 1]);
  expect(wornUp([answered('gravity-axis', 'foot left', 'y-')], seated, [0, 0, 1])).toEqual([0, -1, 0]);
  expect(wornUp([answered('gravity-axis', 'foot right', 'y-')], seated, null)).toBeNull();
  expect(wornUp([answered('gravity-axis', 'foot left', cannotTell)], seated, [0, 0, 1])).toBeNull();
});

test('a place that was answered is one of the test, or elsewhere', () => {
  expect(['cell', 'trunk', 'shank', cannotTell].map(placeOf)).toEqual(['inline', 'trunk', null, null]);
  const shank = [answered('placement', 'foot', 'shank')];
  expect(elsewhere(shank, 'foot')).toBe('shank');
  expect(elsewhere(shank, 'trunk')).toBeNull();
  expect(elsewhere([answered('placement', 'foot', 'foot')], 'foot')).toBeNull();
  expect(elsewhere([answered('placement', 'foot', cannotTell)], 'foot')).toBeNull();
});

test('a sign counts as answered unless nobody could tell, and only answers of the sensor count', () => {
  expect(isSignAnswered([answered('sign', 'force', 'up')])).toBe(true);
  expect(isSignAnswered([answered('sign', 'force', cannotTell)])).toBe(false);
  expect(answersOf({ sensorAnswers: [answered('sign', 'force', 'up')] }, 'another')).toEqual([]);
});

const timesS = Float64Array.from({ length: 800 }, (_, i) => i / 100);
const force = (load: number): Trace => {
  const samples = timesS.map((timeS, i) => (i % 2) / 10 + (timeS > 3 && timeS < 5 ? load : 0));
  return { groups: [{ timesS, channels: [{ quantity: 'force', axis: null, samples }] }] };
};
const still: Trace = {
  groups: [
    {
      timesS,
      channels: (['x', 'y', 'z'] as const).map((axis) => ({
        quantity: 'acceleration',
        axis,
        samples: new Float64Array(timesS.length).fill(axis === 'z' ? 9.81 : 0),
      })),
    },
  ],
};
const known: LookedFor = {
  test: 'isometric',
  placement: 'inline',
  side: 'left',
  sentUnits: { force: 'N', acceleration: 'm/s2' },
  bodyMassKg: null,
  isCalibrated: false,
  earlierUp: null,
};

test('an effort that nobody was asked for is not looked at; a look that is asked for finds it, and it stays', () => {
  const look = new SensorLook();
  look.watch(force(95), known, false);
  expect(look.findings.map(({ isUnseen }) => isUnseen)).toEqual([true, true]);
  look.look(force(0), known);
  expect(look.sawNothing).toBe(true);
  look.look(force(95), known);
  expect([look.sawNothing, look.findings[0]?.guess.answer]).toEqual([false, 'kgf']);
  expect(openKeys(sensorQuestions(look.findings, []))).toEqual(['unit force']);
  look.watch(force(0), known, false);
  look.look(force(0), known);
  expect(look.findings[0]?.guess.answer).toBe('kgf');
  look.forget();
  expect([look.findings, look.sawNothing]).toEqual([[], false]);
});

test('gravity tells its part once it is steady', () => {
  const look = new SensorLook();
  const foot = { ...known, placement: 'foot', test: 'heel-raise' } as const;
  look.watch({ groups: [] }, foot, true);
  expect(look.findings).toEqual([]);
  look.watch(still, foot, false);
  expect(look.findings.every(({ isUnseen }) => isUnseen)).toBe(true);
  look.watch(still, foot, true);
  const seen = look.findings.filter(({ isUnseen }) => !isUnseen).map(({ subject }) => subject);
  expect(seen).toEqual(['unit', 'gravity-axis']);
  const light = (reason: Light['reason']): Light => ({ name: 'right-way-up', state: 'lit', reason, figures: {} });
  expect(
    [light('any-way'), light('gravity-size'), light('no-steady-gravity')].map((one) => isGravitySteady([one])),
  ).toEqual([true, true, false]);
});
