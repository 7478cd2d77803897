import { consume } from '@lit/context';
import { RECOUNT_STUDY_WORDS } from '@surae/shared';
import { StudyError, type StudyResults } from '@surae/study';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { clockContext, type HostClock } from '../contexts/capabilities.ts';
import { ruledSectionStyle } from '../parts/ruled-section-style.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import './recount-agreement.ts';
import type { RaterState, RecountDesk } from './recount-desk.ts';
import './recount-files.ts';
import './recount-item.ts';
import './recount-lock.ts';
import type { LockAsked } from './recount-lock.ts';
import './recount-open.ts';
import type { OpenAsked } from './recount-open.ts';
import type { RecountSession } from './recount-session.ts';

/**
 * Counting again without knowing whose it is: who counts, the count itself, the lock, the opening, how far all agree. While somebody
 * counts it tells `blinded-count` with true, so that whatever is round it says nothing of the study; afterwards with false.
 */
@customElement('recount-part')
export class RecountPart extends LitElement {
  static override styles = [
    base,
    ruledSectionStyle,
    css`
      .raters {
        display: grid;
        gap: var(--gap-3);
        list-style: none;
        margin: 0;
        max-inline-size: 44rem;
        padding: 0;
      }
      .raters button {
        inline-size: 100%;
        justify-content: start;
        text-align: start;
      }
      .hash {
        font-family: ui-monospace, monospace;
        overflow-wrap: anywhere;
        user-select: all;
      }
      .note {
        margin-block-start: var(--gap-3);
      }
      .way {
        display: flex;
        flex-wrap: wrap;
        gap: var(--gap-3);
        margin-block-start: var(--gap-6);
      }
    `,
  ];

  @property({ attribute: false }) desk!: RecountDesk;
  /** the study as it is written to files; undefined where nothing is written */
  @property({ attribute: false }) made: (() => StudyResults) | undefined;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private view: 'who' | 'count' | 'lock' = 'who';
  @state() private counted: RecountSession | undefined;
  @state() private said = '';

  override disconnectedCallback(): void {
    this.leave();
    super.disconnectedCallback();
  }

  protected override updated(changed: PropertyValues): void {
    if (changed.get('view') === undefined) return;
    const holder = this.view === 'who' ? this : this.renderRoot.querySelector('recount-item, recount-lock');
    void this.focusIn(holder);
  }

  private async focusIn(holder: Element | null): Promise<void> {
    if (holder === null) return;
    await (holder as LitElement).updateComplete;
    holder.shadowRoot?.querySelector<HTMLElement>('h2')?.focus();
  }

  override render(): TemplateResult {
    const { counted } = this;
    if (counted === undefined || this.view === 'who') return this.who();
    return this.view === 'lock' ? this.locking(counted) : this.count(counted);
  }

  private who(): TemplateResult {
    const words = RECOUNT_STUDY_WORDS;
    if (this.desk.names.length === 0) return html`<p>${words['not-declared'].text}</p>`;
    let states: readonly RaterState[];
    try {
      states = this.desk.states();
    } catch (error) {
      if (!(error instanceof StudyError)) throw error;
      return html`<p class="voice">${fill(words['not-possible'], { why: error.message })}</p>`;
    }
    const agreement = this.desk.agreement();
    return html`<h2 tabindex="-1">${words.title.text}</h2>
      <p>${words.explain.text}</p>
      <p role="status" class="voice">${this.said}</p>
      <section>
        <h3>${words.who.text}</h3>
        ${states.every(({ lock }) => lock !== null) ? nothing : html`<p class="quiet">${words['own-alone'].text}</p>`}
        <ul class="raters">
          ${states.map((one) => html`<li>${this.rater(one)}</li>`)}
        </ul>
      </section>
      ${
        states.some(({ state: how }) => how !== 'opened')
          ? html`<section><recount-open .states=${states} @open-asked=${(event: OpenAsked) => void this.open(event)}></recount-open></section>`
          : nothing
      }
      ${
        agreement === null
          ? nothing
          : html`<section>
              <recount-agreement .agreement=${agreement} .made=${this.made} .trace=${(sha256: string) => this.desk.trace(sha256)}></recount-agreement>
            </section>`
      }
      <section>
        <recount-files .desk=${this.desk} .states=${states} @files-taken=${() => this.requestUpdate()}></recount-files>
      </section>`;
  }

  private rater({ rater, state: how, left, total, lock, isEarly }: RaterState): TemplateResult {
    const words = RECOUNT_STUDY_WORDS;
    const text = fill(words[`rater-${how}`], { rater, left, total });
    if (lock === null) {
      return html`<button type="button" @click=${() => void this.begin(rater)}>${text}</button>
        ${isEarly ? html`<p class="voice">${fill(words['opened-early'], { rater })}</p>` : nothing}`;
    }
    return html`<p>${text}</p>
      <p class="quiet">${fill(words['hash-of'], { rater })}</p>
      <p class="hash">${lock}</p>
      ${how === 'locked' ? html`<p>${words['locked-write'].text}</p>` : nothing}`;
  }

  private count(session: RecountSession): TemplateResult {
    const words = RECOUNT_STUDY_WORDS;
    return html`<recount-item .session=${session}></recount-item>
      <div class="way">
        <button type="button" @click=${() => (this.view = 'lock')}>${words.lock.text}</button>
        <button type="button" @click=${() => this.leave()}>${words.leave.text}</button>
      </div>
      <p class="quiet note">${words['leave-note'].text}</p>`;
  }

  private locking(session: RecountSession): TemplateResult {
    return html`<recount-lock
      .rater=${session.key.rater}
      .left=${session.left}
      .total=${session.place.of}
      @lock-not=${() => (this.view = 'count')}
      @lock-asked=${(event: LockAsked) => void this.lock(session, event.detail)}
    ></recount-lock>`;
  }

  private async begin(rater: string): Promise<void> {
    this.said = '';
    const session = this.desk.begin(rater);
    this.counted = session;
    this.view = 'count';
    this.dispatchEvent(new CustomEvent('blinded-count', { detail: true, bubbles: true, composed: true }));
    await session.show();
  }

  private leave(): void {
    if (this.view === 'who') return;
    this.counted = undefined;
    this.view = 'who';
    this.dispatchEvent(new CustomEvent('blinded-count', { detail: false, bubbles: true, composed: true }));
  }

  private async lock(session: RecountSession, by: string): Promise<void> {
    const words = RECOUNT_STUDY_WORDS;
    await session.lock(by, this.clock.isoNow().slice(0, 10));
    const isLocked = session.book.lock !== null;
    this.said = isLocked ? fill(words.locked, { rater: session.key.rater }) : words['not-saved'].text;
    this.leave();
  }

  private async open({ detail: { raters, by, why } }: OpenAsked): Promise<void> {
    try {
      await this.desk.open(raters, by, this.clock.isoNow().slice(0, 10), why);
      this.said = '';
    } catch {
      this.said = RECOUNT_STUDY_WORDS['not-saved'].text;
    }
    this.requestUpdate();
  }
}
