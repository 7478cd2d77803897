import { consume } from '@lit/context';
import { ExchangeError, type Morning, morningsOfCode } from '@surae/exchange';
import { FRAME_WORDS, HOME_WORDS, MORNINGS_IN_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { bookContext, clockContext, type HostClock } from '../contexts/capabilities.ts';
import { checkOf, type GivenMorning, givenMornings } from '../home/taken-mornings.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { fieldBox, fileFieldStyle } from '../parts/field-style.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';

/** Mornings that somebody gives back are looked at, asked about, and kept with their person. */
@customElement('mornings-page')
export class MorningsPage extends LitElement {
  static override styles = [
    base,
    fileFieldStyle,
    css`
      .column {
        margin-block: var(--gap-4) var(--gap-6);
      }
      textarea {
        ${fieldBox}
        overflow-wrap: anywhere;
      }
      li label {
        align-items: center;
        display: flex;
        gap: var(--gap-3);
        min-block-size: var(--target);
      }
      ul {
        list-style: none;
        margin: 0 0 var(--gap-4);
        padding: 0;
      }
      input[type='checkbox'] {
        block-size: 1.5rem;
        flex: none;
        inline-size: 1.5rem;
      }
    `,
  ];

  @property({ attribute: false }) personId = '';
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private name: string | undefined | null;
  @state() private given: readonly GivenMorning[] = [];
  @state() private chosen: ReadonlySet<string> = new Set();
  @state() private said = '';

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('personId')) return;
    void this.book.person(this.personId).then((person) => (this.name = person?.name ?? null));
  }

  override render(): TemplateResult {
    const words = MORNINGS_IN_WORDS;
    if (this.name === null) return html`<h1>${FRAME_WORDS['lost-title'].text}</h1>`;
    return html`
      <h1>${words.title.text}</h1>
      <p class="quiet">${this.name}</p>
      <div class="column">
        <div>
          <label for="text">${words.text.text}</label>
          <textarea id="text" rows="3"></textarea>
        </div>
        <button type="button" @click=${() => void this.look(this.renderRoot.querySelector('textarea')?.value ?? '')}>
          ${words.look.text}
        </button>
        <div>
          <label for="file">${words.file.text}</label>
          <input id="file" type="file" accept=".txt" @change=${this.read} />
        </div>
      </div>
      <p class="voice" role="status">${this.said}</p>
      ${this.given.length === 0 ? nothing : this.list()}
      <p><a class="button" href=${hashOf({ page: 'start' })}>${words.back.text}</a></p>
    `;
  }

  private list(): TemplateResult {
    return html`<ul>
        ${this.given.map((one) => this.line(one))}
      </ul>
      <button class="main" type="button" ?disabled=${this.chosen.size === 0} @click=${() => void this.keep()}>
        ${MORNINGS_IN_WORDS.keep.text}
      </button>`;
  }

  private line({ morning: { day, left, right, stiffness }, state }: GivenMorning): TemplateResult {
    const words = MORNINGS_IN_WORDS;
    const open = words['not-asked'].text;
    const told = fill(words.line, {
      day: dayOf(day),
      left: left ?? open,
      right: right ?? open,
      stiffness: HOME_WORDS[stiffness].text,
    });
    return html`<li>
      <label>
        <input
          type="checkbox"
          .checked=${this.chosen.has(day)}
          ?disabled=${state === 'same'}
          @change=${() => this.turn(day)}
        />
        <span>${told} <span class=${state === 'new' ? 'quiet' : 'voice'}>(${words[state].text})</span></span>
      </label>
    </li>`;
  }

  private turn(day: string): void {
    const chosen = new Set(this.chosen);
    if (!chosen.delete(day)) chosen.add(day);
    this.chosen = chosen;
  }

  private readonly read = async (event: Event): Promise<void> => {
    const file = (event.target as HTMLInputElement).files?.[0];
    if (file !== undefined) await this.look(await file.text());
  };

  /** What nothing stands against is ticked; the rest waits for an answer. */
  private async look(text: string): Promise<void> {
    this.given = [];
    let mornings: readonly Morning[];
    try {
      mornings = morningsOfCode(text);
    } catch (error) {
      const isNewer = error instanceof ExchangeError && error.code === 'newer-version';
      this.said = MORNINGS_IN_WORDS[isNewer ? 'newer' : 'not-read'].text;
      return;
    }
    const kept = await this.book.notes.mornings(this.personId);
    this.given = givenMornings(mornings, kept, this.clock.isoNow().slice(0, 10));
    this.chosen = new Set(this.given.flatMap(({ state, morning }) => (state === 'new' ? [morning.day] : [])));
    this.said = '';
  }

  private async keep(): Promise<void> {
    const taken = this.given.filter(({ morning }) => this.chosen.has(morning.day));
    try {
      for (const { morning, replaces } of taken) {
        await this.book.notes.keepMorning(this.personId, checkOf(morning), replaces);
      }
    } catch {
      this.said = MORNINGS_IN_WORDS['not-kept'].text;
      return;
    }
    this.given = [];
    this.said = fill(MORNINGS_IN_WORDS.kept, { count: taken.length });
  }
}
