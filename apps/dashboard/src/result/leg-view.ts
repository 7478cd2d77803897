import type { EnduranceInput, Irritability, IrritabilityInput, LegFinding, PainInput } from '@surae/analysis';
import { COMPARISON_RULES, FINDING_INPUT_NAMES, LEG_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';

type Input = EnduranceInput | PainInput | IrritabilityInput;

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

/** What the count stands for with regard to pain, and whether pain stayed within its limits. */
export function painWords(pain: LegFinding['pain']): readonly string[] {
  const { toleratedRepetitions, withinLimit, riseWithin, limit, missing } = pain;
  const most = COMPARISON_RULES.painRiseMost.value;
  const within = fill(LEG_WORDS[`pain-${withinLimit}`], { limit });
  return [
    ...(toleratedRepetitions === null ? [] : [fill(LEG_WORDS.tolerated, { count: toleratedRepetitions })]),
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

/** What effort, pain and irritability say about one set: what its count stands for first, then a sentence each. */
export function legView(
  { effort, pain, irritability }: LegFinding,
  sore: boolean | null,
): { readonly lead: string; readonly lines: readonly string[] } {
  const [first, ...others] = painWords(pain);
  const tolerated = pain.toleratedRepetitions !== null && first !== undefined;
  const lead = tolerated ? first : effortWords(effort);
  const rest = tolerated ? [effortWords(effort), ...others] : painWords(pain);
  return { lead, lines: [...rest, irritabilityWords(irritability, sore)] };
}
