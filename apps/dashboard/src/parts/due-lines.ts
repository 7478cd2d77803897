import type { Due } from '@surae/casebook';
import { TODAY_WORDS } from '@surae/shared';
import { css, html, type TemplateResult } from 'lit';
import { dueLine } from '../journey/due-words.ts';

/** The hook of a pencil before what asks for something; a question mark before what cannot be told. */
export const dueStyle = css`
  .due {
    display: grid;
    gap: var(--gap-1);
    padding-block-start: var(--gap-2);
  }
  .due li {
    align-items: baseline;
    display: grid;
    gap: var(--gap-3);
    grid-template-columns: 1rem minmax(0, var(--line));
  }
  .due svg {
    block-size: 0.9rem;
    inline-size: 0.9rem;
    fill: none;
    stroke: var(--voice);
    stroke-linecap: round;
    stroke-linejoin: round;
    stroke-width: 2;
  }
  .due .mark {
    color: var(--voice);
    font-weight: 600;
    text-align: center;
  }
`;

/** What somebody asks for, each with its mark; nothing where there is nothing. */
export function dueLines(due: readonly Due[]): TemplateResult | null {
  if (due.length === 0) return null;
  return html`<ul class="due">
    ${due.map(dueLine).map(
      ({ text, isUnknown, source }) => html`<li>
        <span class="mark">
          ${
            isUnknown
              ? html`<span aria-hidden="true">?</span>`
              : html`<svg viewBox="0 0 14 14" aria-hidden="true"><path d="M1 3v5h11M9 4.5 12.5 8 9 11.5" /></svg>`
          }
        </span>
        <span>
          <span class="unseen">${TODAY_WORDS[isUnknown ? 'unknown' : 'asks'].text}</span>
          ${text} ${source === null ? null : html`<small class="quiet">${source}</small>`}
        </span>
      </li>`,
    )}
  </ul>`;
}
