import { ExchangeError, type Handout, handoutOfCode, type Morning, type Stiffness } from '@surae/exchange';
import { HOME_WORDS, LEGS_WORDS, SCOPE_SENTENCES } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { legsStyle } from '../legs/legs-style.ts';
import { redFlags } from '../legs/red-flags.ts';
import '../parts/chip-choice.ts';
import type { ChipChosen } from '../parts/chip-choice.ts';
import '../parts/number-scale.ts';
import type { ScaleChosen } from '../parts/number-scale.ts';
import { sheetElements } from '../parts/sheet-elements.ts';
import '../parts/read-aloud.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import './home-give.ts';
import { homeLegs } from './home-legs.ts';
import './home-running.ts';
import './home-today.ts';
import { type HomeMemory, keepMorning, keptMornings } from './kept-mornings.ts';
import { confirmedLines, morningLine } from './morning-line.ts';
import { runLimitOn } from './today-lines.ts';

const pages = ['morning', 'today', 'running', 'legs', 'flare', 'numbers', 'give'] as const;
type Page = (typeof pages)[number];
type Answers = { left?: number; right?: number };

const spans = (['none', 'under-10', '10-to-30', 'over-30'] as const).map((value) => ({
  value,
  text: HOME_WORDS[value].text,
}));

/**
 * What somebody takes home, on their own device, made of the address alone: nothing is asked of any server, and what is written
 * down stays in this browser. The red flags and whom to ring stand first on every page.
 */
@customElement('home-page')
export class HomePage extends LitElement {
  static override styles = [
    base,
    legsStyle,
    css`
      :host {
        margin-inline: auto;
        max-inline-size: 44rem;
        padding: var(--gap-4);
      }
      nav {
        display: grid;
        gap: var(--gap-2);
        margin-block: var(--gap-8) var(--gap-4);
      }
      main > h2 {
        font-size: var(--size-2);
        margin-block-start: var(--gap-8);
      }
      .parts {
        display: grid;
        gap: var(--gap-6);
      }
      .back {
        font-size: var(--size-3);
        line-height: 1.25;
      }
    `,
  ];

  /** what the address holds */
  @property() code = '';
  @property({ attribute: false }) memory!: HomeMemory;
  /** the day here, by the clock of this device */
  @property({ attribute: false }) today!: () => string;
  @state() private page: Page = 'morning';
  @state() private answers: Answers = {};
  @state() private again = false;
  @state() private notKept = false;

  override render(): TemplateResult {
    let handout: Handout;
    try {
      handout = handoutOfCode(this.code);
    } catch (error) {
      const isNewer = error instanceof ExchangeError && error.code === 'newer-version';
      return html`<main>${this.flags(null)}<h1>${HOME_WORDS.title.text}</h1>
        <p>${HOME_WORDS[isNewer ? 'newer' : 'not-read'].text}</p></main>`;
    }
    return html`<main>
      ${this.flags(handout)}
      <h1 tabindex="-1">${HOME_WORDS[this.page].text}</h1>
      <read-aloud of=${this.page}></read-aloud>
      ${this.body(handout)}
      <nav aria-label=${HOME_WORDS.pages.text}>
        ${this.pagesOf(handout).map(
          (page) =>
            html`<button type="button" aria-pressed=${page === this.page} @click=${() => this.go(page)}>
              ${HOME_WORDS[page].text}
            </button>`,
        )}
      </nav>
      <p class="quiet">${HOME_WORDS.private.text}</p>
    </main>`;
  }

  /** Runs have a page only where a clinician confirmed a limit for today. */
  private pagesOf(handout: Handout): readonly Page[] {
    return pages.filter((page) => page !== 'running' || runLimitOn(handout, this.today()) !== undefined);
  }

  private go(page: Page): void {
    this.page = page;
    this.again = false;
    void this.updateComplete.then(() => this.renderRoot.querySelector('h1')?.focus());
  }

  private flags(handout: Handout | null): TemplateResult {
    const { title, emergency, ring, lines } = redFlags(handout?.contact ?? null);
    return html`<section class="flags" aria-label=${title}>
      <h2>${title}</h2>
      <p>${emergency}</p>
      <p>${ring}</p>
      <ul>
        ${lines.map((line) => html`<li>${line}</li>`)}
      </ul>
    </section>`;
  }

  private body(handout: Handout): TemplateResult {
    switch (this.page) {
      case 'morning':
        return this.morning(handout);
      case 'legs':
        return html`${sheetElements(homeLegs(handout))}`;
      case 'flare':
        return this.flare(handout);
      case 'numbers':
        return html`<ul>
            ${(['can-day', 'can-other', 'can-not'] as const).map((code) => html`<li>${LEGS_WORDS[code].text}</li>`)}
          </ul>
          <p class="quiet">${SCOPE_SENTENCES.scope.text}</p>`;
      case 'today':
        return html`<home-today .handout=${handout} .memory=${this.memory} day=${this.today()}></home-today>`;
      case 'running':
        return html`<home-running .handout=${handout} .memory=${this.memory} day=${this.today()}></home-running>`;
      case 'give':
        return html`<home-give .memory=${this.memory} day=${this.today()}></home-give>`;
    }
  }

  /** One question below the other; the last answer writes it down. */
  private morning(handout: Handout): TemplateResult {
    const today = this.today();
    const told = keptMornings(this.memory).find(({ day }) => day === today);
    if (told !== undefined && !this.again) return this.answered(handout, told);
    const asked = handout.asked === 'both' ? (['left', 'right'] as const) : [handout.asked];
    const isReady = asked.every((side) => this.answers[side] !== undefined);
    return html`<div class="parts">
      ${asked.map(
        (side) =>
          html`<number-scale
            legend=${HOME_WORDS[`pain-${side}`].text}
            low=${HOME_WORDS['pain-low'].text}
            high=${HOME_WORDS['pain-high'].text}
            .value=${this.answers[side] ?? null}
            @scale-chosen=${({ detail }: ScaleChosen) =>
              (this.answers = { ...this.answers, ...(detail === null ? {} : { [side]: detail }) })}
          ></number-scale>`,
      )}
      ${
        isReady
          ? html`<chip-choice
              legend=${HOME_WORDS.stiffness.text}
              .chips=${spans}
              @chip-chosen=${({ detail }: ChipChosen) => this.write(today, detail as Stiffness)}
            ></chip-choice>`
          : nothing
      }
      ${this.notKept ? html`<p class="voice" role="alert">${HOME_WORDS['not-kept'].text}</p>` : nothing}
    </div>`;
  }

  private write(day: string, stiffness: Stiffness): void {
    const { left = null, right = null } = this.answers;
    try {
      keepMorning(this.memory, { day, left, right, stiffness });
      this.notKept = false;
    } catch {
      this.notKept = true;
      return;
    }
    this.again = false;
    this.answers = {};
  }

  private answered(handout: Handout, told: Morning): TemplateResult {
    const line = morningLine(handout, told);
    return html`<div role="status">
        <p>${HOME_WORDS.written.text}</p>
        <p class="back">${line ?? this.whomToAsk(handout)}</p>
      </div>
      <button type="button" @click=${() => (this.again = true)}>${HOME_WORDS.again.text}</button>`;
  }

  private whomToAsk({ contact }: Handout): string {
    return contact === null ? HOME_WORDS['ask-clinic'].text : fill(HOME_WORDS['ask-whom'], { ...contact });
  }

  private flare(handout: Handout): TemplateResult {
    const { contact } = handout;
    const agreed = confirmedLines(handout, 'eased');
    return html`<ol>
      <li>${HOME_WORDS['flare-first'].text}</li>
      <li>
        ${
          agreed.length === 0 ? HOME_WORDS['flare-none'].text : `${HOME_WORDS['flare-agreed'].text} ${agreed.join(' ')}`
        }
      </li>
      <li>
        ${contact === null ? HOME_WORDS['flare-ask'].text : fill(HOME_WORDS['flare-ring'], { ...contact })}
      </li>
    </ol>`;
  }
}
