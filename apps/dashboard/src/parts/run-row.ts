import { HAND_WORDS, TEST_WORDS } from '@surae/shared';
import { html, nothing, type TemplateResult } from 'lit';
import { fill } from '../words/fill.ts';

/** The buttons under the faults and the pain of a running set. */
export interface RunRow {
  readonly prompts: number;
  readonly prompt: () => void;
  /** none where nobody counts by hand */
  readonly takeBack: (() => void) | undefined;
  /** none where no beat is heard */
  readonly turnSound: (() => void) | undefined;
  readonly isMuted: boolean;
}

/** Prompts given, the sound of the beat, and the last tap taken back: each where there is such a thing. */
export function runRow({ prompts, prompt, takeBack, turnSound, isMuted }: RunRow): TemplateResult {
  return html`<div class="row">
    ${takeBack === undefined ? nothing : html`<button type="button" @click=${takeBack}>${HAND_WORDS.back.text}</button>`}
    <button type="button" aria-label=${fill(TEST_WORDS['prompts-label'], { used: prompts })} @click=${prompt}>
      ${fill(TEST_WORDS.prompts, { used: prompts })}
    </button>
    ${
      turnSound === undefined
        ? nothing
        : html`<button type="button" aria-pressed=${isMuted} @click=${turnSound}>${TEST_WORDS.mute.text}</button>`
    }
  </div>`;
}
