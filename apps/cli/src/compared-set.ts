import type { LegFacts, PersonFacts, PullReport, Report, Side } from '@surae/analysis';
import type { Protocol, PullProtocol } from '@surae/shared';
import { type Assessed, toldBy, type VariedReport, type WorkItem } from '@surae/study';
import type { Told } from '@surae/study/words';

/** What is known of a recording of a person that is known by name, whatever was measured. */
interface SetFrame {
  readonly file: string;
  readonly person: string;
  readonly visit: string;
  readonly side: Side | null;
  readonly told: Told;
  readonly bodyMassKg: number | undefined;
  /** how it was done beyond the protocol; null is not known */
  readonly features: Readonly<Record<string, string | null>>;
}

/** A set of heel raises, as far as it may be compared with others. */
export interface ComparedRaises extends SetFrame {
  readonly test: 'heel-raise';
  readonly report: Report;
  readonly protocol: Protocol;
  readonly varied: readonly VariedReport[];
}

/** A recording of isometric efforts, likewise. */
export interface ComparedPulls extends SetFrame {
  readonly test: 'isometric';
  readonly report: PullReport;
  readonly protocol: PullProtocol;
}

export type ComparedSet = ComparedRaises | ComparedPulls;

function frameOf(item: WorkItem, side: Side | null, features: SetFrame['features']): SetFrame | undefined {
  const { person, visit, date } = item.carried;
  if (person === undefined) return undefined;
  return {
    file: item.file,
    person,
    visit: visit ?? date ?? '',
    side,
    told: toldBy(item.carried),
    bodyMassKg: item.about.bodyMassKg,
    features,
  };
}

/** What a protocol says holds only where somebody chose that protocol; null is not known. */
function chosen<Value>({ about }: WorkItem, value: Value): Value | null {
  return about.protocol === undefined ? null : value;
}

/** The set of a recording of heel raises; undefined where the manifest does not say whose it is. */
export function comparedSet({
  item,
  report,
  protocol,
  varied,
}: Pick<Assessed, 'item' | 'report' | 'protocol' | 'varied'>): ComparedRaises | undefined {
  const { footwear, surface, knee, support } = toldBy(item.carried);
  const { parameters } = protocol;
  const frame = frameOf(item, report.side, {
    footwearWorn: footwear,
    surfaceUsed: surface ?? chosen(item, parameters.surface.value),
    kneeHeld: knee ?? chosen(item, parameters.knee.value),
    supportUsed: support ?? chosen(item, parameters.support.value),
    massCarried: item.about.externalMassKg === undefined ? 'none' : `${item.about.externalMassKg} kg`,
  });
  return frame && { ...frame, test: 'heel-raise', report, protocol, varied };
}

/** The efforts of a recording of isometric pulls; undefined where the manifest does not say whose they are. */
export function comparedPulls({
  item,
  report,
  protocol,
}: {
  readonly item: WorkItem;
  readonly report: PullReport;
  readonly protocol: PullProtocol;
}): ComparedPulls | undefined {
  const { footwear, knee } = toldBy(item.carried);
  const frame = frameOf(item, report.side, {
    footwearWorn: footwear,
    kneeHeld: knee ?? chosen(item, protocol.parameters.knee.value),
  });
  return frame && { ...frame, test: 'isometric', report, protocol };
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
