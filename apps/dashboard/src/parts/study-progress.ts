import { STUDY_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { StudyProgress as Progress } from '../study/study-session.ts';
import { base } from '../styles/base.ts';
import { fixed } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';

/** How far assessing has come, with what stops it and goes on. Tells `assess-stop` and `assess-go`. */
@customElement('study-progress')
export class StudyProgress extends LitElement {
  static override styles = [
    base,
    css`
      div {
        align-items: center;
        display: flex;
        flex-wrap: wrap;
        gap: var(--gap-3) var(--gap-4);
        margin-block-end: var(--gap-4);
      }
      progress {
        accent-color: var(--voice);
        flex: 1 1 12rem;
      }
      p {
        margin: 0;
      }
    `,
  ];

  @property({ attribute: false }) progress!: Progress;

  override render(): TemplateResult | typeof nothing {
    const words = STUDY_WORDS;
    const { done, of, perS, runs } = this.progress;
    if (!runs && done === of) return nothing;
    const told = { done, of };
    const line = !runs
      ? fill(words.stopped, told)
      : perS === null
        ? fill(words['assessing-first'], told)
        : fill(words.assessing, { ...told, rate: fixed(perS, 1) });
    const ask = runs ? 'assess-stop' : 'assess-go';
    return html`<div>
      <progress aria-label=${line} max=${of} value=${done}></progress>
      <p>${line}</p>
      <button type="button" @click=${() => this.dispatchEvent(new CustomEvent(ask))}>
        ${(runs ? words.stop : words['go-on']).text}
      </button>
    </div>`;
  }
}
