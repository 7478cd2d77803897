import type { Side } from '@surae/analysis';
import { COURSE_WORDS, KNEE_TO_WALL_SCALES, LOG_WORDS, REACH_WORDS } from '@surae/shared';
import { html, nothing, type TemplateResult } from 'lit';
import { beginOf, inUnit, type ReachDraft, type ReachProblems } from '../course/reach-draft.ts';
import { reachValue } from '../course/reach-words.ts';
import { fill } from '../words/fill.ts';
import type { ChipChosen } from './chip-choice.ts';
import './chip-choice.ts';
import type { ScaleChosen } from './number-scale.ts';
import './number-scale.ts';
import type { Stepped } from './reach-stepper.ts';
import './reach-stepper.ts';

const sides = (['left', 'right'] as const).map((value) => ({ value, text: COURSE_WORDS[value].text }));
const units = (['cm', 'deg'] as const).map((value) => ({ value, text: REACH_WORDS[`unit-${value}`].text }));
/** Whether it was done: yes first, then the reasons against it. */
const done = (['open', 'sore-insertion', 'pain', 'other'] as const).map((value) => ({
  value,
  text: REACH_WORDS[`skipped-${value}`].text,
}));

function trials(draft: ReachDraft, set: (draft: ReachDraft) => void): readonly TemplateResult[] {
  const { unit } = draft;
  const { step, stride, most } = KNEE_TO_WALL_SCALES[unit];
  return draft.trials.map(
    (value, at) =>
      html`<reach-stepper
        legend=${fill(REACH_WORDS.trial, { number: at + 1 })}
        .value=${value}
        .begin=${beginOf(draft, at)}
        .step=${step.value}
        .stride=${stride.value}
        .most=${most.value}
        .told=${(one: number) => reachValue(one, unit)}
        @stepped=${({ detail }: Stepped) => set({ ...draft, trials: draft.trials.with(at, detail) })}
      ></reach-stepper>`,
  );
}

/** The questions about a knee-to-wall test, none of which is typed; `sore` are the legs that are sore at the heel bone. */
export function reachFields(
  draft: ReachDraft,
  problems: ReachProblems,
  sore: readonly Side[],
  set: (draft: ReachDraft) => void,
): TemplateResult {
  const words = REACH_WORDS;
  const problem = (name: keyof ReachProblems): TemplateResult => {
    const code = problems[name];
    return html`<p class="voice problem" aria-live="polite">${code === undefined ? '' : words[code].text}</p>`;
  };
  return html`
    <div id="reachSide" tabindex="-1">
      <p class="quiet">${words.how.text}</p>
      <chip-choice
        legend=${words['which-side'].text}
        .chips=${sides}
        .value=${draft.side}
        @chip-chosen=${({ detail }: ChipChosen) => set({ ...draft, side: detail as Side })}
      ></chip-choice>
      ${problem('reachSide')}
      ${
        draft.side !== null && sore.includes(draft.side)
          ? html`<p class="voice">${words['sore-insertion-note'].text}</p>`
          : nothing
      }
    </div>
    <div id="trials" tabindex="-1">
      <chip-choice
        legend=${words['was-done'].text}
        .chips=${done}
        .value=${draft.skipped ?? 'open'}
        @chip-chosen=${({ detail }: ChipChosen) =>
          set({ ...draft, skipped: detail === 'open' ? null : (detail as ReachDraft['skipped']) })}
      ></chip-choice>
      ${problem('trials')}
    </div>
    ${
      draft.skipped === null
        ? html`<chip-choice
              legend=${words['which-unit'].text}
              .chips=${units}
              .value=${draft.unit}
              @chip-chosen=${({ detail }: ChipChosen) => set(inUnit(draft, detail as ReachDraft['unit']))}
            ></chip-choice>
            ${trials(draft, set)}`
        : nothing
    }
    <number-scale
      legend=${words.pain.text}
      low=${LOG_WORDS['low-pain'].text}
      high=${LOG_WORDS['high-pain'].text}
      open=${LOG_WORDS['not-told'].text}
      .value=${draft.pain}
      @scale-chosen=${({ detail }: ScaleChosen) => set({ ...draft, pain: detail })}
    ></number-scale>
  `;
}
