import { html, type TemplateResult } from 'lit';

/** One of several that one is chosen of, in a row of its own. */
export function radioOption(name: string, title: string, isChosen: boolean, choose: () => void): TemplateResult {
  return html`<label class="option">
    <input type="radio" name=${name} .checked=${isChosen} @change=${choose} />
    <span>${title}</span>
  </label>`;
}
