import type {
  EnduranceInput,
  Irritability,
  IrritabilityInput,
  IsometricInput,
  LegFinding,
  PainFinding,
  PainInput,
  PullFinding,
} from '@surae/analysis';
import {
  COMPARISON_RULES,
  FINDING_INPUT_NAMES,
  LEG_WORDS,
  PULL_EFFORT_SENTENCES,
  PULL_QUALITY_SENTENCES,
} from '@surae/shared';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import type { ValueWords } from './value-words.ts';

type Input = EnduranceInput | IsometricInput | PainInput | IrritabilityInput;

function inputWords(inputs: readonly Input[]): string {
  return inputs.map((input) => FINDING_INPUT_NAMES[input].text).join(', ');
}

function missingWords(inputs: readonly Input[]): string {
  return inputs.length === 0 ? '' : ` ${fill(LEG_WORDS.missing, { what: inputWords(inputs) })}`;
}

/** How full the effort was, neutrally. */
export function effortWords({ good, reason, signs, missing }: LegFinding['effort']): string {
  switch (good) {
    case 'yes':
      return fill(LEG_WORDS['effort-yes'], { signs: signs.map((sign) => LEG_WORDS[sign].text).join(', ') });
    case 'no':
      return LEG_WORDS[reason === 'stopped-before-signs-of-fatigue' ? 'effort-early' : 'effort-other'].text;
    case 'cannot_tell':
      return `${LEG_WORDS['effort-cannot_tell'].text}${missingWords(missing)}`;
  }
}

/** Whether the trials of a hold show a maximum, and why not; empty where the protocol asks for none. */
export function maximumWords(effort: PullFinding['effort']): readonly string[] {
  if (effort === null) return [];
  const why = effort.reasons.map((reason) => PULL_EFFORT_SENTENCES[reason].text);
  return [[PULL_QUALITY_SENTENCES[effort.good].text, ...why].join(' ')];
}

/** What was tolerated where pain ended a test, and whether pain stayed within its limits; null is nothing tolerated. */
export function painWords(pain: PainFinding, tolerated: string | null): readonly string[] {
  const { withinLimit, riseWithin, limit, missing } = pain;
  const most = COMPARISON_RULES.painRiseMost.value;
  const within = fill(LEG_WORDS[`pain-${withinLimit}`], { limit });
  return [
    ...(tolerated === null ? [] : [fill(LEG_WORDS.tolerated, { count: tolerated })]),
    withinLimit === 'cannot_tell' ? `${within}${missingWords(missing)}` : within,
    ...(riseWithin === 'no' ? [fill(LEG_WORDS['rise-no'], { most })] : []),
  ];
}

/** How irritable the tendon is, with what decides it; a leg that is not sore is not graded. */
export function irritabilityWords({ grade, decidedBy, missing }: Irritability, sore: boolean | null): string {
  if (sore === false) return LEG_WORDS['not-sore'].text;
  if (grade === null) return `${LEG_WORDS['not-graded'].text}${missingWords(missing)}`;
  return fill(LEG_WORDS[`grade-${grade}`], { inputs: inputWords(decidedBy) });
}

/** An answer first, and a sentence for each of the rest. */
export interface LegSentences {
  readonly lead: string;
  readonly lines: readonly string[];
}

/** What was tolerated stands first where pain ended the test, else how full the effort was. */
function told(
  effort: readonly string[],
  { pain, irritability }: Pick<LegFinding, 'pain' | 'irritability'>,
  tolerated: string | null,
  sore: boolean | null,
): LegSentences {
  const pains = painWords(pain, tolerated);
  const ordered = tolerated === null ? [...effort, ...pains] : [...pains.slice(0, 1), ...effort, ...pains.slice(1)];
  const [lead = '', ...lines] = ordered;
  return { lead, lines: [...lines, irritabilityWords(irritability, sore)] };
}

/** What effort, pain and irritability say about one set of raises, and what would tell more. */
export function legView(finding: LegFinding, sore: boolean | null, isCapped = false): LegSentences {
  const { toleratedRepetitions } = finding.pain;
  const tolerated = toleratedRepetitions === null ? null : String(toleratedRepetitions);
  const { lead, lines } = told([effortWords(finding.effort)], finding, tolerated, sore);
  const next = [
    ...(tolerated === null ? [] : [LEG_WORDS['follow-pain'].text]),
    ...(isCapped ? [LEG_WORDS.capped.text] : []),
  ];
  return { lead, lines: [...lines, ...next] };
}

/** The same about the pushes of one leg: what pain ended is told as the force that was tolerated. */
export function pullLegView(finding: PullFinding, sore: boolean | null, words: ValueWords): LegSentences {
  const { value } = finding.value;
  const isTolerated = finding.pain.countShows === 'tolerated' && value !== null;
  const tolerated = isTolerated ? `${decimal(value, words.decimals)} ${words.unit}` : null;
  return told(maximumWords(finding.effort), finding, tolerated, sore);
}
