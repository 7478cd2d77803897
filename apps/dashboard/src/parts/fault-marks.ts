import type { CriterionId } from '@surae/shared';
import { TEST_WORDS } from '@surae/shared';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import { base } from '../styles/base.ts';

/** Faults that a tester sees better than a sensor. */
const seen = ['knee', 'lean', 'hands', 'other-foot'] as const satisfies readonly CriterionId[];

/** One tap for each fault that the tester sees. */
@customElement('fault-marks')
export class FaultMarks extends LitElement {
  static override styles = [
    base,
    css`
      div {
        display: grid;
        gap: var(--gap-1);
        grid-template-columns: repeat(4, 1fr);
      }
      button {
        font-size: var(--size-1);
        line-height: 1.1;
        min-inline-size: 0;
        padding: var(--gap-1);
      }
    `,
  ];

  override render(): TemplateResult {
    return html`<div role="group" aria-label=${TEST_WORDS['fault-row'].text}>
      ${seen.map(
        (fault) =>
          html`<button
            type="button"
            @click=${() => this.dispatchEvent(new CustomEvent<CriterionId>('fault-seen', { detail: fault }))}
          >
            ${TEST_WORDS[fault].text}
          </button>`,
      )}
    </div>`;
  }
}
