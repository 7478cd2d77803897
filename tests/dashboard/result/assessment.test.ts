import { type AssessmentRequest, assess, defaultSettings, type Report, type Trace } from '@surae/analysis';
import type { Person } from '@surae/casebook';
import { PROTOCOLS } from '@surae/shared';
import { expect, test } from 'vitest';
import {
  AssessmentError,
  assessmentRequest,
  assessSet,
  protocolOf,
  recordingOf,
  setsToAssess,
} from '../../../apps/dashboard/src/result/assessment.ts';
import { madeReport, madeSet, madeVisit, sureCount } from '../../support/made-visit.ts';
import { simulatedStream } from '../../support/simulated-stream.ts';

const person: Person = { id: 'p', name: 'Invented Person', bodyMassKg: 70, heelLeverM: 0.18, demo: true };
const set = madeSet('left', null);

const final = (trace: Trace, request: AssessmentRequest): Promise<Report> =>
  Promise.resolve(assess(trace, request, defaultSettings()));

test('a set is assessed when it was stopped, its end is known, and it has no report', () => {
  const others = [
    madeSet('left', null, { id: 'running', stoppedAt: null }),
    madeSet('left', null, { id: 'no-end', end: null }),
    madeSet('left', null, { id: 'aside', setAside: true }),
    madeSet('left', madeReport('left', sureCount(3)), { id: 'done' }),
  ];
  expect(setsToAssess(madeVisit(...others, set)).map(({ id }) => id)).toEqual(['set-left']);
});

test('the request holds all that is known: side, placement, mass, lever, end, pain, exertion, marks', () => {
  const marks = [{ atS: 4.2, criterion: 'knee' }] as const;
  const known = madeSet('right', null, { marks, end: { reason: 'pain', painPeak: 6, exertion: 8 } });
  expect(assessmentRequest(known, person)).toEqual({
    placement: 'heel',
    side: 'right',
    protocol: protocolOf('single-leg.incline10'),
    subject: { bodyMassKg: 70, heelLeverM: 0.18 },
    context: { endReason: 'pain', painPeak: 6, exertion: 8, marks },
  });
});

test('what is not known is left out, and pain of zero is known', () => {
  const request = assessmentRequest(set, { ...person, bodyMassKg: null, heelLeverM: null });
  expect(request.subject).toEqual({});
  expect(request.context).toEqual({ endReason: 'fatigue' });
  const painless = madeSet('left', null, { end: { reason: 'fatigue', painPeak: 0, exertion: 0 } });
  expect(assessmentRequest(painless, person).context).toEqual({ endReason: 'fatigue', painPeak: 0, exertion: 0 });
});

test('a set is counted by the length of its own string, and one of which none was told as it was before', async () => {
  const bytes = simulatedStream('heel', 5, 6);
  const told = madeSet('left', null, { choice: { ...set.choice, stringRestLengthM: 0.1 } });
  expect(assessmentRequest(told, person).subject).toEqual({
    bodyMassKg: 70,
    heelLeverM: 0.18,
    stringRestLengthM: 0.1,
  });
  expect(assessmentRequest(set, person).subject).toEqual({ bodyMassKg: 70, heelLeverM: 0.18 });
  const [asRead, corrected] = [
    await assessSet(set, person, bytes, final),
    await assessSet(told, person, bytes, final),
  ].map(({ repetitions }) => repetitions);
  expect(corrected).toHaveLength(6);
  for (const [at, { heightM, heightUM }] of corrected.entries()) {
    // sqrt((l + h)^2 + (L - sqrt(L^2 - h^2))^2) - l is what a string of 10 cm reads on a lever of 18 cm (Pythagoras)
    const forwardM = 0.18 - Math.sqrt(0.18 ** 2 - heightM! ** 2);
    expect(asRead[at].heightM!).toBeCloseTo(Math.hypot(0.1 + heightM!, forwardM) - 0.1, 4);
    expect(heightUM!).toBeLessThan(asRead[at].heightUM!);
  }
});

test('a protocol that this version does not know is refused by name', () => {
  expect(protocolOf('of-tomorrow')).toBeUndefined();
  expect(PROTOCOLS.map(({ id }) => protocolOf(id)?.id)).toEqual(PROTOCOLS.map(({ id }) => id));
  const unknown = madeSet('left', null, { choice: { ...set.choice, protocolId: 'of-tomorrow' } });
  expect(() => assessmentRequest(unknown, person)).toThrow(AssessmentError);
});

test('the stored bytes become the report that the whole recording gives; a block that was cut off is left out', async () => {
  const bytes = simulatedStream('heel', 5, 6);
  const report = await assessSet(set, person, bytes, final);
  expect(report.count.attempted).toBe(6);
  expect(report).toMatchObject({ side: 'left', placement: 'heel', end: { reasonGiven: 'fatigue', class: 'capacity' } });
  const whole = { ...bytes, pieces: bytes.pieces.slice(0, -1) };
  expect(recordingOf(set, bytes).groups[0]?.timesS).toEqual(recordingOf(set, whole).groups[0]?.timesS);
});

test('whatever goes wrong has a code that has words, and the cause', async () => {
  await expect(assessSet(set, person, undefined, final)).rejects.toMatchObject({ code: 'bytes-missing' });
  const damaged = simulatedStream('heel', 5, 6);
  damaged.pieces[3][60] ^= 1;
  await expect(assessSet(set, person, damaged, final)).rejects.toMatchObject({
    name: 'AssessmentError',
    code: 'unreadable',
    message: 'The document is not a recording of this software, or it is damaged.',
    cause: { name: 'RecordError' },
  });
  const broken = assessSet(set, person, simulatedStream('heel', 5, 6), () => Promise.reject(new Error('out of room')));
  await expect(broken).rejects.toMatchObject({ code: 'unexpected', message: 'out of room' });
});
