import type { DescriptionEntry } from '@surae/casebook';
import { SENSOR_WORDS } from '@surae/shared';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { ruledListStyle } from './ruled-list-style.ts';

/** Told with the id of a description that is not to be used any more. */
export type DescriptionTakenBack = CustomEvent<string>;

/** The descriptions that are in use, each with its ways on. Tells `description-taken-back`. */
@customElement('description-list')
export class DescriptionList extends LitElement {
  static override styles = [
    base,
    ruledListStyle,
    css`
      li {
        padding-block: var(--gap-3);
      }
      .choices {
        gap: var(--gap-2) var(--gap-6);
        margin-block-start: var(--gap-2);
      }
      button.plain {
        padding-inline: 0;
        text-align: start;
      }
      h3,
      p {
        margin: 0;
      }
    `,
  ];

  @property({ attribute: false }) entries: readonly DescriptionEntry[] = [];

  override render(): TemplateResult {
    return html`<ul>
      ${this.entries.map((entry) => this.entry(entry))}
    </ul>`;
  }

  private entry({ id, name, at, json }: DescriptionEntry): TemplateResult {
    const words = SENSOR_WORDS;
    const { link } = json as { readonly link?: { readonly kind?: string } };
    const route = words[link?.kind === 'serial' ? 'by-serial' : 'by-bluetooth'].text;
    return html`<li>
      <div>
        <h3>${name}</h3>
        <p class="quiet">${fill(words['kept-line'], { route, day: dayOf(at) })}</p>
      </div>
      <div class="choices">
        <a
          class="button"
          href=${hashOf({ page: 'describe', descriptionId: id })}
          aria-label=${fill(words['change-of'], { name })}
          >${words.change.text}</a
        >
        <button
          class="plain"
          type="button"
          aria-label=${fill(words['take-back-of'], { name })}
          @click=${() => this.dispatchEvent(new CustomEvent('description-taken-back', { detail: id }))}
        >
          ${words['take-back'].text}
        </button>
      </div>
    </li>`;
  }
}
