import type { LegFacts, PersonFacts, Report, Side } from '@surae/analysis';
import type { Protocol } from '@surae/shared';
import type { Assessed, VariedReport } from './assess-file.ts';
import { toldBy } from './told.ts';
import type { Told } from './told-columns.ts';

/** A set of a person that is known by name, as far as it may be compared with others. */
export interface ComparedSet {
  readonly file: string;
  readonly person: string;
  readonly visit: string;
  readonly test: string;
  readonly side: Side | null;
  readonly report: Report;
  readonly protocol: Protocol;
  readonly told: Told;
  readonly bodyMassKg: number | undefined;
  /** how it was done beyond the protocol; null is not known */
  readonly features: Readonly<Record<string, string | null>>;
  readonly varied: readonly VariedReport[];
}

/** The set of a recording; undefined where the manifest does not say whose it is. */
export function comparedSet({ item, report, protocol, varied }: Assessed): ComparedSet | undefined {
  const { person, visit, date } = item.carried;
  if (person === undefined) return undefined;
  const told = toldBy(item.carried);
  const { parameters } = protocol;
  // what a protocol says of surface, knee and support holds only where somebody chose that protocol
  const chosen = <Value>(value: Value): Value | null => (item.about.protocol === undefined ? null : value);
  return {
    file: item.file,
    person,
    visit: visit ?? date ?? '',
    test: item.about.test ?? protocol.test,
    side: report.side,
    report,
    protocol,
    told,
    bodyMassKg: item.about.bodyMassKg,
    varied,
    features: {
      footwearWorn: told.footwear,
      surfaceUsed: told.surface ?? chosen(parameters.surface.value),
      kneeHeld: told.knee ?? chosen(parameters.knee.value),
      supportUsed: told.support ?? chosen(parameters.support.value),
      massCarried: item.about.externalMassKg === undefined ? 'none' : `${item.about.externalMassKg} kg`,
    },
  };
}

/** What was told of the leg of a set. */
export function legFacts({ told }: ComparedSet): LegFacts {
  const pains = [told.provoked_pain, told.pain_peak].filter((pain) => pain !== null);
  return {
    sore: told.symptomatic === null ? null : told.symptomatic !== 'none',
    earlierInjury:
      told.earlier_injury === true
        ? { monthsAgo: told.injury_months, confirmed: told.injury_confirmed }
        : told.earlier_injury,
    exertion: told.exertion,
    painBefore: told.pain_before,
    painPeak: told.pain_peak,
    painSharp: told.pain_sharp,
    irritability: {
      provokedBy: told.provoked_by,
      // a test is a provoking load as well
      peakPain: pains.length === 0 ? null : Math.max(...pains),
      settlesAfter: told.settles_h,
      morningStiffness: told.morning_stiffness_min,
      restPain: told.rest_pain,
      trend: told.trend,
    },
    testsBefore: told.tests_before,
    inFlare: told.flare,
  };
}

const DAYS_PER_YEAR = 365.2425;

/** The age that is reached for sure: a birth year alone may make it a year too low, never too high. */
function ageYears({ age_years: age, birth_year: year, date }: Told): number | null {
  if (age !== null) return age;
  if (year === null || date === null) return null;
  return Math.max(0, Math.floor(1970 + date / DAYS_PER_YEAR) - year - 1);
}

function bodyMassIndex({ told, bodyMassKg }: ComparedSet): number | null {
  const { height_cm: heightCm } = told;
  return heightCm === null || bodyMassKg === undefined ? null : bodyMassKg / (heightCm / 100) ** 2;
}

/** The one value that the rows give; null where none does or they contradict each other. */
function agreed<Value>(values: readonly (Value | null)[]): Value | null {
  const given = new Set(values.filter((value) => value !== null));
  return given.size === 1 ? [...given][0]! : null;
}

/** Yes where any row says so, no where one says no and none yes; a yes on one row is not taken back by a no on another. */
function anyYes(values: readonly (boolean | null)[]): boolean | null {
  return values.includes(true) ? true : values.includes(false) ? false : null;
}

/** What the rows of one visit tell of the person. */
export function personFacts(sets: readonly ComparedSet[]): PersonFacts {
  const told = sets.map((set) => set.told);
  return {
    sex: agreed(told.map(({ sex }) => sex)),
    ageYears: agreed(told.map(ageYears)),
    bodyMassIndex: agreed(sets.map(bodyMassIndex)),
    pregnant: anyYes(told.map(({ pregnant }) => pregnant)),
    amputation: anyYes(told.map(({ amputation }) => amputation)),
    nerveCondition: anyYes(told.map((one) => one.nerve_condition)),
    nerveSigns: anyYes(told.map((one) => one.nerve_signs)),
    oneSidedSport: anyYes(told.map((one) => one.one_sided_sport)),
    legLengthRaise: anyYes(told.map((one) => one.leg_length_raise)),
  };
}
