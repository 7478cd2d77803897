import { type CasebookPerson, type PlanItem, planFacts, type Visit } from '@surae/casebook';
import {
  type Guidance,
  LEGS,
  type Leg,
  type LineHeldBack,
  numbersInUse,
  type Proposed,
  propose,
  type RuleTrace,
} from '@surae/guidance';
import {
  ADVICE_WORDS,
  EXERCISE_WORDS,
  GUIDANCE_FACTS,
  GUIDANCE_RULES,
  GUIDANCE_SETTLED_BY,
  type GuidanceRule,
} from '@surae/shared';
import { planPainLimit } from '../plan/plan-draft.ts';
import { fill } from '../words/fill.ts';
import { type AdviceLines, changeLines, type LinesGround, levelLines } from './advice-lines.ts';
import { type AdviceOption, optionsOf } from './advice-options.ts';
import { asOtherLeg } from './both-legs.ts';
import { type AskGround, asksFor, asksUnderLock, type FactAsk } from './fact-asks.ts';
import { beforeVisit, factsGiven } from './facts-given.ts';
import { missingOf } from './given-fact.ts';
import { inventedWords } from './invented-words.ts';
import { irritabilityInputLines } from './irritability-words.ts';
import { levelNow } from './programme-given.ts';
import { proposedByText } from './proposed-by.ts';
import { editedLines, lackingLines, markWords, ruleWords, type WhyPart, whyParts } from './why-words.ts';

/** What is proposed for a leg, or why nothing is. */
export interface AdviceCard {
  readonly leg: Leg;
  /** as it is kept with a line, and with an answer that declines it; null where nothing is proposed */
  readonly proposedBy: string | null;
  readonly title: string;
  readonly standing: Proposed['standing'] | null;
  /** how sure, in words */
  readonly sure: string;
  /** what else is said of it, such as how its load is found */
  readonly also: readonly string[];
  readonly lines: readonly PlanItem[];
  /** why it has no lines; null where it has */
  readonly none: string | null;
  /** what is asked, looked at or tried beside it, with how well each is supported */
  readonly beside: readonly string[];
  /** programmes that fit beside it, each to take instead */
  readonly options: readonly AdviceOption[];
  /** what a tap would settle, and what was told already */
  readonly asks: readonly FactAsk[];
  /** that it goes by rules of this clinic's own, and what is published; empty where it does not */
  readonly edited: readonly string[];
  /** that it is of an invented person, whose sets are simulated; null of anybody else */
  readonly invented: string | null;
  readonly why: readonly WhyPart[];
}

/** Everything that is proposed in a visit. */
export interface Advice {
  /** what comes next where nothing that loads is proposed; empty where nothing keeps from it */
  readonly nextSteps: readonly string[];
  readonly cards: readonly AdviceCard[];
  /** what is asked or looked at whichever leg it is */
  readonly beside: readonly string[];
  /** what a tap would settle of the person; under a lock also of a leg that it rests on */
  readonly asks: readonly FactAsk[];
}

function heldWords({ held, ofOtherLeg }: AdviceLines): readonly string[] {
  const name = (exercise: string): string => EXERCISE_WORDS[exercise as keyof typeof EXERCISE_WORDS].text;
  return [
    ...held.map(({ line, by }: LineHeldBack) =>
      fill(ADVICE_WORDS['held-line'], {
        what: name(line.exercise),
        by: [...new Set(by.map(({ rule }) => ruleWords(rule)))].join(' '),
      }),
    ),
    ...ofOtherLeg.map(({ exercise }) => fill(ADVICE_WORDS['two-leg'], { what: name(exercise) })),
  ];
}

function of(guidance: Guidance, about: Proposed['about'], leg: Leg): Proposed | undefined {
  return guidance.proposals.find((one) => one.about === about && one.leg === leg);
}

/**
 * What is asked, looked at or tried: of a leg, or of the person. What rests on no answer at all is not told, nor what stands among the
 * other ways with its lines.
 */
function besideOf({ proposals }: Guidance, leg: Leg | null, way: string | null = null): readonly string[] {
  const told = proposals.filter(
    (one) =>
      one.leg === leg &&
      (one.about === 'prompt' || one.about === 'rung') &&
      one.trace.used.length > 0 &&
      one.rule.code !== way,
  );
  return told.map(({ rule, mark }) =>
    fill(ADVICE_WORDS['beside-line'], { what: ruleWords(rule), mark: markWords(mark) }),
  );
}

/** A card for a leg with nothing proposed: what is lacking, or that nothing holds. */
function openCard(leg: Leg, isBegun: boolean, ground: LinesGround, asks: AdviceCard['asks']): AdviceCard {
  const { guidance, visit, given, past } = ground;
  const about = isBegun ? 'step' : 'start-level';
  const lacking = guidance.lacking.filter((one) => one.leg === leg && one.rule.about === about);
  const missing = missingOf(given, leg);
  const isSimulated = !isBegun && missing('valid-raises') === 'simulated';
  const code = isSimulated ? 'nothing-simulated' : lacking.length > 0 ? 'nothing' : 'nothing-holds';
  const sure = ADVICE_WORDS[code].text;
  const irritability = irritabilityInputLines(visit, leg);
  const visitId = visit.id;
  const why = whyParts({ leg, visitId, guidance, fired: [], lacking, held: [], sure, missing, irritability });
  return {
    leg,
    proposedBy: null,
    title: sure,
    standing: null,
    sure,
    also: lackingLines(lacking, missing),
    lines: [],
    none: null,
    beside: besideOf(guidance, leg),
    options: optionsOf(leg, [], ground),
    asks,
    edited: [],
    invented: inventedWords(past),
    why,
  };
}

function cardOf(proposed: Proposed, leg: Leg, ground: LinesGround, asks: AdviceCard['asks']): AdviceCard {
  const { guidance, visit, past, today, given } = ground;
  const { rule, trace, notRuledOut } = proposed;
  const isStart = proposed.about === 'start-level';
  const lines = isStart ? levelLines(rule.proposes.code, rule, leg, ground) : changeLines(rule, leg, ground);
  const beside = (['load', 'pain-limit', 'range'] as const).flatMap((about) => of(guidance, about, leg) ?? []);
  const basis = proposed.about === 'change' ? [of(guidance, 'step', leg)].flatMap((one) => one ?? []) : beside;
  const fired = [trace, ...basis.map((one) => one.trace)];
  const load = isStart ? of(guidance, 'load', leg) : undefined;
  const week = isStart ? undefined : of(guidance, 'week', leg);
  // what lies between two levels waits too, though no rule of a lower rank is open
  const open: readonly RuleTrace[] = [trace, ...notRuledOut].filter(({ held }) => held === 'cannot-tell');
  const sure = ADVICE_WORDS[proposed.standing].text;
  return {
    leg,
    proposedBy: proposedByText(rule, leg, isStart ? rule.proposes.code : levelNow(past, leg, today)),
    title: ruleWords(rule),
    standing: proposed.standing,
    sure,
    also: [load, week].flatMap((one) => (one === undefined ? [] : [ruleWords(one.rule)])),
    lines: lines.lines,
    none: rule.code === 'step-ask' || lines.none === null ? null : ADVICE_WORDS[lines.none].text,
    beside: besideOf(guidance, leg),
    options: optionsOf(leg, lines.lines, ground),
    asks,
    edited: editedLines([...fired, ...open].map((one) => one.rule)),
    invented: inventedWords(past),
    why: whyParts({
      leg,
      visitId: visit.id,
      guidance,
      fired,
      lacking: open,
      held: heldWords(lines),
      sure,
      missing: missingOf(given, leg),
      irritability: irritabilityInputLines(visit, leg),
    }),
  };
}

/** The next step of each lock that holds; where the list was not gone through, that it is to be. */
function nextSteps(guidance: Guidance, isLocked: boolean): readonly string[] {
  if (!guidance.locked && !isLocked) return [];
  const locks = guidance.blocks.filter(({ rule }) => rule.proposes.blocks?.includes('loading') === true);
  const holding = locks.filter(({ held }) => held === 'yes').map(({ rule }) => ruleWords(rule));
  const isOpen = locks.some(({ held }) => held !== 'yes') || holding.length === 0;
  return [...new Set([...holding, ...(isOpen ? [GUIDANCE_SETTLED_BY.line.text] : [])])];
}

/** Legs that are shown, the left one at the left; of a visit of one leg that one alone. */
function legsShown({ only }: Visit): readonly Leg[] {
  return only === undefined ? LEGS : [only];
}

/**
 * What is proposed in a visit. Under a lock nothing that loads is, and the next step stands in its place.
 *
 * @param person - from the casebook [-]
 * @param visit - as it is now [-]
 * @param today - by the calendar of the place [-]
 * @param rules - as the clinic has them; as published when left out [-]
 * @param isAsked - whether what a tap would settle is found out, which takes many looks at the rules [-]
 * @returns cards, none under a lock, and the next steps there [-]
 *
 * Source: ours; each rule has its own source
 */
export function adviceFor(
  person: CasebookPerson,
  visit: Visit,
  today: string,
  rules: readonly GuidanceRule[] = GUIDANCE_RULES,
  isAsked = true,
): Advice {
  const given = factsGiven(person, visit, today, rules);
  const guidance = propose(given, rules, GUIDANCE_FACTS);
  const facts = planFacts(visit);
  const asked: AskGround = { given, rules, visit };
  const next = nextSteps(guidance, facts.safetyLocked || facts.suddenLoss);
  if (next.length > 0)
    return { nextSteps: next, cards: [], beside: [], asks: isAsked ? asksUnderLock(asked, guidance) : [] };
  const past = beforeVisit(person, visit);
  const asksOf = (leg: Leg | null): AdviceCard['asks'] => (isAsked ? asksFor(asked, guidance, leg) : []);
  const groundOf = (leg: Leg): LinesGround => {
    const raises = given.legs[leg]['valid-raises'];
    return {
      visit,
      past,
      given,
      guidance,
      today,
      painLimit: planPainLimit(visit, numbersInUse(rules)),
      raises: raises !== undefined && 'value' in raises ? Number(raises.value) : null,
    };
  };
  const own = legsShown(visit).map((leg): AdviceCard => {
    const begun = given.legs[leg]['programme-begun'];
    const isBegun = begun !== undefined && 'value' in begun && begun.value === 'yes';
    const ground = groundOf(leg);
    const proposed = isBegun
      ? (of(guidance, 'change', leg) ?? of(guidance, 'step', leg))
      : of(guidance, 'start-level', leg);
    const asks = asksOf(leg);
    return proposed === undefined ? openCard(leg, isBegun, ground, asks) : cardOf(proposed, leg, ground, asks);
  });
  // a leg that is not sore can do what the sore one does
  const cards = own.map((card): AdviceCard => {
    const other = own.find(({ leg }) => leg !== card.leg);
    const same = other === undefined ? undefined : asOtherLeg(card.leg, other, groundOf(card.leg));
    if (same === undefined) return card;
    return { ...card, options: [same, ...card.options], beside: besideOf(guidance, card.leg, same.code) };
  });
  return { nextSteps: [], cards, beside: besideOf(guidance, null), asks: asksOf(null) };
}
