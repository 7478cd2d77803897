import type { Verdict } from '@surae/analysis';
import { html, type SVGTemplateResult, svg, type TemplateResult } from 'lit';

/** A stroke for what met the rules, a cross for what did not, a question for what nobody can tell. */
const marks: Readonly<Record<Verdict, SVGTemplateResult>> = {
  yes: svg`<path d="M8 3V21" />`,
  no: svg`<path d="M3 6 13 18M13 6 3 18" />`,
  cannot_tell: svg`<path class="voice" d="M4.5 8.5C4.5 5.5 6 4 8.2 4S12 5.4 12 7.4C12 10.4 8.2 10.6 8.2 14.5M8.2 19V20.6" />`,
};

/** The mark of a verdict, for whoever sees; its words stand beside it. */
export function verdictMark(verdict: Verdict): TemplateResult {
  return html`<svg viewBox="0 0 16 24" aria-hidden="true">${marks[verdict]}</svg>`;
}
