import { HAND_WORDS, TEST_WORDS } from '@surae/shared';
import { html, nothing, type TemplateResult } from 'lit';
import type { SetPlan } from '../live/set-plan.ts';
import { entryWords } from '../words/entry-words.ts';
import { fill } from '../words/fill.ts';
import './beat-pendulum.ts';

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

/** What needs the eyes of the tester now, and what was kept last. */
export function toldRow(lines: readonly string[], lastKept: string): TemplateResult {
  return html`<div class="notes" role="status">
    ${lines.map((line) => html`<p class="voice">${line}</p>`)}
    <p class="quiet">${lastKept}</p>
  </div>`;
}

/** Which leg is tested, and how. */
export function runHead({ choice, protocol }: SetPlan): TemplateResult {
  return html`<h1 class="head" tabindex="-1">
    <span class="side" data-side=${choice.side}>${TEST_WORDS[choice.side].text}</span><span class="unseen">: </span>
    <span class="quiet">${entryWords(protocol, 'title')}</span>
  </h1>`;
}

/** The beat as it is seen, where there is one. */
export function pendulum({ beatsPerMinute }: SetPlan, sinceMs: number): TemplateResult | typeof nothing {
  if (beatsPerMinute === null) return nothing;
  return html`<beat-pendulum .beatsPerMinute=${beatsPerMinute} .sinceMs=${sinceMs}></beat-pendulum>`;
}
