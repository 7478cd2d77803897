import { COURSE_WORDS, QUESTIONNAIRES, TOTAL_WORDS } from '@surae/shared';
import { html, nothing, type TemplateResult } from 'lit';
import { questionnaireOf, type TotalDraft, type TotalProblems } from '../course/total-draft.ts';
import { rangeWords } from '../course/total-words.ts';
import { fill } from '../words/fill.ts';
import type { ChipChosen } from './chip-choice.ts';
import './chip-choice.ts';

const sides = (['left', 'right'] as const).map((value) => ({ value, text: COURSE_WORDS[value].text }));

/** Questionnaires to choose from: those that are known, and one that somebody wrote down elsewhere. */
function chips(chosen: string): readonly { readonly value: string; readonly text: string }[] {
  const known = QUESTIONNAIRES.map(({ id, name }) => ({ value: id, text: name }));
  return chosen === '' || questionnaireOf(chosen) !== undefined ? known : [...known, { value: chosen, text: chosen }];
}

function problemWords(name: keyof TotalProblems, { questionnaire }: TotalDraft, problems: TotalProblems): string {
  const code = problems[name];
  if (code === undefined) return '';
  const [least, most] = questionnaireOf(questionnaire)?.range ?? [0, 0];
  return code === 'total-range' ? fill(TOTAL_WORDS[code], { least, most }) : TOTAL_WORDS[code].text;
}

/** The questions about a total, in a form that has the style of fields; `set` takes what was answered. */
export function totalFields(
  draft: TotalDraft,
  problems: TotalProblems,
  set: (change: Partial<TotalDraft>) => void,
): TemplateResult {
  const words = TOTAL_WORDS;
  const known = questionnaireOf(draft.questionnaire);
  const problem = (name: keyof TotalProblems): TemplateResult =>
    html`<p id="${name}-problem" class="voice problem" aria-live="polite">${problemWords(name, draft, problems)}</p>`;
  const field = (name: 'total' | 'languageVersion', label: string, mode: string | typeof nothing): TemplateResult =>
    html`<label for=${name}>${label}</label>
      <input
        id=${name}
        autocomplete="off"
        maxlength="40"
        inputmode=${mode}
        aria-describedby="${name}-problem"
        aria-invalid=${problems[name] === undefined ? nothing : 'true'}
        .value=${draft[name]}
        @input=${(event: InputEvent) => set({ [name]: (event.target as HTMLInputElement).value })}
      />
      ${problem(name)}`;
  return html`
    <div id="questionnaire" tabindex="-1">
      <chip-choice
        legend=${words['which-one'].text}
        .chips=${chips(draft.questionnaire)}
        .value=${draft.questionnaire === '' ? null : draft.questionnaire}
        @chip-chosen=${({ detail }: ChipChosen) => set({ questionnaire: detail })}
      ></chip-choice>
      ${problem('questionnaire')}
      <p class="quiet">${words['only-the-total'].text}</p>
    </div>
    <div>
      ${field('total', words['total-field'].text, 'decimal')}
      ${known === undefined ? nothing : html`<p class="quiet">${rangeWords(known)}</p>`}
    </div>
    <div class="what">${field('languageVersion', words['version-field'].text, nothing)}</div>
    <chip-choice
      legend=${words['which-side'].text}
      open=${words['no-side'].text}
      .chips=${sides}
      .value=${draft.side}
      @chip-chosen=${({ detail }: ChipChosen<TotalDraft['side']>) => set({ side: detail })}
    ></chip-choice>
  `;
}
