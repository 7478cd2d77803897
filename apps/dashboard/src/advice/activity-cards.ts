import { type CasebookPerson, type PlanItem, planFacts, type RunsWhole, type Visit } from '@surae/casebook';
import {
  type GivenFacts,
  type Guidance,
  governingLegs,
  LEGS,
  numbersInUse,
  type Proposed,
  propose,
  type RuleTrace,
  type Together,
} from '@surae/guidance';
import {
  ACTIVITY_WORDS,
  ADVICE_WORDS,
  GUIDANCE_FACTS,
  GUIDANCE_RULES,
  type GuidanceRule,
  PLAN_WORDS,
} from '@surae/shared';
import { planPainLimit } from '../plan/plan-draft.ts';
import { fill } from '../words/fill.ts';
import { activityAsks } from './activity-asks.ts';
import { activityLines } from './activity-lines.ts';
import { type PointList, pointLists } from './activity-lists.ts';
import { type RunAdvice, runAdvice } from './activity-run.ts';
import { storyWords } from './activity-story.ts';
import { capWords, daysApart, goalWords, nextWords, runNumberLines } from './activity-words.ts';
import type { FactAsk } from './fact-asks.ts';
import { beforeVisit, factsGiven } from './facts-given.ts';
import { missingOf } from './given-fact.ts';
import { inventedWords } from './invented-words.ts';
import { irritabilityInputLines } from './irritability-words.ts';
import { proposedByText } from './proposed-by.ts';
import { runsAsked } from './run-log-given.ts';
import { editedLines, lackingLines, markWords, ruleWords, type WhyPart, whyParts } from './why-words.ts';

/** What is proposed about running, or about standing. */
export interface ActivityCard {
  readonly about: 'running' | 'standing';
  /** as it is kept with a line, and with an answer that declines it; null where nothing is proposed */
  readonly proposedBy: string | null;
  readonly title: string;
  readonly standing: Proposed['standing'] | null;
  readonly sure: string;
  /** which leg it goes by, where both count */
  readonly also: readonly string[];
  readonly lines: readonly PlanItem[];
  /** what a tap would settle of it, or settled in this visit */
  readonly asks: readonly FactAsk[];
  /** that it is of an invented person; null of anybody else */
  readonly invented: string | null;
  readonly why: readonly WhyPart[];
}

/** Lines about something under a title of their own. */
export interface ActivityPart {
  readonly code: 'cap' | 'next' | 'recovery' | 'goal' | 'story';
  readonly title: string;
  readonly lines: readonly string[];
}

/** Everything that is proposed for running, standing and the days between. */
export interface Activity {
  readonly cards: readonly ActivityCard[];
  /** the cap of a run, the next one, days between, the goal day; none under a lock, and for who does not run */
  readonly parts: readonly ActivityPart[];
  readonly lists: readonly PointList[];
  /** days of which it is asked whether every run is written down; null where the cap is known, or no run is proposed */
  readonly asked: RunsWhole | null;
  /** id of what was noted of these days, where it was; null where nobody said so */
  readonly noted: string | null;
  /** days that the cap of a run looks at, and days from a heavy day to a run, by the rules of the clinic [d] */
  readonly window: number;
  readonly apart: number;
}

interface Ground {
  readonly visit: Visit;
  readonly given: GivenFacts;
  readonly guidance: Guidance;
  readonly today: string;
  readonly run: RunAdvice;
  /** rules that the cap of a run is held in */
  readonly capRules: readonly GuidanceRule[];
  /** what jumped before the complaint began */
  readonly story: readonly string[];
  readonly invented: string | null;
  /** pain up to which a run goes on, of 10 */
  readonly painLimit: number;
}

const words = ACTIVITY_WORDS;

function valueOf(given: GivenFacts, code: string): string | null {
  const fact = given.person[code];
  return fact === undefined || 'missing' in fact ? null : String(fact.value);
}

/** What holds for both legs; who is not running goes by a first run before what is kept of running. */
function togetherOf(about: ActivityCard['about'], { together }: Guidance): Together | undefined {
  const of = (which: Together['about']): Together | undefined => together.find((one) => one.about === which);
  return about === 'standing' ? of('standing') : (of('run-start') ?? of('running'));
}

/** The cap of a run, as it is proposed. */
function capsOf({ proposals }: Guidance): readonly Proposed[] {
  return proposals.filter((one) => one.about === 'run-cap');
}

/** Why nothing is proposed. */
function noneWords(about: ActivityCard['about'], { given, guidance }: Ground): string {
  if (about === 'standing') {
    return words[valueOf(given, 'job-on-feet') === 'no' ? 'not-standing' : 'standing-none'].text;
  }
  if (valueOf(given, 'runs') === 'no') return words['not-runner'].text;
  if (guidance.locked) return words.locked.text;
  return words[valueOf(given, 'running-now') === 'paused' ? 'begin-list' : 'running-none'].text;
}

function cardOf(about: ActivityCard['about'], ground: Ground): ActivityCard {
  const { guidance, visit, given, today, run, invented, painLimit } = ground;
  const found = togetherOf(about, guidance);
  const [leg = governingLegs(given)[0] ?? 'left'] = found?.legs ?? [];
  const proposed = guidance.proposals.find((one) => one.about === found?.about && one.leg === leg);
  const abouts: readonly string[] = about === 'standing' ? ['standing'] : ['running', 'run-start'];
  const blocked = guidance.blocked.filter(({ trace }) => trace.leg === leg && abouts.includes(trace.rule.about));
  const own: Guidance = { ...guidance, blocked };
  const missing = missingOf(given, leg);
  const isRunner = valueOf(given, 'runs') !== 'no';
  const asked = about === 'standing' ? ['job-on-feet'] : ['runs', ...(isRunner ? ['hills-asked'] : [])];
  const asks = activityAsks(given, visit, null, asked);
  const whyOf = (fired: readonly RuleTrace[], lacking: readonly RuleTrace[], sure: string): readonly WhyPart[] => {
    const parts = whyParts({
      leg,
      visitId: visit.id,
      guidance: own,
      fired,
      lacking,
      held: [],
      sure,
      missing,
      irritability: irritabilityInputLines(visit, leg),
    });
    const numbers = { title: words['why-numbers'].text, lines: runNumberLines(run.numbers) };
    return about === 'running' ? [...parts, numbers] : parts;
  };
  if (found === undefined || proposed === undefined) {
    const lacking = guidance.lacking.filter((one) => one.leg === leg && abouts.includes(one.rule.about));
    const sure = noneWords(about, ground);
    return {
      about,
      proposedBy: null,
      title: sure,
      standing: null,
      sure,
      also: lackingLines(lacking, missing),
      lines: [],
      asks,
      invented,
      why: whyOf([], lacking, sure),
    };
  }
  const { rule } = found;
  // in place of a pause, where nothing keeps from loading
  const instead =
    rule.code === 'running-high' && !guidance.locked
      ? guidance.proposals.filter((one) => one.about === 'running-instead' && one.leg === leg)
      : [];
  // what a run is long at most goes by the cap beside it, but for a pause
  const caps = about === 'running' && rule.code !== 'running-high' ? capsOf(guidance) : [];
  const open = [proposed.trace, ...proposed.notRuledOut].filter(({ held }) => held === 'cannot-tell');
  const sure = ADVICE_WORDS[found.standing].text;
  const isChosen = governingLegs(given).length > 1 && found.legs.length === 1;
  return {
    about,
    proposedBy: proposedByText(rule, leg, null),
    title: ruleWords(rule),
    standing: found.standing,
    sure,
    also: [
      ...instead.map((one) => ruleWords(one.rule)),
      ...editedLines([rule, ...caps.map((one) => one.rule)]),
      ...(isChosen ? [fill(words.governs, { leg: PLAN_WORDS[leg].text })] : []),
    ],
    lines: [rule, ...instead.map((one) => one.rule)].flatMap((one) =>
      activityLines(one, { visit, today, leg, run, painLimit }),
    ),
    asks,
    invented,
    why: whyOf([proposed.trace, ...[...instead, ...caps].map(({ trace }) => trace)], open, sure),
  };
}

/** Days of rest that hold now, and what stands against a run today. */
function recoveryLines({ guidance, given }: Ground): readonly string[] {
  const legs = governingLegs(given);
  const rests = guidance.proposals.filter(
    (one) => one.about === 'recovery' && one.leg !== null && legs.includes(one.leg),
  );
  const heavy = guidance.blocks.filter(
    ({ rule, leg, held }) => rule.code === 'impact-after-heavy' && leg !== null && legs.includes(leg) && held === 'yes',
  );
  const told = [
    ...rests.map(({ rule, mark }) => [rule, mark] as const),
    ...heavy.map(({ rule }) => [rule, rule.mark] as const),
  ];
  return [
    ...new Set(
      told.map(([rule, mark]) => fill(ADVICE_WORDS['beside-line'], { what: ruleWords(rule), mark: markWords(mark) })),
    ),
  ];
}

function partsOf(ground: Ground): readonly ActivityPart[] {
  const { run, guidance, given } = ground;
  if (guidance.locked || valueOf(given, 'runs') === 'no') return [];
  const isPaused = togetherOf('running', guidance)?.rule.code === 'running-high';
  // without a run that is kept, and nobody saying that it is paused, there is nothing that a next one could go on from
  const isKnown = run.standing.state !== 'not-known' || valueOf(given, 'running-now') === 'paused';
  // said with the cap itself, since the card may be about nothing else
  const ownCap = editedLines(ground.capRules);
  const parts: readonly ActivityPart[] = [
    { code: 'cap', title: words['cap-title'].text, lines: isPaused ? [] : [...capWords(run), ...ownCap] },
    { code: 'next', title: words['next-title'].text, lines: isPaused || !isKnown ? [] : nextWords(run) },
    { code: 'recovery', title: words['recovery-title'].text, lines: recoveryLines(ground) },
    { code: 'goal', title: words['race-title'].text, lines: isKnown ? goalWords(run) : [] },
    { code: 'story', title: words['story-title'].text, lines: ground.story },
  ];
  return parts.filter(({ lines }) => lines.length > 0);
}

/**
 * What is proposed in a visit for running, standing and the days between. Under a lock no run is.
 *
 * @param person - from the casebook [-]
 * @param visit - as it is now [-]
 * @param today - by the calendar of the place [-]
 * @param rules - as the clinic has them; as published when left out [-]
 * @returns see {@link Activity} [-]
 *
 * Source: ours; each rule has its own source
 */
export function activityFor(
  person: CasebookPerson,
  visit: Visit,
  today: string,
  rules: readonly GuidanceRule[] = GUIDANCE_RULES,
): Activity {
  const given = factsGiven(person, visit, today, rules);
  const numbers = numbersInUse(rules);
  const proposed = propose(given, rules, GUIDANCE_FACTS);
  const facts = planFacts(visit);
  const guidance = { ...proposed, locked: proposed.locked || facts.safetyLocked || facts.suddenLoss };
  const past = beforeVisit(person, visit);
  const run = runAdvice(past, visit, given, today, rules);
  const story = storyWords(past, today);
  const ground: Ground = {
    visit,
    given,
    guidance,
    today,
    run,
    capRules: rules.filter((one) => one.about === 'run-cap'),
    story,
    invented: inventedWords(person),
    painLimit: planPainLimit(visit, numbers),
  };
  const runs = valueOf(given, 'runs') !== 'no';
  const parts = partsOf(ground);
  const hasCap = parts.some(({ code }) => code === 'cap');
  const days = runsAsked(today, numbers.running.window.value);
  const noted = past.runsWhole.findLast(({ body }) => body.from === days.from && body.until === days.until);
  return {
    cards: [cardOf('running', ground), cardOf('standing', ground)],
    parts,
    asked: hasCap && ground.run.cap.unknownDays > 0 ? days : null,
    noted: hasCap ? (noted?.id ?? null) : null,
    lists: runs ? pointLists(given, visit.only === undefined ? LEGS : [visit.only], visit) : [],
    window: numbers.running.window.value,
    apart: daysApart(rules),
  };
}
