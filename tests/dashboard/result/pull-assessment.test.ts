import { assessPulls, defaultSettings, type PullReport, type PullTestRequest, type Trace } from '@surae/analysis';
import { SEATED_PULL } from '@surae/shared';
import { expect, test } from 'vitest';
import { AssessmentError } from '../../../apps/dashboard/src/result/assessment.ts';
import {
  assessPullSet,
  pullBytes,
  pullRecording,
  pullRequest,
  pullsToAssess,
} from '../../../apps/dashboard/src/result/pull-assessment.ts';
import { madeCertificate } from '../../support/made-certificate.ts';
import { bytesOf, madePullSet, madePullVisit, madeTrial } from '../../support/made-pull-visit.ts';

const set = madePullSet('left', [madeTrial('left', 0), madeTrial('left', 1), madeTrial('left', 2)]);
const pulls = (trace: Trace, request: PullTestRequest): Promise<PullReport> =>
  Promise.resolve(assessPulls(trace, request, defaultSettings()));

test('a leg is assessed when its end is known and it has no report', () => {
  const others = [
    madePullSet('left', set.trials, { id: 'no-end', end: null }),
    madePullSet('left', set.trials, { id: 'aside', setAside: true }),
    madePullSet('left', [], { id: 'no-trial' }),
  ];
  expect(pullsToAssess(madePullVisit(...others, set)).map(({ id }) => id)).toEqual(['pull-left']);
});

test('the request holds what is known, and no lever, mass or mark that nobody gave', () => {
  expect(pullRequest(set, { bodyMassKg: null })).toEqual({
    placement: 'platform',
    side: 'left',
    protocol: SEATED_PULL,
    subject: {},
    context: { endReason: 'trials-done', warmUpPushes: 0 },
  });
  const marked = madePullSet('left', [madeTrial('left', 0, { liftedAtS: [5] })], {
    choice: { ...set.choice, forefootLeverM: 0.14 },
  });
  expect(pullRequest(marked, { bodyMassKg: 70 })).toMatchObject({
    subject: { bodyMassKg: 70, forefootLeverM: 0.14 },
    context: { liftedAtS: [5] },
  });
  const setUp = { lights: [], zero: null, certificate: madeCertificate() };
  const { id, line } = setUp.certificate;
  expect(
    pullRequest(madePullSet('left', set.trials, { choice: { ...set.choice, setUp } }), { bodyMassKg: null }),
  ).toMatchObject({
    subject: { calibrationId: id, calibrationRelativeU: line.slopeU / line.slope },
  });
});

test('the trials are one recording at their own times, nothing between them', () => {
  const [{ timesS }] = pullRecording(set, bytesOf(set)).groups;
  expect(timesS[0]).toBe(0);
  expect([...timesS].some((timeS) => timeS > 15 && timeS < 69)).toBe(false);
  expect([...timesS].filter((timeS) => timeS >= 70).length).toBeGreaterThan(3000);
});

test('a stream with an altered byte cannot be read, and is not taken for something unexpected', () => {
  const read = bytesOf(set);
  const altered = (id: string) => {
    const bytes = read(id)!;
    const [first, ...others] = bytes.pieces.map((piece) => piece.slice());
    first[first.length - 1] ^= 1;
    return { ...bytes, pieces: [first, ...others] };
  };
  expect(() => pullRecording(set, altered)).toThrow(AssessmentError);
  expect(() => pullRecording(set, altered)).toThrow(expect.objectContaining({ code: 'unreadable' }));
});

test('a stream that was cut off gives its whole blocks, and the trials after it are read', () => {
  const read = bytesOf(set);
  const cut = (id: string) => {
    const bytes = read(id)!;
    return id === set.trials[0].bytesId
      ? { ...bytes, pieces: [bytes.pieces[0], bytes.pieces[1].subarray(0, 99)] }
      : bytes;
  };
  const [{ timesS }] = pullRecording(set, cut).groups;
  expect([...timesS].filter((timeS) => timeS < 60)).toHaveLength(100);
});

test('every trial has its effort in the report, net of the load at rest', async () => {
  const report = await assessPullSet(set, { bodyMassKg: 70 }, (id) => Promise.resolve(bytesOf(set)(id)), pulls);
  expect(report.efforts).toHaveLength(3);
  report.efforts.forEach(({ peakS, peak, rest }, i) => {
    expect(peakS).toBeGreaterThan(set.trials[i].fromS);
    expect(peakS).toBeLessThan(set.trials[i].toS!);
    expect(peak.gross.value - rest.value).toBeCloseTo(peak.net.value, 6);
    expect(rest.value).toBeGreaterThan(50);
  });
});

test('bytes that are missing are said, and so is a protocol that is not known', async () => {
  const none = await pullBytes(set, () => Promise.resolve(undefined));
  expect(() => pullRecording(set, none)).toThrow(AssessmentError);
  const strange = { ...set, choice: { ...set.choice, protocolId: 'strange' } };
  const read = (id: string) => Promise.resolve(bytesOf(set)(id));
  await expect(assessPullSet(strange, { bodyMassKg: null }, read, pulls)).rejects.toMatchObject({
    code: 'no-protocol',
  });
});
