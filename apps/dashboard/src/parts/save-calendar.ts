import type { Handout } from '@surae/exchange';
import { CALENDAR_LIMITS, CALENDAR_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { planCalendar } from '../calendar/plan-events.ts';
import { planName } from '../plan/plan-words.ts';
import { saveFile } from '../result/save-file.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** A file was handed over; tells how many places of the plan it may have filled. */
export type CalendarSaved = CustomEvent<number>;

/** One button that hands the plan over as a file for a calendar, and says what is in it. Tells `calendar-saved`. */
@customElement('save-calendar')
export class SaveCalendar extends LitElement {
  static override styles = [
    base,
    css`
      button {
        inline-size: 100%;
      }
      p {
        margin-block: var(--gap-2) 0;
        max-inline-size: 66ch;
      }
    `,
  ];

  @property({ attribute: false }) handout!: Handout;
  /** the day here, and now [ms] */
  @property() day = '';
  /** places of the plan that an earlier file may have filled */
  @property({ type: Number }) places = 0;
  @state() private notMade = false;

  override render(): TemplateResult {
    const words = CALENDAR_WORDS;
    const { events, leftOut, isOpen } = planCalendar(this.handout, this.day, this.places);
    const what = leftOut.map(planName).join(', ');
    return html`
      <button type="button" @click=${() => void this.save()}>${words.save.text}</button>
      <p class="quiet">${words.explain.text}</p>
      <p class="quiet">${words['not-known'].text}</p>
      ${isOpen ? html`<p class="quiet">${fill(words.open, { days: CALENDAR_LIMITS.openDays.value })}</p>` : nothing}
      ${events.length === 1 ? html`<p class="voice">${words['no-load'].text}</p>` : nothing}
      ${what === '' ? nothing : html`<p class="quiet">${fill(words['left-out'], { what })}</p>`}
      <p class="voice" role="alert">${this.notMade ? words['not-made'].text : ''}</p>
    `;
  }

  private async save(): Promise<void> {
    const { handout, day } = this;
    try {
      const { calendarText } = await import('../calendar/calendar-file.ts');
      const content = calendarText(planCalendar(handout, day, this.places), handout.day, Date.now());
      saveFile({ name: `surae-plan-${day.replaceAll('-', '')}.ics`, type: 'text/calendar', content });
      this.notMade = false;
    } catch {
      this.notMade = true;
      return;
    }
    this.dispatchEvent(new CustomEvent('calendar-saved', { detail: Math.max(this.places, handout.plan.length) }));
  }
}
