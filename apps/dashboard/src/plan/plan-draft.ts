import {
  choiceFacts,
  gradeOf,
  isForInsertion,
  lowestOffered,
  type PlanFacts,
  type PlanItem,
  planBlocks,
  planOpenBlocks,
  soreLegs,
  type Visit,
  wordsOnly,
} from '@surae/casebook';
import { type NumbersInUse, numbersInUse, painLimitOf } from '@surae/guidance';
import {
  EXERCISE_WORDS,
  EXERCISES,
  GUIDANCE_RULES,
  PLAN_ADVICE_CHOICES,
  PLAN_BOUNDS,
  PLAN_LINE_WORDS,
  type PlanRuleCode,
} from '@surae/shared';

/** Lines of a plan at most: they stand on one sheet, and in a code that a camera reads; ours. */
export const planLinesMost = 10;

/** For whom a line of a plan is. */
export type PlanSide = PlanItem['side'];

/** A plan as it is being written, and what it was before each press. */
export interface PlanDraft {
  readonly items: readonly PlanItem[];
  readonly before: readonly (readonly PlanItem[])[];
}

export const emptyDraft: PlanDraft = { items: [], before: [] };

const open = {
  ...wordsOnly,
  goneOver: [],
  load: null,
  sets: null,
  repetitions: null,
  perWeek: null,
  until: null,
  proposedBy: null,
  decision: 'accepted',
  why: null,
} as const;

/** The legs that a plan is for until somebody says otherwise: the sore one, or both. */
export function planSide(visit: Pick<Visit, 'sore'>): PlanSide {
  const sore = soreLegs(visit.sore);
  return sore.length === 1 ? sore[0]! : 'both';
}

/** Pain up to which exercises begin to be planned: less where a sore tendon is highly irritable. */
export function planPainLimit(visit: Visit, numbers: NumbersInUse = numbersInUse(GUIDANCE_RULES)): number {
  return painLimitOf(gradeOf(choiceFacts(visit, [])), numbers);
}

/** The lines that were typed, without empty ones and what stands around them; none is longer than a line. */
export function typedLines(text: string): string[] {
  return text
    .split('\n')
    .map((line) => line.trim().slice(0, 200))
    .filter((line) => line !== '');
}

/** A line that somebody wrote, as it is kept: noted by a clinician, proposed by nobody. */
export function wordsLine(what: string, side: PlanSide, from: string): PlanItem {
  return { ...open, goneOver: [], what, side, from };
}

/** An exercise with the numbers that its page begins from. */
export function exerciseLine(
  code: keyof typeof EXERCISE_WORDS,
  side: PlanSide,
  from: string,
  painLimit: number,
  { sore }: Pick<PlanFacts, 'sore'>,
): PlanItem {
  const entry = EXERCISES.find((one) => one.code === code)!;
  const { begin, beginDeg, legs, move } = entry;
  const forLegs = legs === 'two' ? 'both' : side;
  const isImpact = move === 'rebounds' || move === 'hops';
  return {
    ...open,
    goneOver: [],
    of: 'exercise',
    code,
    what: EXERCISE_WORDS[code].text,
    side: forLegs,
    from,
    sets: begin.sets,
    repetitions: begin.repetitions,
    holdS: begin.holdS,
    tempo: begin.tempo,
    restS: begin.restS,
    perWeek: begin.perWeek,
    painLimit,
    lowestFootDeg: isImpact ? null : Math.max(beginDeg, lowestOffered(code, forLegs, sore)),
  };
}

/** A limit for runs, by time or by way. */
export function runLine(by: 'time' | 'way', from: string, painLimit: number): PlanItem {
  const mostS = by === 'time' ? 60 * PLAN_BOUNDS.runMin.begin : null;
  const mostM = by === 'way' ? PLAN_BOUNDS.runM.begin : null;
  const run = { mostS, mostM, daysBetween: PLAN_BOUNDS.daysBetween.begin, runS: null, walkS: null };
  return {
    ...open,
    goneOver: [],
    of: 'running',
    what: PLAN_LINE_WORDS.running.text,
    side: 'both',
    from,
    painLimit,
    run,
  };
}

/** A line of advice. */
export function adviceLine(code: keyof typeof PLAN_ADVICE_CHOICES, side: PlanSide, from: string): PlanItem {
  return { ...open, goneOver: [], of: 'advice', code, what: PLAN_ADVICE_CHOICES[code].text, side, from };
}

function moved({ items, before }: PlanDraft, next: readonly PlanItem[]): PlanDraft {
  return { items: next, before: [...before, items].slice(-50) };
}

/** The draft with one more line. */
export function added(draft: PlanDraft, item: PlanItem): PlanDraft {
  return moved(draft, [...draft.items, item]);
}

/** The draft with lines that held before, or that a rule proposes, each from this day on. One that is there already comes once. */
export function taken(draft: PlanDraft, items: readonly PlanItem[], from: string): PlanDraft {
  const isThere = (one: PlanItem): boolean =>
    draft.items.some(
      ({ of, code, side, what }) => of === one.of && code === one.code && side === one.side && what === one.what,
    );
  // its end was that of the days before: it is set anew
  const next = items.filter((one) => !isThere(one)).map((one) => ({ ...one, from, until: null }));
  return next.length === 0 ? draft : moved(draft, [...draft.items, ...next]);
}

/** The draft with lines that a rule proposes for activity, each with its end. A plan has one limit for runs: a new one takes its place. */
export function withActivity({ items, before }: PlanDraft, lines: readonly PlanItem[]): PlanDraft {
  const hasRuns = lines.some(({ of }) => of === 'running');
  const stays = items.filter(({ of }) => !(hasRuns && of === 'running'));
  const isThere = (line: PlanItem): boolean =>
    stays.some(({ of, code, side }) => of === line.of && code === line.code && side === line.side);
  return moved({ items, before }, [...stays, ...lines.filter((line) => line.of === 'running' || !isThere(line))]);
}

export function removed(draft: PlanDraft, place: number): PlanDraft {
  return moved(
    draft,
    draft.items.filter((_, at) => at !== place),
  );
}

/** The draft with another line at a place. What a rule proposed is from then on changed. */
export function changed(draft: PlanDraft, place: number, item: PlanItem): PlanDraft {
  if (item === draft.items[place]) return draft;
  const line: PlanItem = item.proposedBy === null ? item : { ...item, decision: 'changed' };
  return moved(
    draft,
    draft.items.map((one, at) => (at === place ? line : one)),
  );
}

/** The draft without some of its lines. */
export function without(draft: PlanDraft, isOut: (item: PlanItem) => boolean): PlanDraft {
  const items = draft.items.filter((one) => !isOut(one));
  return items.length === draft.items.length ? draft : moved(draft, items);
}

/** The draft without any line; what was there comes back by undoing. */
export function emptied(draft: PlanDraft): PlanDraft {
  return without(draft, () => true);
}

/** The draft as it was before the last press. */
export function undone({ items, before }: PlanDraft): PlanDraft {
  const last = before.at(-1);
  return last === undefined ? { items, before } : { items: last, before: before.slice(0, -1) };
}

/** Rules that are a matter of a heel bone that is sore. */
const ofHeelBone: ReadonlySet<string> = new Set<PlanRuleCode>([
  'insertion-step',
  'insertion-stretch',
  'insertion-range',
]);

/** A line for other legs: what only a reason allows goes, and the reason with it where it is no matter of these legs. */
export function forSide(item: PlanItem, side: PlanSide, facts: PlanFacts): PlanItem {
  const other = { ...item, side };
  const goneOver = other.goneOver.filter(({ rule }) => !ofHeelBone.has(rule) || isForInsertion(side, facts.sore));
  const hasReason = goneOver.some(({ rule }) => rule === 'insertion-range');
  const { code, lowestFootDeg } = other;
  const least = code === null || hasReason ? null : lowestOffered(code, side, facts.sore);
  return {
    ...other,
    goneOver,
    lowestFootDeg: lowestFootDeg === null || least === null ? lowestFootDeg : Math.max(lowestFootDeg, least),
  };
}

/** A line with why somebody goes over a rule; an empty reason is none, and what only it allowed goes with it. */
export function withReason(item: PlanItem, rule: PlanRuleCode, reason: string, facts: PlanFacts): PlanItem {
  const others = item.goneOver.filter((one) => one.rule !== rule);
  const text = reason.slice(0, 2000);
  const goneOver = text.trim() === '' ? others : [...others, { rule, reason: text }];
  return forSide({ ...item, goneOver }, item.side, facts);
}

/** Rules that a line has, each with the reason that was given; what may be asked of a range before it is lowered is among them. */
export function reasonsOf(
  item: PlanItem,
  facts: PlanFacts,
): readonly { readonly rule: PlanRuleCode; readonly reason: string }[] {
  const rules = new Set<PlanRuleCode>(planBlocks(item, facts));
  const entry = EXERCISES.find(({ code }) => code === item.code);
  const canGoLower = entry !== undefined && item.lowestFootDeg !== null && entry.lowestDeg < 0;
  if (canGoLower && isForInsertion(item.side, facts.sore)) rules.add('insertion-range');
  return [...rules].map((rule) => ({ rule, reason: item.goneOver.find((one) => one.rule === rule)?.reason ?? '' }));
}

/** What stands against everything that loads, the most of it first; null where nothing does. */
export function standsAgainst(facts: PlanFacts): 'lost-raise' | 'locked' | 'rupture-first' | null {
  if (facts.suddenLoss) return 'lost-raise';
  if (facts.safetyLocked) return 'locked';
  return facts.ruptureFirst ? 'rupture-first' : null;
}

/** Why a draft cannot be kept yet; null where it can. */
export function draftProblem(items: readonly PlanItem[], facts: PlanFacts): 'nothing' | 'too-many' | 'rules' | null {
  if (items.length === 0) return 'nothing';
  if (items.length > planLinesMost) return 'too-many';
  return items.some((one) => planOpenBlocks(one, facts).length > 0) ? 'rules' : null;
}
