import type { JudgingSettings, Settings } from '@surae/analysis';
import { noHistory } from '@surae/casebook';
import {
  dayOffsets,
  type Study,
  type StudyLeg,
  type StudyLegs,
  type StudyPerson,
  type StudyResult,
  type StudyTrial,
  type StudyVisit,
} from '@surae/exchange';
import { type Outcome, toldBy } from '@surae/study';
import { type Told, testOf } from '@surae/study/words';
import { comparedPulls, comparedSet } from './compared-set.ts';
import { visitGroups } from './comparison-groups.ts';
import { compareLegs } from './comparisons.ts';
import type { Io } from './io.ts';
import { readAgain } from './read-again.ts';
import { softwareName } from './software.ts';

const NOT_TOLD: StudyLeg = { sore: null, ...noHistory.legs.left };

function yesNo(flag: boolean | null): string | null {
  return flag === null ? null : flag ? 'yes' : 'no';
}

function injuryOf({ earlier_injury: injured, injury_months: months }: Told): string | null {
  if (injured === null) return null;
  if (!injured) return 'none';
  return months === null ? 'when-unknown' : `${months}-months-ago`;
}

function legOf(told: Told): StudyLeg {
  return {
    sore: told.symptomatic,
    injury: injuryOf(told),
    confirmed: told.injury_confirmed,
    irritability: {
      provokedBy: told.provoked_by,
      peakPain: told.provoked_pain,
      settles: told.settles_h === null ? null : `${told.settles_h}-hours`,
      stiffness: told.morning_stiffness_min === null ? null : `${told.morning_stiffness_min}-minutes`,
      restPain: told.rest_pain,
      trend: told.trend,
      flare: yesNo(told.flare),
      painNow: told.pain_before,
    },
  };
}

/** What holds of a person, by the column of the manifest that says so. */
const ABOUT = {
  pregnant: 'pregnant',
  amputation: 'amputation',
  nerve_condition: 'nerve-condition',
  nerve_signs: 'nerve-weakness',
  one_sided_sport: 'one-sided-sport',
  leg_length_raise: 'leg-length-raise',
} as const satisfies Partial<Record<keyof Told, string>>;

function aboutOf(told: Told): string[] {
  return Object.entries(ABOUT).flatMap(([column, code]) => (told[column as keyof typeof ABOUT] === true ? [code] : []));
}

/** One row of the manifest: the outcome, whose it is and on which visit; both keys are of the manifest. */
interface Row {
  readonly outcome: Outcome;
  readonly told: Told;
  readonly person: string | null;
  readonly visit: string | null;
}

function rowOf(outcome: Outcome): Row {
  const { carried } = outcome.item;
  // a row whose cells cannot be followed is refused, and nothing of it is told
  const told = toldBy(outcome.status === 'refused' ? {} : carried);
  const person = carried['person'] ?? null;
  const visit = carried['visit'] ?? carried['date'] ?? null;
  return { outcome, told, person, visit: person === null || visit === null ? null : `${person} / ${visit}` };
}

function personOf(key: string, rows: readonly Row[]): StudyPerson {
  const first = <Value>(of: (row: Row) => Value | null | undefined): Value | null => {
    for (const row of rows) {
      const value = of(row);
      if (value !== null && value !== undefined) return value;
    }
    return null;
  };
  const heightCm = first(({ told }) => told.height_cm);
  const leverMm = first(({ outcome }) => outcome.item.about.heelLeverMm);
  return {
    key,
    name: null,
    birthYear: first(({ told }) => told.birth_year),
    ageYears: first(({ told }) => told.age_years),
    ageGroup: null,
    sex: first(({ told }) => told.sex),
    bodyHeightM: heightCm === null ? null : heightCm / 100,
    bodyMassKg: first(({ outcome }) => outcome.item.about.bodyMassKg),
    heelLeverM: leverMm === null ? null : leverMm / 1000,
    note: null,
  };
}

/** Both legs of each test beside each other, as surae assess compares them. */
function comparedOf(rows: readonly Row[], judging: JudgingSettings): StudyLegs[] {
  const sets = rows.flatMap(({ outcome }) => {
    if (outcome.status === 'refused' || outcome.test === 'hop-series') return [];
    return (outcome.test === 'isometric' ? comparedPulls(outcome) : comparedSet(outcome)) ?? [];
  });
  return visitGroups(sets).flatMap((group): StudyLegs[] => {
    const { left, right } = group.legs;
    if (left === null || right === null || left.test !== right.test) return [];
    const { comparison } = compareLegs(group, { own: {}, note: '' }, judging).found;
    return [{ test: left.test, comparison }];
  });
}

function visitOf(key: string, rows: readonly Row[], judging: JudgingSettings): StudyVisit {
  const leg = (side: 'left' | 'right'): StudyLeg => {
    const own = rows.find(({ outcome }) => outcome.item.about.side === side);
    return own === undefined ? NOT_TOLD : legOf(own.told);
  };
  return {
    key,
    person: rows[0]!.person!,
    at: rows.map(({ outcome }) => outcome.item.carried['date']).find((date) => date !== undefined) ?? null,
    dayOffset: null,
    legs: { left: leg('left'), right: leg('right') },
    about: [...new Set(rows.flatMap(({ told }) => aboutOf(told)))],
    safetyTicked: [],
    safetyOverridden: [],
    note: null,
    compared: () => comparedOf(rows, judging),
  };
}

function resultOf(outcome: Outcome): StudyResult | null {
  if (outcome.status === 'refused') return null;
  switch (outcome.test) {
    case 'heel-raise':
      return { test: outcome.test, report: outcome.report };
    case 'isometric': {
      const scoreWindowS = outcome.protocol.parameters.scoreWindow.value;
      return { test: outcome.test, report: outcome.report, scoreWindowS };
    }
    case 'hop-series':
      return { test: outcome.test, report: outcome.report };
  }
}

function trialOf(
  { outcome, told, person, visit }: Row,
  at: number,
  io: Pick<Io, 'readFile' | 'readChunks'>,
): StudyTrial {
  const { item } = outcome;
  const isRefused = outcome.status === 'refused';
  const result = resultOf(outcome);
  return {
    key: `t${String(at + 1).padStart(4, '0')}`,
    person,
    visit,
    test: testOf(item.about),
    side: item.about.side ?? null,
    placement: result?.report.placement ?? item.about.placement ?? null,
    protocol: result?.report.protocol.id ?? item.about.protocol ?? null,
    protocolHash: isRefused ? null : outcome.protocolHash,
    settingsHash: isRefused ? null : outcome.settingsHash,
    software: isRefused ? null : softwareName(),
    file: item.file,
    sha256: outcome.sha256,
    at: item.carried['date'] ?? null,
    origin: told.source,
    device: null,
    deviceNotes: isRefused ? null : outcome.recording.deviceNotes.join('; ') || null,
    forceLine: null,
    readAs: [],
    stringRestLengthM: item.about.stringRestMm === undefined ? null : item.about.stringRestMm / 1000,
    status: isRefused ? 'refused' : 'assessed',
    reason: isRefused ? outcome.reason : null,
    renamed: null,
    setAside: false,
    setAsideWhy: null,
    endReason: told.end_reason,
    happened: null,
    exertion: told.exertion,
    painBefore: told.pain_before,
    painPeak: told.pain_peak,
    painSharp: told.pain_sharp,
    restS: told.rest_s,
    footwear: told.footwear,
    support: told.support,
    note: null,
    result,
    trace: isRefused ? null : () => readAgain(item, io),
    raw:
      outcome.sha256 === null
        ? null
        : async () => ({ bytes: await io.readFile(item.path), ending: endingOf(item.file) }),
  };
}

function endingOf(file: string): string {
  return /\.([A-Za-z0-9]{1,8})$/.exec(file)?.[1]?.toLowerCase() ?? 'bin';
}

function grouped(rows: readonly Row[], by: (row: Row) => string | null): Map<string, Row[]> {
  const found = new Map<string, Row[]>();
  for (const row of rows) {
    const key = by(row);
    if (key === null) continue;
    const list = found.get(key);
    if (list === undefined) found.set(key, [row]);
    else list.push(row);
  }
  return found;
}

/**
 * What leaves of a list of recordings: people and visits as the manifest names them, in the order of its rows. A recording is
 * read again when its samples are written, so that only one is in memory at a time.
 */
export function manifestStudy(
  outcomes: readonly Outcome[],
  settings: Settings,
  io: Pick<Io, 'readFile' | 'readChunks'>,
): Study {
  const rows = outcomes.map(rowOf);
  const visits = [...grouped(rows, ({ visit }) => visit)].map(([key, own]) => visitOf(key, own, settings.judging));
  const offsets = dayOffsets(visits);
  return {
    people: [...grouped(rows, ({ person }) => person)].map(([key, own]) => personOf(key, own)),
    visits: visits.map((visit, at) => ({ ...visit, dayOffset: offsets[at] ?? null })),
    trials: rows.map((row, at) => trialOf(row, at, io)),
    plan: [],
    settings,
    software: softwareName(),
  };
}
