import type { Side } from '@surae/analysis';
import { RESULT_WORDS, SUMMARY_WORDS } from '@surae/shared';
import { html, nothing, type TemplateResult } from 'lit';
import type { Assessments, Awaited } from '../result/assessments.ts';
import { fill } from '../words/fill.ts';

type OfALeg = Awaited & { readonly choice: { readonly side: Side } };

/** That the report of a leg is being made, or why it could not be, with a button to try again. */
export function assessmentProgress<Tested extends OfALeg>(
  assessments: Assessments<Tested>,
  tested: Tested,
): TemplateResult | typeof nothing {
  const state = assessments.stateOf(tested);
  if (state === undefined) return nothing;
  const leg = SUMMARY_WORDS[tested.choice.side].text;
  if (state === 'running') return html`<p class="voice">${fill(RESULT_WORDS.assessing, { leg })}</p>`;
  const why = fill(RESULT_WORDS[state.code], { what: state.message });
  return html`<p class="voice">${fill(RESULT_WORDS['not-assessed'], { leg, why })}</p>
    <button type="button" @click=${() => void assessments.run(tested)}>${RESULT_WORDS['try-again'].text}</button>`;
}
