import { type CasebookPerson, type PlanItem, planFacts, planOpenBlocks, type Visit } from '@surae/casebook';
import {
  type GivenFacts,
  type Guidance,
  governingLegs,
  type Leg,
  type LineHeldBack,
  type LoadStart,
  linesFor,
  loadStart,
} from '@surae/guidance';
import {
  type DoseLine,
  EXERCISE_WORDS,
  EXERCISES,
  type GuidanceRule,
  HEAVY_SLOW,
  HEAVY_SLOW_EXERCISES,
  LEVELS,
  PLAN_BOUNDS,
  type ProgrammeEntry,
} from '@surae/shared';
import { exerciseLine } from '../plan/plan-draft.ts';
import { easedFrom } from './dose-held.ts';
import { isHeavyLine } from './hard-lines.ts';
import { goesByLeg, otherLevel } from './level-after.ts';
import { legPlan, levelNow } from './programme-given.ts';
import { proposedByText } from './proposed-by.ts';

/** What lines of a proposal stand on. */
export interface LinesGround {
  readonly visit: Visit;
  /** without the visit */
  readonly past: CasebookPerson;
  readonly given: GivenFacts;
  readonly guidance: Guidance;
  readonly today: string;
  /** pain up to which is gone on with where nothing else is said, of 10 */
  readonly painLimit: number;
  /** raises that counted; null where it is not known */
  readonly raises: number | null;
}

/** Lines that a proposal means. */
export interface AdviceLines {
  readonly lines: readonly PlanItem[];
  /** kept from it by rules of guidance */
  readonly held: readonly LineHeldBack[];
  /** done with both legs, and of the more careful leg alone */
  readonly ofOtherLeg: readonly Pick<DoseLine, 'exercise'>[];
  /** why there are none, where there are none */
  readonly none: 'no-lines' | 'no-base' | null;
}

const nothing: AdviceLines = { lines: [], held: [], ofOtherLeg: [], none: 'no-lines' };

function isOfTwo({ exercise }: DoseLine): boolean {
  return EXERCISES.find(({ code }) => code === exercise)?.legs === 'two';
}

/** The leg's own limit of pain, as it is proposed. */
function painMost(leg: Leg, { guidance, painLimit }: LinesGround): number {
  const proposed = guidance.proposals.find((one) => one.about === 'pain-limit' && one.leg === leg);
  return Math.min(proposed?.rule.numbers['most']?.value ?? painLimit, painLimit);
}

function startOf(leg: Leg, { guidance, raises, past }: LinesGround): LoadStart | null {
  const load = guidance.proposals.find((one) => one.about === 'load' && one.leg === leg);
  return load === undefined || raises === null ? null : loadStart(load.rule, raises, past.person.bodyMassKg);
}

/** A load in whole steps of the plan, and never more than was proposed. */
function inSteps(kg: number | null): PlanItem['load'] {
  const { by, least } = PLAN_BOUNDS.loadKg;
  const value = kg === null ? 0 : Math.floor(kg / by) * by;
  return value < least ? null : { value, unit: 'kg' };
}

/** A line of a level as a line of a plan: the least of each span, and no more repetitions than what the test allows. */
function lineOf(dose: DoseLine, leg: Leg, proposedBy: string, ground: LinesGround): PlanItem {
  const { visit, today } = ground;
  const limit = Math.min(dose.painMost ?? painMost(leg, ground), painMost(leg, ground));
  const line = exerciseLine(dose.exercise as keyof typeof EXERCISE_WORDS, leg, today, limit, planFacts(visit));
  const isOwnWeight = dose.exercise === 'one-leg-raise' && dose.load.kind === 'body-weight';
  const start = startOf(leg, ground);
  const count = isOwnWeight ? start?.repetitions?.[0] : undefined;
  const [fewest, most] = dose.repetitions ?? [null, null];
  return {
    ...line,
    sets: dose.sets[0],
    repetitions:
      count === undefined || most === null ? fewest : Math.max(1, count < most ? Math.min(count, most) : most),
    holdS: dose.holdS?.[0] ?? null,
    tempo: dose.tempo,
    restS: dose.restS?.[0] ?? null,
    perWeek: Math.floor(dose.perWeek[0]),
    load: dose.exercise === 'loaded-one-leg-raise' ? inSteps(start?.addedKg ?? null) : null,
    proposedBy,
    decision: 'accepted',
  };
}

/** Lines of a level for a leg. What is done with both legs comes from the legs that govern, and of them from the more careful one. */
export function levelLines(code: string, rule: GuidanceRule, leg: Leg, ground: LinesGround): AdviceLines {
  const level = LEVELS.find((one) => one.code === code);
  if (level === undefined) return nothing;
  const { guidance } = ground;
  const together = guidance.together.find(({ about }) => about === rule.about);
  // a leg of which it is not known where it begins may be the more careful one
  const isWhole = governingLegs(ground.given).every((one) =>
    guidance.proposals.some((proposed) => proposed.about === rule.about && proposed.leg === one),
  );
  const isStart = isWhole && together?.legs.includes(leg) === true;
  const isCareful = rule.about === 'start-level' ? isStart : goesByLeg(leg, ground);
  // what comes in the place of another exercise is not done from the beginning
  const begun = level.lines.filter(({ after }) => after === undefined);
  const found = linesOf(begun, isCareful, proposedByText(rule, leg, code), leg, ground);
  return { ...found, lines: found.lines.map((line) => asBefore(line, leg, ground)) };
}

/** Heavy raises that go on beside bounces keep the dose that they have; how often they are done is that of the level. */
function asBefore(line: PlanItem, leg: Leg, { past, today }: LinesGround): PlanItem {
  const before = legPlan(past, leg, today)?.lines.find(
    ({ body }) => body.code === line.code && isHeavyLine(body),
  )?.body;
  if (before === undefined || !isHeavyLine(line)) return line;
  const { sets, repetitions, load, tempo, restS } = before;
  return { ...line, sets, repetitions, load, tempo, restS };
}

/** Lines of a programme beside the levels; what is done with both legs is of the legs that govern. */
export function programmeLines(
  { lines, level }: Pick<ProgrammeEntry, 'lines' | 'level'>,
  rule: GuidanceRule,
  leg: Leg,
  ground: LinesGround,
): AdviceLines {
  const isCareful = governingLegs(ground.given).includes(leg);
  return linesOf(lines, isCareful, proposedByText(rule, leg, level), leg, ground);
}

/** Lines for a leg, without what rules stand against; what is done with both legs where this one leads to it. */
function linesOf(
  all: readonly DoseLine[],
  isCareful: boolean,
  proposedBy: string,
  leg: Leg,
  ground: LinesGround,
): AdviceLines {
  const { guidance } = ground;
  const own = all.filter((one) => isCareful || !isOfTwo(one));
  const parted = [
    linesFor(
      own.filter((one) => !isOfTwo(one)),
      leg,
      guidance.blocks,
    ),
    linesFor(own.filter(isOfTwo), null, guidance.blocks),
  ];
  const offered = new Set(parted.flatMap(({ lines }) => lines));
  const lines = own.filter((one) => offered.has(one)).map((one) => lineOf(one, leg, proposedBy, ground));
  const open = lines.filter((one) => planOpenBlocks(one, planFacts(ground.visit)).length === 0);
  return {
    lines: open,
    held: parted.flatMap(({ heldBack }) => heldBack),
    ofOtherLeg: all.filter((one) => !own.includes(one)),
    none: open.length === 0 ? 'no-lines' : null,
  };
}

/** So many less that it lies between the shares where a whole number does, else the next whole number below. */
function less(value: number, { least, most }: GuidanceRule['numbers']): number {
  const [few, many] = [(least?.value ?? 0) / 100, (most?.value ?? 0) / 100];
  const to = Math.floor(value * (1 - few));
  return Math.max(1, to >= value * (1 - many) && to < value ? to : Math.min(value - 1, Math.floor(value * (1 - many))));
}

/** A line of the heavy level with the sets and repetitions of the next weeks; how heavy it is then is found by trying. */
function nextWeek(line: PlanItem): PlanItem {
  const { codes, byHand } = HEAVY_SLOW_EXERCISES;
  const isHeavy = [...codes, ...byHand].some((code) => code === line.code);
  const now = HEAVY_SLOW.findIndex(({ sets, repetitions }) => sets === line.sets && repetitions === line.repetitions);
  const next = now < 0 ? undefined : HEAVY_SLOW[now + 1];
  return !isHeavy || next === undefined ? line : { ...line, sets: next.sets, repetitions: next.repetitions };
}

/** What of a level a line of a plan is held against: the most that its repetitions come to, and what comes in its place. */
interface LineBounds {
  readonly mostOf: (line: PlanItem) => number | null;
  readonly nextOf: (line: PlanItem) => DoseLine | undefined;
}

function changedLine(
  line: PlanItem,
  rule: GuidanceRule,
  { mostOf, nextOf }: LineBounds,
  leg: Leg,
  ground: LinesGround,
): PlanItem | null {
  const { numbers } = rule;
  switch (rule.code) {
    case 'step-hold':
    case 'step-wait':
      return line;
    case 'step-reduce':
      if (line.repetitions !== null) return { ...line, repetitions: less(line.repetitions, numbers) };
      return line.holdS === null ? null : { ...line, holdS: less(line.holdS, numbers) };
    case 'change-repetitions': {
      const most = mostOf(line);
      if (line.repetitions === null || most === null || line.repetitions >= most) return line;
      return { ...line, repetitions: line.repetitions + PLAN_BOUNDS.repetitions.by };
    }
    case 'change-impact': {
      const next = nextOf(line);
      return next === undefined ? line : lineOf(next, leg, '', ground);
    }
    case 'change-week':
      return nextWeek(line);
    case 'change-load':
      if (line.load?.unit !== 'kg') return line;
      return { ...line, load: { ...line.load, value: line.load.value + PLAN_BOUNDS.loadKg.by } };
    default:
      return null;
  }
}

/**
 * Lines that a change means: those of the plan so far with the one number that changes, or those of the level that it leads to.
 *
 * @param rule - about a step or a change, that holds for the leg [-]
 * @param leg - whose plan it changes [-]
 * @param ground - see {@link LinesGround} [-]
 * @returns lines from today on; none where the change is in no number that is known here [-]
 *
 * Source: ours
 */
export function changeLines(rule: GuidanceRule, leg: Leg, ground: LinesGround): AdviceLines {
  const { past, visit, today } = ground;
  const code = levelNow(past, leg, today);
  const level = LEVELS.find((one) => one.code === code);
  const other = otherLevel(rule, level, leg, visit);
  if (other !== undefined) {
    return other === null ? { ...nothing, none: 'no-base' } : levelLines(other.code, rule, leg, ground);
  }
  const all = (legPlan(past, leg, today)?.lines ?? []).map(({ body }) => body);
  const isCareful = goesByLeg(leg, ground);
  const before = all.filter(({ side }) => isCareful || side === leg);
  const ofOtherLeg = all
    .filter((line) => !before.includes(line))
    .flatMap(({ code: exercise }) => (exercise === null ? [] : { exercise }));
  if (before.length === 0 && ofOtherLeg.length > 0) return { ...nothing, ofOtherLeg };
  if (before.length === 0) return { ...nothing, none: 'no-base' };
  const proposedBy = proposedByText(rule, leg, code);
  const mostOf = (line: PlanItem): number | null =>
    level?.lines.find(({ exercise }) => exercise === line.code)?.repetitions?.[1] ?? null;
  const nextOf = (line: PlanItem): DoseLine | undefined => level?.lines.find(({ after }) => after === line.code);
  const back = rule.code === 'change-back' ? (easedFrom(past, leg)?.before?.lines ?? []) : [];
  const after =
    back.length > 0
      ? back.map(({ body }) => body).filter(({ side }) => isCareful || side === leg)
      : before.map((line) => changedLine(line, rule, { mostOf, nextOf }, leg, ground));
  const isSame = rule.code === 'step-hold' || rule.code === 'step-wait';
  if (after.includes(null) || (!isSame && after.every((line, at) => line === before[at]))) return nothing;
  const lines = after
    .flatMap((line) => line ?? [])
    .map((line): PlanItem => ({ ...line, from: today, until: null, proposedBy, decision: 'accepted' }))
    .filter((line) => planOpenBlocks(line, planFacts(visit)).length === 0);
  return { ...nothing, lines, ofOtherLeg, none: lines.length === 0 ? 'no-lines' : null };
}
