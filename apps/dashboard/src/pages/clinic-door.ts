import { consume } from '@lit/context';
import { DOOR_WORDS, FRAME_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { authorFrom } from '../clinic/author-code.ts';
import type { ClinicDoor } from '../clinic/clinic-door.ts';
import { clockContext, doorContext, type HostClock } from '../contexts/capabilities.ts';
import { storeWords } from '../live/store-words.ts';
import { fieldStyle } from '../parts/field-style.ts';
import '../parts/passphrase-twice.ts';
import type { PassphraseChosen } from '../parts/passphrase-twice.ts';
import '../parts/recovery-code.ts';
import { ruledSectionStyle } from '../parts/ruled-section-style.ts';
import { secretField, showButton } from '../parts/secret-field.ts';
import { secretStyle } from '../parts/secret-style.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';

/** The page before a clinic is open: one's own is opened or made, or the demo clinic is looked at. */
@customElement('clinic-door')
export class ClinicDoorPage extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    secretStyle,
    ruledSectionStyle,
    css`
      :host {
        box-sizing: border-box;
        inline-size: 100%;
        margin-inline: auto;
        max-inline-size: var(--page);
        padding: var(--gap-6) var(--gap-4) var(--gap-8);
      }
      .name {
        font-size: var(--size-2);
        margin-block-end: var(--gap-4);
        font-weight: 600;
        letter-spacing: 0.02em;
      }
      .sheet {
        display: grid;
        gap: var(--gap-6) var(--gap-12);
        grid-template-columns: minmax(0, 1fr);
      }
      .back {
        padding-inline: 0;
      }
      .author {
        max-inline-size: 32rem;
      }
      .author p {
        margin-block: var(--gap-2) var(--gap-3);
      }
      @media (min-width: 60rem) {
        .sheet {
          grid-template-columns: minmax(0, 3fr) minmax(0, 2fr);
        }
      }
      @media print {
        .name {
          display: none;
        }
      }
    `,
  ];

  @consume({ context: doorContext }) private readonly door!: ClinicDoor;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private hasOwn: boolean | undefined;
  @state() private isMaking = false;
  @state() private secret = '';
  @state() private shown = false;
  @state() private busy = false;
  @state() private refusal = '';
  @state() private author = '';
  @state() private authorWrong = false;
  /** shown until it is on paper, with the passphrase that opens what it belongs to */
  @state() private made: { readonly code: string; readonly passphrase: string } | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.author = this.door.author ?? '';
    void this.look();
  }

  private async look(): Promise<void> {
    try {
      this.hasOwn = await this.door.hasOwn();
    } catch (error) {
      this.hasOwn = false;
      this.refusal = storeWords(error);
    }
  }

  /** Does something that takes a moment, and says why where it cannot be done. */
  private async attempt(work: () => Promise<void>): Promise<void> {
    this.busy = true;
    this.refusal = '';
    // the words are on the screen before the work takes the thread
    await this.updateComplete;
    await new Promise(requestAnimationFrame);
    try {
      await work();
    } catch (error) {
      this.refusal = storeWords(error);
    }
    this.busy = false;
  }

  /** Whether it is told who works here. */
  private hasAuthor(): boolean {
    const code = authorFrom(this.author);
    this.authorWrong = code === undefined;
    if (code === undefined) {
      void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLInputElement>('#author')?.focus());
      return false;
    }
    this.door.keepAuthor(code);
    return true;
  }

  private readonly open = (event: SubmitEvent): void => {
    event.preventDefault();
    if (this.hasAuthor()) void this.attempt(() => this.door.enter(this.secret));
  };

  private make({ detail: { next } }: PassphraseChosen): void {
    if (!this.hasAuthor()) return;
    void this.attempt(async () => {
      this.made = { code: await this.door.create(next), passphrase: next };
    });
  }

  private async turnToMaking(isMaking: boolean): Promise<void> {
    this.isMaking = isMaking;
    this.refusal = '';
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('h1')?.focus();
  }

  override render(): TemplateResult {
    const { made } = this;
    return html`<header class="name">${FRAME_WORDS.name.text}</header>
      <main>${made === undefined ? this.choice() : this.code(made)}</main>`;
  }

  private code({ code, passphrase }: { readonly code: string; readonly passphrase: string }): TemplateResult {
    return html`<recovery-code
        .code=${code}
        .madeAt=${this.clock.isoNow()}
        @code-kept=${() => void this.attempt(() => this.door.enter(passphrase))}
      ></recovery-code>
      <p role="status" class="voice">${this.busy ? DOOR_WORDS.opening.text : this.refusal}</p>`;
  }

  private choice(): TemplateResult {
    if (this.hasOwn === undefined) return html`<p class="quiet" role="status">${FRAME_WORDS.loading.text}</p>`;
    if (this.isMaking) return this.making();
    const words = DOOR_WORDS;
    return html`<h1 tabindex="-1">${words.title.text}</h1>
      <div class="sheet">
        <section>
          <h2>${words.own.text}</h2>
          ${this.hasOwn ? this.opening() : this.none()}
        </section>
        <section>
          <h2>${words.demo.text}</h2>
          <p>${words['demo-explain'].text}</p>
          <button type="button" @click=${() => void this.attempt(() => this.door.openDemo())}>
            ${words['open-demo'].text}
          </button>
        </section>
      </div>`;
  }

  private none(): TemplateResult {
    const { lastOpened } = this.door;
    // a store that could not be opened says so itself, and may be whole
    const isGone = lastOpened !== null && this.refusal === '';
    return html`${
      isGone
        ? html`<p role="alert" class="voice">${fill(DOOR_WORDS['own-gone'], { date: dayOf(lastOpened) })}</p>
            <p>${DOOR_WORDS['own-gone-next'].text}</p>`
        : html`<p>${DOOR_WORDS['own-none'].text}</p>
            <p role="alert" class="voice">${this.refusal}</p>`
    }
      <button class="main" type="button" @click=${() => void this.turnToMaking(true)}>${DOOR_WORDS.create.text}</button>`;
  }

  private opening(): TemplateResult {
    return html`<p>${DOOR_WORDS['own-locked'].text}</p>
      <form novalidate @submit=${this.open}>
        ${this.door.author === null ? this.who() : nothing}
        ${secretField({
          id: 'secret',
          label: DOOR_WORDS.secret.text,
          value: this.secret,
          shown: this.shown,
          purpose: 'current-password',
          type: (value) => (this.secret = value),
        })}
        ${showButton(this.shown, () => (this.shown = !this.shown))}
        <p role="alert" class="voice">${this.refusal}</p>
        <button class="main" type="submit" ?disabled=${this.busy}>
          ${this.busy ? DOOR_WORDS.opening.text : DOOR_WORDS.open.text}
        </button>
      </form>`;
  }

  private making(): TemplateResult {
    const words = DOOR_WORDS;
    return html`<h1 tabindex="-1">${words.create.text}</h1>
      <p>${words['own-none'].text}</p>
      <p class="voice">${words['no-way-back'].text}</p>
      ${this.who()}
      <passphrase-twice
        .action=${words['make-it'].text}
        .refusal=${this.refusal}
        .busy=${this.busy}
        @passphrase-chosen=${(event: PassphraseChosen) => this.make(event)}
      ></passphrase-twice>
      <button class="plain back" type="button" @click=${() => void this.turnToMaking(false)}>${words.back.text}</button>`;
  }

  private who(): TemplateResult {
    const words = DOOR_WORDS;
    return html`<div class="author">
      <label for="author">${words.author.text}</label>
      <input
        id="author"
        autocomplete="off"
        spellcheck="false"
        aria-describedby="author-help"
        aria-invalid=${this.authorWrong ? 'true' : nothing}
        .value=${this.author}
        @input=${(event: InputEvent) => (this.author = (event.target as HTMLInputElement).value)}
      />
      <p id="author-help" aria-live="polite" class=${this.authorWrong ? 'voice' : 'quiet'}>
        ${words[this.authorWrong ? 'author-wrong' : 'author-help'].text}
      </p>
    </div>`;
  }
}
