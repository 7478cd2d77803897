import type { Side } from '@surae/analysis';
import { PULL_WORDS } from '@surae/shared';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { base } from '../styles/base.ts';
import { SpaceKey } from './space-key.ts';

const steps = ['step-1', 'step-2', 'step-3'] as const;

/** Three pushes by feel before the trials. Tells `warm-up`: done or left out. */
@customElement('pull-warm-up')
export class PullWarmUp extends LitElement {
  static override styles = [
    base,
    css`
      ol {
        border-block-start: 1px solid var(--hairline);
        font-size: var(--size-3);
        list-style: none;
        margin-block: var(--gap-6);
        max-inline-size: 44rem;
        padding: 0;
      }
      li {
        align-items: baseline;
        border-block-end: 1px solid var(--hairline);
        display: flex;
        gap: var(--gap-4);
        padding-block: var(--gap-3);
      }
      li span {
        font-size: var(--size-1);
      }
    `,
  ];

  @property({ attribute: false }) side!: Side;
  protected readonly space = new SpaceKey(this, () => this.tell('done'));

  protected override firstUpdated(): void {
    this.renderRoot.querySelector('h1')?.focus();
  }

  private tell(how: 'done' | 'left-out'): void {
    this.dispatchEvent(new CustomEvent('warm-up', { detail: how }));
  }

  override render(): TemplateResult {
    return html`
      <h1 tabindex="-1">
        <span class="side" data-side=${this.side}>${PULL_WORDS[`title-${this.side}`].text}:</span> ${PULL_WORDS['warm-up'].text}
      </h1>
      <p>${PULL_WORDS['warm-up-explain'].text}</p>
      <ol>
        ${steps.map((step, i) => html`<li><span class="quiet">${i + 1}</span>${PULL_WORDS[step].text}</li>`)}
      </ol>
      <p>${PULL_WORDS.breathe.text}</p>
      <div class="column">
        <button class="main" type="button" @click=${() => this.tell('done')}>${PULL_WORDS['warm-up-done'].text}</button>
        <button class="plain" type="button" @click=${() => this.tell('left-out')}>
          ${PULL_WORDS['warm-up-left-out'].text}
        </button>
      </div>
    `;
  }
}
