import { defaultSettings, type PullReport } from '@surae/analysis';
import type { Study, StudyLeg, StudyPerson, StudyTrial, StudyVisit } from '@surae/exchange';
import { handMadeOutcome } from './hand-made-outcome.ts';
import { donePullSet } from './made-pull-visit.ts';

export const NOTHING_TOLD: StudyLeg = {
  sore: null,
  injury: null,
  confirmed: null,
  irritability: {
    provokedBy: null,
    peakPain: null,
    settles: null,
    stiffness: null,
    restPain: null,
    trend: null,
    flare: null,
    painNow: null,
  },
};

/** Somebody invented. */
export function studyPerson(changes: Partial<StudyPerson> = {}): StudyPerson {
  return {
    key: 'person-1',
    name: 'Wilhelmina Okonkwo-Brandt',
    birthYear: 1957,
    ageYears: null,
    ageGroup: null,
    sex: 'women',
    bodyHeightM: 1.68,
    bodyMassKg: 71.5,
    heelLeverM: 0.165,
    note: 'likes long walks',
    ...changes,
  };
}

export function studyVisit(changes: Partial<StudyVisit> = {}): StudyVisit {
  return {
    key: 'visit-1',
    person: 'person-1',
    at: '2026-03-01T09:25:00.000+01:00',
    dayOffset: 0,
    legs: { left: { ...NOTHING_TOLD, sore: 'mid-portion' }, right: { ...NOTHING_TOLD, sore: 'no' } },
    about: [],
    safetyTicked: [],
    safetyOverridden: [],
    note: null,
    compared: () => [],
    ...changes,
  };
}

/** A trial of which nothing is told and nothing was measured. */
export function studyTrial(changes: Partial<StudyTrial> = {}): StudyTrial {
  return {
    key: 'trial-1',
    person: 'person-1',
    visit: 'visit-1',
    test: 'heel-raise',
    side: 'left',
    placement: 'heel',
    protocol: null,
    protocolHash: null,
    settingsHash: null,
    software: null,
    file: null,
    sha256: null,
    at: null,
    origin: 'live',
    device: null,
    deviceNotes: null,
    forceLine: null,
    readAs: [],
    stringRestLengthM: null,
    status: 'no-result',
    reason: null,
    setAside: false,
    setAsideWhy: null,
    renamed: null,
    happened: null,
    endReason: null,
    exertion: null,
    painBefore: null,
    painPeak: null,
    painSharp: null,
    restS: null,
    footwear: null,
    support: null,
    note: null,
    result: null,
    trace: null,
    raw: null,
    ...changes,
  };
}

/** A trial of heel raises of these heights, with a short trace. */
export function raiseTrial(changes: Partial<StudyTrial> = {}): StudyTrial {
  const { report, sha256, settingsHash, protocolHash } = handMadeOutcome([100, 98, 96, 60], 71.5);
  const timesS = Float64Array.from({ length: 50 }, (_, i) => i / 50);
  const samples = timesS.map((timeS) => 0.1 * Math.abs(Math.sin(6 * timeS)));
  return studyTrial({
    placement: report.placement,
    protocol: report.protocol.id,
    protocolHash,
    settingsHash,
    sha256,
    software: 'surae 0.1.0',
    at: '2026-03-01T09:30:12.000+01:00',
    device: 'string at the heel',
    status: 'assessed',
    endReason: 'fatigue',
    exertion: 9,
    painPeak: 0,
    result: { test: 'heel-raise', report },
    trace: () => ({ groups: [{ timesS, channels: [{ quantity: 'heel-height', axis: null, samples }] }] }),
    raw: () => ({ bytes: new TextEncoder().encode('time [s],heel_height [m]\n0,0\n'), ending: 'csv' }),
    ...changes,
  });
}

let pushes: PullReport | undefined;

/** The report of a leg, made once: it takes seconds. */
function pushReport(): PullReport {
  pushes ??= donePullSet('right').report ?? undefined;
  if (pushes === undefined) throw new Error('no report was made');
  return pushes;
}

/** A leg of isometric pushes of a simulated person. */
export function pushTrial(changes: Partial<StudyTrial> = {}): StudyTrial {
  const report = pushReport();
  return studyTrial({
    key: 'trial-2',
    test: 'isometric',
    side: 'right',
    placement: report.placement,
    protocol: report.protocol.id,
    software: 'surae 0.1.0',
    status: 'assessed',
    at: '2026-03-01T09:40:00.000+01:00',
    result: { test: 'isometric', report, scoreWindowS: 0.5 },
    ...changes,
  });
}

/** A study of one person, one visit and two trials, with changes. */
export function madeStudy(changes: Partial<Study> = {}): Study {
  return {
    people: [studyPerson()],
    visits: [studyVisit()],
    trials: [raiseTrial(), pushTrial()],
    plan: [],
    settings: defaultSettings(),
    software: 'surae 0.1.0',
    ...changes,
  };
}
