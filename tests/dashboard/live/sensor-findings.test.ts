import type { Channel, Trace } from '@surae/analysis';
import { expect, test } from 'vitest';
import {
  axisNearest,
  type Finding,
  gravityFindings,
  type LookedFor,
  sensorFindings,
  unlooked,
  upSeen,
} from '../../../apps/dashboard/src/live/sensor-findings.ts';

const known: LookedFor = {
  test: 'isometric',
  placement: 'inline',
  side: 'left',
  sentUnits: { force: 'N' },
  bodyMassKg: null,
  isCalibrated: false,
  earlierUp: null,
};
const timesS = Float64Array.from({ length: 800 }, (_, i) => i / 100);
const noise = (i: number): number => ((Math.imul(i ^ (i >>> 5), 0x9e3779b1) >>> 28) - 7.5) / 100;

/** Rest, an effort of two seconds, rest. */
function pushed(load: number, quantity: 'force' | 'torque' | 'heel-height' = 'force', size = 1): Trace {
  const samples = timesS.map((timeS, i) => size * (noise(i) + (timeS > 3 && timeS < 5 ? load : 0)));
  return { groups: [{ timesS, channels: [{ quantity, axis: null, samples }] }] };
}

function stood(level: number): Trace {
  const samples = timesS.map((timeS, i) => (timeS < 2 ? 0 : level * (1 + noise(i) / 10)));
  return { groups: [{ timesS, channels: [{ quantity: 'force', axis: null, samples }] }] };
}

/** Raises that turn a sensor about y by so many degrees, gravity in a unit, with a gyroscope in another one. */
function raised(degrees: number, perGravity = 9.80665, perRadian = 1, upSign = 1): Trace {
  const angle = timesS.map((timeS) => ((degrees * Math.PI) / 180) * ((1 - Math.cos(Math.PI * timeS)) / 2));
  const rate = timesS.map((timeS) => (((degrees * Math.PI) / 180) * Math.PI * Math.sin(Math.PI * timeS)) / 2);
  const still = new Float64Array(timesS.length);
  // z points up at rest; a turn by a positive angle about y carries the sensor's x down
  const force = [angle.map((a) => -Math.sin(a)), still, angle.map((a) => upSign * Math.cos(a))];
  const axes = ['x', 'y', 'z'] as const;
  const channel = (quantity: Channel['quantity'], samples: Float64Array, k: number): Channel => ({
    quantity,
    axis: axes[k],
    samples,
  });
  return {
    groups: [
      {
        timesS,
        channels: [
          ...force.map((one, k) =>
            channel(
              'acceleration',
              one.map((value) => perGravity * value),
              k,
            ),
          ),
          ...[still, rate.map((value) => perRadian * value), still].map((one, k) =>
            channel('angular-velocity', one, k),
          ),
        ],
      },
    ],
  };
}

const foot: LookedFor = {
  ...known,
  test: 'heel-raise',
  placement: 'foot',
  sentUnits: { acceleration: 'm/s2', 'angular-velocity': 'rad/s' },
};

const of = (findings: readonly Finding[], subject: Finding['subject'], about?: string): Finding => {
  const found = findings.find((one) => one.subject === subject && (about === undefined || one.about === about));
  if (found === undefined) throw new Error(`No finding of ${subject}.`);
  return found;
};

test('an effort tells unit and sign; 950 of them are newtons, 95 kilograms, and 300 are asked about', () => {
  const newtons = sensorFindings(pushed(950), known);
  expect(of(newtons, 'unit').guess).toMatchObject({ answer: 'N', asks: false });
  expect(of(newtons, 'unit')).toMatchObject({ about: 'force', told: 'N', isUnseen: false });
  expect(of(newtons, 'sign').guess).toMatchObject({ answer: 'up', asks: false });
  expect(of(sensorFindings(pushed(95), known), 'unit').guess).toMatchObject({ answer: 'kgf', asks: false });
  expect(of(sensorFindings(pushed(300), known), 'unit').guess.asks).toBe(true);
  expect(of(sensorFindings(pushed(-950), known), 'sign').guess.answer).toBe('down');
});

test('numbers are weighed as they were sent: newtons described as kilonewtons still are newtons', () => {
  const samples = pushed(950, 'force', 1000);
  const [unit] = sensorFindings(samples, { ...known, sentUnits: { force: 'kN' } });
  expect(unit).toMatchObject({ told: 'kN', guess: { answer: 'N' } });
  expect(unit.guess.evidence.figures['size']).toBeGreaterThan(900);
  expect(unit.guess.evidence.figures['size']).toBeLessThan(1000);
});

test('somebody of known mass tells the unit of a plate; in a push a plate is not asked where it is', () => {
  const plate: LookedFor = { ...known, test: 'heel-raise', placement: 'platform', bodyMassKg: 70 };
  const findings = sensorFindings(stood(70), plate);
  expect(of(findings, 'unit').guess).toMatchObject({ answer: 'kgf', evidence: { code: 'standing-mass' } });
  expect(of(findings, 'placement')).toMatchObject({ told: 'platform', guess: { answer: 'platform' } });
  const pushing = sensorFindings(pushed(950), { ...known, placement: 'platform' });
  expect(pushing.map(({ subject }) => subject)).toEqual(['unit', 'sign']);
});

test('where nobody did anything it is unseen, and the answers stand in their own order', () => {
  const findings = sensorFindings(pushed(0), known);
  expect(findings.map(({ isUnseen }) => isUnseen)).toEqual([true, true]);
  expect(of(findings, 'unit').answers[0]).toBe('N');
  const [unit] = unlooked(sensorFindings(pushed(95), known));
  expect(unit).toMatchObject({ isUnseen: true, told: 'N', guess: { answer: null, confidence: 0 } });
  expect(sensorFindings({ groups: [] }, known)).toEqual([]);
});

test('a calibration knows unit and sign of a force, and of nothing else', () => {
  expect(sensorFindings(pushed(950), { ...known, isCalibrated: true })).toEqual([]);
  const height = { ...known, placement: 'heel', test: 'heel-raise', sentUnits: { 'heel-height': 'mm' } } as const;
  const findings = sensorFindings(pushed(80, 'heel-height', 0.001), { ...height, isCalibrated: true });
  expect(findings.map(({ subject, about }) => `${subject} ${about}`)).toEqual(['unit heel-height', 'sign heel-height']);
  expect(of(findings, 'unit').guess.answer).toBe('mm');
});

test('raises tell units, axes and place of a sensor on the foot', () => {
  const findings = sensorFindings(raised(35), foot);
  expect(of(findings, 'unit', 'acceleration').guess).toMatchObject({ answer: 'm/s2', asks: false });
  expect(of(findings, 'unit', 'angular-velocity').guess).toMatchObject({ answer: 'rad/s', asks: false });
  expect(of(findings, 'gravity-axis')).toMatchObject({ about: 'foot left', told: null, guess: { answer: 'z+' } });
  expect(of(findings, 'flexion-axis')).toMatchObject({ about: 'foot left', guess: { answer: 'y' } });
  expect(of(findings, 'placement')).toMatchObject({ told: 'foot', guess: { answer: 'foot', asks: false } });
  const inDegrees = sensorFindings(raised(35, 1, 180 / Math.PI), foot);
  expect(of(inDegrees, 'unit', 'acceleration').guess.answer).toBe('[g]');
  expect(of(inDegrees, 'unit', 'angular-velocity').guess.answer).toBe('deg/s');
  expect(of(sensorFindings(raised(3), foot), 'placement').guess.answer).toBe('trunk');
});

test('without a raise turning and place are unseen, and gravity is not', () => {
  const findings = sensorFindings(raised(0), foot);
  expect(findings.filter(({ isUnseen }) => !isUnseen).map(({ subject, about }) => `${subject} ${about}`)).toEqual([
    'unit acceleration',
    'gravity-axis foot left',
  ]);
});

test('what pointed up in an earlier set is held against what points up now', () => {
  const turned = gravityFindings(raised(0, 9.80665, 1, -1), { ...foot, earlierUp: [0.1, 0, 0.99] });
  expect(of(turned, 'gravity-axis')).toMatchObject({ told: 'z+', guess: { answer: 'z-', asks: false } });
  expect(upSeen(raised(0, 9.80665, 1, -1))).toEqual([0, 0, -1]);
  expect(upSeen(pushed(950))).toBeNull();
  expect(axisNearest([0.1, -0.9, 0.3])).toBe('y-');
});

test('of a stretch too short for a scatter at rest neither sign nor unit is told', () => {
  const { timesS: all, channels } = pushed(300).groups[0];
  // nine samples about the beginning of the push: its range is large, and how quiet rest is nobody knows
  const from = 295;
  const short = channels.map((channel) => ({ ...channel, samples: channel.samples.slice(from, from + 9) }));
  const found = sensorFindings({ groups: [{ timesS: all.slice(from, from + 9), channels: short }] }, known);
  expect(found.map(({ subject, isUnseen }) => [subject, isUnseen])).toEqual([
    ['unit', true],
    ['sign', true],
  ]);
  // nine that begin and end alike, the push between them
  const spike = Float64Array.of(0, 0.1, 0, 300, 300, 0, 0.1, 0, 0);
  const group = { timesS: all.slice(0, 9), channels: [{ quantity: 'force' as const, axis: null, samples: spike }] };
  expect(sensorFindings({ groups: [group] }, known).every(({ isUnseen }) => isUnseen)).toBe(true);
});
