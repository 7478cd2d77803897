import { REST_WORDS } from '@surae/shared';
import { html, type TemplateResult } from 'lit';
import { minutesAndSeconds } from '../journey/rest-news.ts';
import { fill } from '../words/fill.ts';

/** What is left of a rest of a usual length, in large print; where it is not known since when, that is said instead [s]. */
export function restTime(leftS: number | undefined, wholeS: number): TemplateResult {
  if (leftS === undefined) return html`<p class="voice">${REST_WORDS['no-stop-time'].text}</p>`;
  const left = minutesAndSeconds(leftS);
  // some screen readers say of a timer its name and not its text
  return html`<p class="left" role="timer" aria-live="off" aria-label=${left}>${left}</p>
    <p class="quiet">${fill(REST_WORDS.left, { whole: minutesAndSeconds(wholeS) })}</p>`;
}
