import { legsOfVisit, pullLegsOfVisit, type Settings, type Side } from '@surae/analysis';
import {
  type Casebook,
  type CasebookPerson,
  type CasebookVisit,
  casebookOf,
  type Entry,
  noHistory,
  type OwnErrorsInUse,
  ownErrorsInUse,
  type Person,
  type PullSet,
  type Recount,
  type SetUpKept,
  type Visit,
  type VisitSet,
  visitLegs,
  visitPulls,
} from '@surae/casebook';
import { sha256Hex } from '@surae/records';
import { PULL_PROTOCOLS } from '@surae/shared';
import { ageIn } from '../deidentify/age-group.ts';
import { dayOffsets } from '../deidentify/days.ts';
import type {
  Study,
  StudyLeg,
  StudyLegs,
  StudyPerson,
  StudyPlanItem,
  StudyRecount,
  StudyTrial,
  StudyVisit,
} from '../study.ts';
import { utf8 } from '../utf8.ts';
import { practiceOf } from './practice-of.ts';
import { bytesOf, lookAt, type ReadBytes, recordingOf } from './record-bytes.ts';
import { studyByHand } from './study-by-hand.ts';
import { reachesOf, totalsOf } from './told-between.ts';

/** A document as a store or a backup gives it. */
export type RecordDocument = Parameters<typeof casebookOf>[0][number];

/** Which part of the record leaves. */
export type Extent =
  | { readonly of: 'clinic' }
  | { readonly of: 'person'; readonly personId: string }
  | { readonly of: 'visits'; readonly visitIds: readonly string[] };

export interface RecordStudyRequest {
  readonly extent: Extent;
  readonly settings: Settings;
  readonly software: string;
  /** null looks at the documents alone: nothing is known of what was recorded */
  readonly read: ReadBytes | null;
}

/** By what a result was made, by the id of its set: the newest document counts. */
function madeBy(
  documents: readonly RecordDocument[],
): Map<string, { settingsHash: string | null; software: string | null }> {
  const found = new Map<string, { settingsHash: string | null; software: string | null }>();
  for (const { kind, body } of documents) {
    if (kind !== 'set-result' && kind !== 'pull-report') continue;
    const told = body as { readonly setId: string; readonly settingsHash?: string; readonly software?: string };
    found.set(told.setId, { settingsHash: told.settingsHash ?? null, software: told.software ?? null });
  }
  return found;
}

function legOf({ sore, history = noHistory }: Visit, side: 'left' | 'right'): StudyLeg {
  const { injury, confirmed, lastFlare = null, irritability } = history.legs[side];
  return { sore: sore[side], injury, confirmed, lastFlare, irritability };
}

/** What a comparison of legs asks for beside the visit. */
interface Known {
  readonly own: OwnErrorsInUse;
  readonly settings: Settings;
}

/** Both legs of each test beside each other, as the page of the result shows them. */
function comparedOf(visit: Visit, person: Person, earlier: readonly Visit[], { own, settings }: Known): StudyLegs[] {
  const both = (legs: Readonly<Record<Side, object | null>>): boolean => legs.left !== null && legs.right !== null;
  const raises = visitLegs(visit, person, earlier);
  const pulls = visitPulls(visit, person, earlier);
  const found: StudyLegs[] = [];
  if (both(raises.legs)) {
    const { comparison } = legsOfVisit(raises, own.tests, settings.judging, own.ratios);
    found.push({ test: 'heel-raise', comparison });
  }
  if (both(pulls.legs)) {
    found.push({ test: 'isometric', comparison: pullLegsOfVisit(pulls, own.tests, own.ratios).comparison });
  }
  return found;
}

function visitOf(visit: Visit, compared: () => StudyLegs[]): StudyVisit {
  const { safety, history } = visit;
  return {
    key: visit.id,
    person: visit.personId,
    at: visit.begunAt,
    dayOffset: null,
    legs: { left: legOf(visit, 'left'), right: legOf(visit, 'right') },
    about: history?.about ?? [],
    safetyTicked: safety?.ticked ?? [],
    safetyOverridden: safety?.overridden.map(({ id }) => id) ?? [],
    note: safety?.overridden.map(({ id, reason }) => `${id}: ${reason}`).join('; ') || null,
    compared,
  };
}

function personOf({ person, visits }: CasebookPerson): StudyPerson {
  const first = visits.map(({ visit }) => visit.begunAt).sort()[0] ?? null;
  const birthYear = person.birthYear ?? null;
  return {
    key: person.id,
    name: person.name,
    birthYear,
    ageYears: ageIn(birthYear, first),
    ageGroup: null,
    sex: person.sex ?? null,
    bodyHeightM: person.bodyHeightM ?? null,
    bodyMassKg: person.bodyMassKg,
    heelLeverM: person.heelLeverM,
    note: null,
  };
}

function planOf({ person, planItems }: CasebookPerson): StudyPlanItem[] {
  return planItems
    .filter(({ body }) => body.decision !== 'declined')
    .map(({ id, body }) => ({
      key: id,
      person: person.id,
      at: body.from,
      code: 'plan-item',
      text: body.what,
      sessionsPerWeek: body.perWeek,
      setCount: body.sets,
      repetitionCount: body.repetitions,
    }));
}

/** Which sensor, and what its samples were counted by. */
function sensorTold({
  setUp,
  sensor,
  origin,
}: {
  setUp?: SetUpKept;
  sensor?: { kindName: string; deviceName: string };
  origin: string;
}): Pick<StudyTrial, 'device' | 'forceLine' | 'readAs' | 'origin'> {
  const line = setUp?.certificate?.line;
  return {
    origin,
    device: sensor === undefined ? null : `${sensor.kindName}: ${sensor.deviceName}`,
    forceLine:
      line === undefined
        ? null
        : { offset: line.offset, offsetU: line.offsetU, slope: line.slope, slopeU: line.slopeU },
    readAs: Object.entries(setUp?.readAs ?? {}).map(([quantity, factor]) => `${quantity} ${factor}`),
  };
}

type Made = ReturnType<typeof madeBy>;

/** What sets and legs are told by alike. */
function frameOf(
  visit: Visit,
  set: VisitSet | PullSet,
  made: Made,
): Omit<StudyTrial, 'test' | 'restS' | 'result' | 'sha256' | 'deviceNotes' | 'trace' | 'raw'> {
  const { choice, end, report } = set;
  const fingerprint = report === null ? choice.protocolFingerprint : report.protocol.fingerprint;
  return {
    key: set.id,
    person: visit.personId,
    visit: visit.id,
    side: choice.side,
    placement: choice.placement,
    protocol: choice.protocolId,
    protocolHash: sha256Hex(utf8(fingerprint)),
    settingsHash: made.get(set.id)?.settingsHash ?? null,
    software: made.get(set.id)?.software ?? null,
    file: null,
    at: set.begunAt,
    ...sensorTold(choice),
    stringRestLengthM: 'stringRestLengthM' in choice ? (choice.stringRestLengthM ?? null) : null,
    status: report === null ? 'no-result' : 'assessed',
    reason: null,
    renamed: set.swapped === true,
    setAside: set.setAside,
    setAsideWhy: set.setAsideWhy,
    endReason: end?.reason ?? null,
    happened: end?.happened ?? null,
    exertion: end?.exertion ?? null,
    painBefore: visit.history?.legs[choice.side].irritability.painNow ?? null,
    painPeak: end?.painPeak ?? null,
    painSharp: end?.painSharp ?? null,
    footwear: null,
    support: null,
    note: null,
  };
}

/** What was counted again of a set, beside its result. */
function recountsOf(setId: string, all: readonly Entry<Recount>[]): Pick<StudyTrial, 'recounts'> {
  const recounts = all
    .filter(({ body }) => body.setId === setId)
    .map(({ id, at, body: { report, settingsHash, software, why } }): StudyRecount => {
      const { id: protocol, fingerprint } = report.protocol;
      const made = { protocolHash: sha256Hex(utf8(fingerprint)), settingsHash, software };
      return { key: id, at, protocol, ...made, why, result: { test: 'heel-raise', report } };
    });
  return recounts.length === 0 ? {} : { recounts };
}

async function recorded(
  ids: readonly string[],
  read: ReadBytes | null,
): Promise<Pick<StudyTrial, 'sha256' | 'deviceNotes' | 'trace' | 'raw'>> {
  if (read === null) return { sha256: null, deviceNotes: null, trace: null, raw: null };
  const { sha256, notes, isReadable } = await lookAt(ids, read);
  return {
    sha256,
    deviceNotes: notes.join('; ') || null,
    trace: isReadable ? () => recordingOf(ids, read) : null,
    raw: sha256 === null ? null : async () => ({ bytes: await bytesOf(ids, read), ending: 'bin' }),
  };
}

/** The second leg of a test had the rest of the visit before it. */
function isSecond(
  sets: readonly { readonly id: string; readonly choice: { readonly side: string } }[],
  at: number,
): boolean {
  return sets.slice(0, at).some(({ choice }) => choice.side !== sets[at]!.choice.side);
}

async function trialsOf(
  { visit, recounts }: Pick<CasebookVisit, 'visit' | 'recounts'>,
  made: Made,
  read: ReadBytes | null,
): Promise<StudyTrial[]> {
  const trials: StudyTrial[] = [];
  for (const [at, set] of visit.sets.entries()) {
    trials.push({
      ...frameOf(visit, set, made),
      test: 'heel-raise',
      restS: isSecond(visit.sets, at) ? visit.restS : null,
      result: set.report === null ? null : { test: 'heel-raise', report: set.report, ...studyByHand(set) },
      ...recountsOf(set.id, recounts),
      ...(await recorded([set.bytesId], read)),
    });
  }
  const pulls = visit.pulls ?? [];
  for (const [at, set] of pulls.entries()) {
    const protocol = PULL_PROTOCOLS.find(({ id }) => id === set.choice.protocolId);
    const scoreWindowS = protocol?.parameters.scoreWindow.value ?? null;
    trials.push({
      ...frameOf(visit, set, made),
      test: 'isometric',
      restS: isSecond(pulls, at) ? (visit.pullRestS ?? null) : null,
      result: set.report === null ? null : { test: 'isometric', report: set.report, scoreWindowS },
      ...(await recorded(
        set.trials.map(({ bytesId }) => bytesId),
        read,
      )),
    });
  }
  return trials;
}

function withinExtent({ people }: Casebook, extent: Extent): { people: CasebookPerson[]; visits: Visit[] } {
  const visitsOf = (person: CasebookPerson): Visit[] => person.visits.map(({ visit }) => visit);
  if (extent.of === 'visits') {
    const asked = new Set(extent.visitIds);
    const some = people.filter((person) => visitsOf(person).some(({ id }) => asked.has(id)));
    return { people: some, visits: some.flatMap(visitsOf).filter(({ id }) => asked.has(id)) };
  }
  const some = people.filter(({ person }) => extent.of === 'clinic' || person.id === extent.personId);
  return { people: some, visits: some.flatMap(visitsOf) };
}

/**
 * What leaves of a record: the same for the same documents and bytes, wherever they lie. Days are counted from the first visit
 * that leaves. Trials that were taken back leave as such.
 */
export async function recordStudy(documents: readonly RecordDocument[], request: RecordStudyRequest): Promise<Study> {
  const { extent, settings, software, read } = request;
  const made = madeBy(documents);
  const book = casebookOf(documents);
  const { people, visits } = withinExtent(book, extent);
  const known = { own: ownErrorsInUse(book.ownErrors), settings };
  const whose = new Map(people.map((one) => [one.person.id, one]));
  const told = visits.map((visit) => {
    // in the order in which they were begun, each with the person as known at its end
    const all = whose.get(visit.personId)!.visits;
    const at = all.findIndex((one) => one.visit.id === visit.id);
    const earlier = all.slice(0, at).map((one) => one.visit);
    return visitOf(visit, () => comparedOf(visit, all[at]!.person, earlier, known));
  });
  const offsets = dayOffsets(told);
  const trials: StudyTrial[] = [];
  const asKept = new Map(people.flatMap((one) => one.visits).map((one) => [one.visit.id, one]));
  for (const { id } of visits) trials.push(...(await trialsOf(asKept.get(id)!, made, read)));
  const totals = extent.of === 'visits' ? [] : totalsOf(people, told);
  const reaches = extent.of === 'visits' ? [] : reachesOf(people, told);
  const practice = practiceOf(visits);
  return {
    people: people.map(personOf),
    visits: told.map((visit, at) => ({ ...visit, dayOffset: offsets[at] ?? null })),
    trials,
    plan: extent.of === 'visits' ? [] : people.flatMap(planOf),
    ...(totals.length === 0 ? {} : { totals }),
    ...(reaches.length === 0 ? {} : { reaches }),
    ...(practice.length === 0 ? {} : { practice }),
    settings,
    software,
  };
}
