import type { Report } from '@surae/analysis';
import type {
  Study,
  StudyLeg,
  StudyPerson,
  StudyPlanItem,
  StudyPractice,
  StudyReach,
  StudyRecount,
  StudyResult,
  StudyTotal,
  StudyTrial,
  StudyVisit,
} from '../study.ts';
import { ageIn, ageLeaving } from './age-group.ts';
import { clockOriginS, resultFrom, traceFrom } from './clock-origin.ts';
import { dayNumber, dayOffsets } from './days.ts';
import { nameScan } from './name-scan.ts';
import { studyKeys } from './study-keys.ts';

/** What is asked of a de-identified export. */
export interface DeidentifyRequest {
  /** what study keys are made with; drawn anew for keys that no two exports share */
  readonly secret: string;
  /** whether the names of devices stay; one that holds a name of a person goes all the same */
  readonly keepDevices: boolean;
}

/** How many things were taken out, by what they are. */
export interface TakenOut {
  readonly names: number;
  readonly texts: number;
  readonly times: number;
  readonly hashes: number;
  readonly devices: number;
  /** words that stood where a code of a list belongs */
  readonly strangeCodes: number;
}

/** A code of a list: small letters, digits, points, dashes. Anything else in its place is free text. */
const CODE = /^[a-z0-9][a-z0-9._-]*$/;
/** A language, a place and a year, such as de-CH 2019: what a language version of a questionnaire is told by. */
const VERSION = /^[a-z]{2,3}(-[A-Z]{2})?( \d{4})?$/;

/**
 * A study in which nobody can be named: study keys for keys, day offsets for times, ages for years of birth with the oldest
 * as one group, no free text, no hash and no bytes of what came. Order tells nothing either: everything is sorted by key or
 * day. What was measured stays, so somebody who holds the same figures can still know a person by them.
 *
 * Source: the list of what is taken out in 45 CFR 164.514(b)(2), from memory; day offsets in place of dates: common practice
 */
export function deidentified(
  study: Study,
  { secret, keepDevices }: DeidentifyRequest,
): { study: Study; out: TakenOut } {
  const key = studyKeys(secret);
  const holdsName = nameScan(study.people.flatMap(({ name }) => (name === null ? [] : [name])));
  const out = { names: 0, texts: 0, times: 0, hashes: 0, devices: 0, strangeCodes: 0 };
  const gone = (what: keyof TakenOut, value: unknown): null => {
    if (value !== null) out[what] += 1;
    return null;
  };
  const code = <Word extends string>(word: Word | null): Word | null =>
    word === null || (CODE.test(word) && !holdsName(word)) ? word : gone('strangeCodes', word);
  const codes = (words: readonly string[]): string[] => words.filter((word) => code(word) !== null).sort();

  const offsets = dayOffsets(study.visits);
  const firstVisits = new Map<string, string>();
  for (const { person, at } of study.visits) {
    const before = firstVisits.get(person);
    if (at !== null && (before === undefined || at < before)) firstVisits.set(person, at);
  }

  const person = (one: StudyPerson): StudyPerson => {
    const first = firstVisits.get(one.key) ?? null;
    return {
      ...one,
      key: key('person', one.key),
      name: gone('names', one.name),
      birthYear: gone('times', one.birthYear),
      ...(one.ageGroup === null
        ? ageLeaving(one.ageYears ?? ageIn(one.birthYear, first))
        : { ageYears: null, ageGroup: one.ageGroup }),
      sex: one.sex,
      note: gone('texts', one.note),
    };
  };
  const leg = ({ sore, injury, confirmed, lastFlare = null, irritability }: StudyLeg): StudyLeg => {
    const { provokedBy, settles, stiffness, restPain, trend, flare, ...figures } = irritability;
    return {
      sore: code(sore),
      injury: code(injury),
      confirmed,
      lastFlare: code(lastFlare),
      irritability: {
        ...figures,
        provokedBy: code(provokedBy),
        settles: code(settles),
        stiffness: code(stiffness),
        restPain: code(restPain),
        trend: code(trend),
        flare: code(flare),
      },
    };
  };
  const visit = (one: StudyVisit, at: number): StudyVisit => ({
    key: key('visit', one.key),
    person: key('person', one.person),
    at: gone('times', one.at),
    dayOffset: dayNumber(one.at) === null ? one.dayOffset : (offsets[at] ?? null),
    legs: { left: leg(one.legs.left), right: leg(one.legs.right) },
    about: codes(one.about),
    safetyTicked: codes(one.safetyTicked),
    safetyOverridden: codes(one.safetyOverridden),
    note: gone('texts', one.note),
    // verdicts and figures, and codes of our own
    compared: one.compared,
  });
  const calibration = (result: StudyResult): StudyResult => {
    if (result.test !== 'isometric' || result.report.calibrationId == null) return result;
    const calibrationId = key('calibration', result.report.calibrationId);
    return { ...result, report: { ...result.report, calibrationId } };
  };
  const byHand = (result: StudyResult): StudyResult => {
    if (result.test !== 'heel-raise' || result.byHand === undefined) return result;
    const verdicts = result.byHand.verdicts.map((verdict) => ({ ...verdict, why: code(verdict.why) }));
    return { ...result, byHand: { ...result.byHand, verdicts } };
  };
  const device = (name: string | null): string | null =>
    name === null || (keepDevices && !holdsName(name)) ? name : gone('devices', name);
  const recount = (one: StudyRecount, originS: number): StudyRecount => {
    const report = resultFrom(one.result, originS).report as Report;
    return {
      ...one,
      key: key('recount', one.key),
      at: gone('times', one.at),
      protocol: code(one.protocol),
      why: gone('texts', one.why),
      result: { ...one.result, report },
    };
  };
  const trial = (one: StudyTrial): StudyTrial => {
    const { trace } = one;
    const originS = clockOriginS(one.result);
    return {
      ...one,
      key: key('trial', one.key),
      person: one.person === null ? null : key('person', one.person),
      visit: one.visit === null ? null : key('visit', one.visit),
      placement: code(one.placement),
      protocol: code(one.protocol),
      file: gone('texts', one.file),
      sha256: gone('hashes', one.sha256),
      at: gone('times', one.at),
      origin: code(one.origin),
      device: device(one.device),
      deviceNotes: gone('texts', one.deviceNotes),
      reason: gone('texts', one.reason),
      setAsideWhy: code(one.setAsideWhy),
      endReason: code(one.endReason),
      happened: code(one.happened),
      footwear: code(one.footwear),
      support: code(one.support),
      note: gone('texts', one.note),
      result: one.result === null ? null : byHand(calibration(resultFrom(one.result, originS))),
      ...(one.recounts === undefined ? {} : { recounts: one.recounts.map((again) => recount(again, originS)) }),
      trace: trace === null ? null : async () => traceFrom(await trace(), originS),
      raw: null,
    };
  };
  const planItem = (one: StudyPlanItem): StudyPlanItem => ({
    ...one,
    key: key('plan', one.key),
    person: key('person', one.person),
    at: gone('times', one.at),
    code: code(one.code) ?? 'not-told',
    text: gone('texts', one.text),
  });

  const total = (one: StudyTotal): StudyTotal => {
    const { languageVersion: version } = one;
    return {
      ...one,
      key: key('total', one.key),
      person: key('person', one.person),
      at: gone('times', one.at),
      questionnaire: code(one.questionnaire) ?? 'not-told',
      languageVersion: version === null || VERSION.test(version) ? version : gone('texts', version),
    };
  };

  const reach = (one: StudyReach): StudyReach => ({
    ...one,
    key: key('reach', one.key),
    person: key('person', one.person),
    at: gone('times', one.at),
    unit: code(one.unit) ?? 'not-told',
    skipped: code(one.skipped),
  });

  const practice = (one: StudyPractice): StudyPractice => ({
    ...one,
    key: key('practice', one.key),
    person: key('person', one.person),
    visit: key('visit', one.visit),
    at: gone('times', one.at),
    placement: code(one.placement),
    protocol: code(one.protocol),
    origin: code(one.origin),
    trials: one.trials.map((trialKey) => key('trial', trialKey)).sort(),
  });

  const sorted = <Part extends { readonly key: string }>(parts: readonly Part[]): Part[] =>
    [...parts].sort((a, b) => (a.key < b.key ? -1 : 1));
  return {
    study: {
      ...study,
      people: sorted(study.people.map(person)),
      visits: sorted(study.visits.map(visit)),
      trials: sorted(study.trials.map(trial)),
      plan: sorted(study.plan.map(planItem)),
      ...(study.totals === undefined ? {} : { totals: sorted(study.totals.map(total)) }),
      ...(study.reaches === undefined ? {} : { reaches: sorted(study.reaches.map(reach)) }),
      ...(study.practice === undefined ? {} : { practice: sorted(study.practice.map(practice)) }),
    },
    out,
  };
}
