import { consume } from '@lit/context';
import { isOfAnotherDay, locksOf, safetyLines, type Visit } from '@surae/casebook';
import {
  SAFETY_BLOCK_SENTENCES,
  SAFETY_LIST_VERSION,
  SAFETY_REASONS,
  SAFETY_WORDS,
  type SafetyEntry,
} from '@surae/shared';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { clockContext, type HostClock } from '../contexts/capabilities.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import type { ChipChosen } from '../parts/chip-choice.ts';
import { entryWords } from '../words/entry-words.ts';
import '../parts/chip-choice.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { safetyNote } from '../words/safety-note.ts';

const reasons = Object.entries(SAFETY_REASONS).map(([value, { text }]) => ({ value, text }));

/** The list that is gone through before anybody is tested. One gesture clears it, but only when all of it was seen. */
@customElement('safety-step')
export class SafetyStep extends LitElement {
  static override styles = [
    base,
    css`
      ol {
        list-style: none;
        margin: var(--gap-6) 0;
        padding: 0;
      }
      li {
        border-block-start: 1px solid var(--hairline);
      }
      label {
        align-items: start;
        cursor: pointer;
        display: grid;
        font-size: var(--size-2);
        gap: var(--gap-4);
        grid-template-columns: auto minmax(0, 1fr);
        min-block-size: var(--target);
        padding-block: var(--gap-3);
      }
      input {
        accent-color: var(--ink);
        block-size: 28px;
        inline-size: 28px;
        margin: 0;
      }
      .ask {
        max-inline-size: var(--line);
      }
      .note {
        margin-block: 0 var(--gap-3);
        margin-inline-start: calc(28px + var(--gap-4));
        max-inline-size: var(--line);
        overflow-wrap: anywhere;
      }
      cite {
        font-style: normal;
      }
      .step {
        border-inline-start: 3px solid var(--voice);
        margin-block-end: var(--gap-4);
        margin-inline-start: calc(28px + var(--gap-4));
        padding-inline-start: var(--gap-4);
      }
      .next {
        font-size: var(--size-2);
        font-weight: 600;
      }
      .go {
        display: grid;
        gap: var(--gap-3);
        max-inline-size: 44rem;
      }
    `,
  ];

  @property({ attribute: false }) visit!: Visit;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private ticked: ReadonlySet<string> = new Set();
  @state() private overrides: ReadonlyMap<string, string> = new Map();
  @state() private seen: ReadonlySet<string> = new Set();

  private readonly watcher = new IntersectionObserver((entries) => {
    const shown = entries.filter(({ isIntersecting }) => isIntersecting);
    if (shown.length === 0) return;
    this.seen = new Set([...this.seen, ...shown.map(({ target }) => (target as HTMLElement).dataset['line']!)]);
  });

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('visit') || changed.get('visit') !== undefined || this.visit.safety === null) return;
    this.ticked = new Set(this.visit.safety.ticked);
    // a reason such as "examined today" was given for that day
    if (isOfAnotherDay(this.visit.safety, this.clock.isoNow())) return;
    this.overrides = new Map(this.visit.safety.overridden.map(({ id, reason }) => [id, reason]));
  }

  protected override firstUpdated(): void {
    // the end of each line is watched: a line whose end was in view can have been read to its end, however tall it is
    for (const end of this.renderRoot.querySelectorAll('.end')) this.watcher.observe(end);
  }

  override disconnectedCallback(): void {
    this.watcher.disconnect();
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const left = safetyLines.filter(({ id }) => !this.seen.has(id)).length;
    const locks = this.locks();
    const locked = locks.length > 0;
    return html`
      <h1>${SAFETY_WORDS.title.text}</h1>
      <p>${SAFETY_WORDS.explain.text}</p>
      <p class="voice">${SAFETY_WORDS.policy.text}</p>
      <ol>
        ${safetyLines.map((line) => this.line(line))}
      </ol>
      <div class="go">
        <p class="quiet" id="seen" role="status">
          ${left > 0 ? fill(SAFETY_WORDS['lines-left'], { count: left }) : SAFETY_WORDS['all-seen'].text}
          ${this.lockLine(locks)}
        </p>
        <button class="main" type="button" aria-describedby="seen" ?disabled=${left > 0} @click=${() => this.keep()}>
          ${SAFETY_WORDS[this.ticked.size === 0 ? 'none' : locked ? 'keep-locked' : 'keep'].text}
        </button>
      </div>
    `;
  }

  private lockLine(locks: readonly SafetyEntry[]): string {
    if (locks.length === 0) return '';
    const open = locks.every(({ override }) => override === 'with-reason');
    return open ? SAFETY_WORDS['missing-reason'].text : SAFETY_BLOCK_SENTENCES.locked.text;
  }

  private line(line: SafetyEntry): TemplateResult {
    const ticked = this.ticked.has(line.id);
    const note = safetyNote(line.id);
    const end = html`<span class="end" data-line=${line.id}></span>`;
    return html`<li>
      <label>
        <input
          type="checkbox"
          aria-describedby=${note === null ? nothing : `note-${line.id}`}
          .checked=${ticked}
          @change=${() => this.tick(line.id)}
        />
        <span class="ask">${entryWords(line, 'ask')}${note === null ? end : nothing}</span>
      </label>
      ${
        note === null
          ? nothing
          : html`<p class="note" id=${`note-${line.id}`}>
              ${note.text}
              <span class="quiet"><cite lang="en" translate="no">${note.source}</cite>. ${note.mark}</span>${end}
            </p>`
      }
      <div aria-live="polite">${ticked ? this.step(line) : null}</div>
    </li>`;
  }

  private step(line: SafetyEntry): TemplateResult {
    return html`<div class="step">
      <p class="quiet">${SAFETY_WORDS['next-step'].text}</p>
      <p class="next">${entryWords(line, 'next')}</p>
      ${this.effect(line)}
    </div>`;
  }

  private effect({ id, effect, override }: SafetyEntry): TemplateResult {
    if (effect === 'no-maximal-isometric') return html`<p>${SAFETY_WORDS['no-maximal'].text}</p>`;
    if (effect !== 'do-not-test') return html`<p>${SAFETY_WORDS.noted.text}</p>`;
    if (override !== 'with-reason') return html`<p class="voice">${SAFETY_WORDS['locked-for-good'].text}</p>`;
    const reason = this.overrides.get(id);
    if (reason === undefined) {
      return html`<chip-choice
        legend=${SAFETY_WORDS['locked-unless'].text}
        .chips=${reasons}
        @chip-chosen=${(event: ChipChosen) => this.override(id, event.detail)}
      ></chip-choice>`;
    }
    const said = SAFETY_REASONS[reason as keyof typeof SAFETY_REASONS]?.text ?? reason;
    return html`<p>${fill(SAFETY_WORDS['goes-on'], { reason: said })}</p>
      <button type="button" @click=${() => this.override(id, undefined)}>${SAFETY_WORDS['take-back'].text}</button>`;
  }

  private locks(): SafetyEntry[] {
    return locksOf({ ticked: [...this.ticked], overridden: this.overridden() });
  }

  private overridden(): { id: string; reason: string }[] {
    return [...this.overrides].filter(([id]) => this.ticked.has(id)).map(([id, reason]) => ({ id, reason }));
  }

  private tick(id: string): void {
    const ticked = new Set(this.ticked);
    if (!ticked.delete(id)) ticked.add(id);
    this.ticked = ticked;
    if (!ticked.has(id)) this.override(id, undefined);
  }

  private override(id: string, reason: string | undefined): void {
    const overrides = new Map(this.overrides);
    if (reason === undefined) overrides.delete(id);
    else overrides.set(id, reason);
    this.overrides = overrides;
  }

  private keep(): void {
    const seenWhole = safetyLines.every(({ id }) => this.seen.has(id));
    if (!seenWhole) return;
    const answer = { listVersion: SAFETY_LIST_VERSION, seenWhole, ticked: [...this.ticked] };
    this.dispatchEvent(visitEvent({ kind: 'visit-safety', safety: { ...answer, overridden: this.overridden() } }));
  }
}
