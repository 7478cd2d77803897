import { consume } from '@lit/context';
import { CLINIC_PLACE, CLINIC_WORDS, CONTACT_WORDS, DOOR_WORDS, RULES_PLACE } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { authorFrom, longestCode } from '../clinic/author-code.ts';
import type { ClinicDoor } from '../clinic/clinic-door.ts';
import { type DeviceSettings, keepSettings, keptSettings, lockChoices } from '../clinic/device-settings.ts';
import { askToKeep, isPromised } from '../clinic/storage-promise.ts';
import { clockContext, doorContext, type HostClock } from '../contexts/capabilities.ts';
import { storeWords } from '../live/store-words.ts';
import '../parts/contact-setting.ts';
import '../parts/chip-choice.ts';
import type { ChipChosen } from '../parts/chip-choice.ts';
import '../parts/clinic-backup.ts';
import '../parts/clinic-restore.ts';
import { fieldStyle } from '../parts/field-style.ts';
import { foldStyle } from '../parts/fold-style.ts';
import '../parts/passphrase-twice.ts';
import type { PassphraseChosen, PassphraseTwice } from '../parts/passphrase-twice.ts';
import '../parts/record-problems.ts';
import '../parts/recovery-code.ts';
import { ruledSectionStyle } from '../parts/ruled-section-style.ts';
import { secretField, showButton } from '../parts/secret-field.ts';
import { secretStyle } from '../parts/secret-style.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

const never = 'never';

/** The clinic that is open: its lock, its keys, its backups, and who did what. */
@customElement('clinic-page')
export class ClinicPage extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    foldStyle,
    secretStyle,
    ruledSectionStyle,
    css`
      .links a {
        display: inline-block;
        padding-block: var(--gap-3);
      }
      .note {
        margin-block-start: var(--gap-3);
      }
      summary {
        font-size: var(--size-2);
      }
    `,
  ];

  @consume({ context: doorContext }) private readonly door!: ClinicDoor;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private settings: DeviceSettings = keptSettings(localStorage);
  @state() private busy = false;
  /** said of the keys, and why something of them was refused */
  @state() private said = '';
  @state() private refusal = '';
  @state() private codeRefusal = '';
  @state() private present = '';
  @state() private shown = false;
  /** the code that is typed for whoever works here from now on, and why it was refused */
  @state() private author = '';
  /** whether the browser promised to keep the record; undefined before it was heard, null where it does not tell */
  @state() private promised: boolean | null | undefined;
  @state() private wasAsked = false;
  @state() private authorRefusal = '';
  /** a new recovery code, until it is on paper */
  @state() private code: string | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    void isPromised(navigator.storage).then((promised) => (this.promised = promised));
  }

  private keep(settings: DeviceSettings): void {
    this.settings = settings;
    keepSettings(localStorage, settings);
  }

  override render(): TemplateResult {
    if (this.code !== undefined) {
      return html`<recovery-code
        .code=${this.code}
        .madeAt=${this.clock.isoNow()}
        @code-kept=${() => this.codeKept()}
      ></recovery-code>`;
    }
    const words = CLINIC_WORDS;
    const isOwn = this.door.open?.which === 'own';
    return html`
      <h1 tabindex="-1">${CLINIC_PLACE.title.text}</h1>
      <p>
        ${isOwn ? fill(words['own-explain'], { author: this.door.author ?? '' }) : words['demo-explain'].text}
      </p>
      ${
        isOwn ? nothing : html`<button type="button" @click=${() => void this.door.lock()}>${words.leave.text}</button>`
      }
      ${isOwn ? html`${this.who()} ${this.lock()} ${this.keptHere()}` : nothing}
      <section>
        <h2>${CONTACT_WORDS.title.text}</h2>
        <contact-setting></contact-setting>
      </section>
      <section>
        <h2>${RULES_PLACE.title.text}</h2>
        <p class="links"><a href=${hashOf({ page: 'rules' })}>${RULES_PLACE.link.text}</a></p>
      </section>
      <section>
        <h2>${words['backup-title'].text}</h2>
        <clinic-backup
          .days=${this.settings.backupDays}
          @days-chosen=${({ detail }: CustomEvent<number>) => this.keep({ ...this.settings, backupDays: detail })}
        ></clinic-backup>
      </section>
      <section>
        <h2>${words['restore-title'].text}</h2>
        <clinic-restore></clinic-restore>
      </section>
      ${isOwn ? this.keys() : nothing}
      <section>
        <h2>${words['trail-title'].text}</h2>
        <p class="links"><a href=${hashOf({ page: 'audit' })}>${words['trail-link'].text}</a></p>
        <record-problems></record-problems>
      </section>
    `;
  }

  /** Who works here: a code stands beside everything that is written. */
  private who(): TemplateResult {
    const words = CLINIC_WORDS;
    return html`<section>
      <h2>${words['who-title'].text}</h2>
      <p>${fill(words['who-explain'], { author: this.door.author ?? '' })}</p>
      <form novalidate @submit=${(event: SubmitEvent) => void this.changeAuthor(event)}>
        <div>
          <label for="author">${words['who-next'].text}</label>
          <input
            id="author"
            autocomplete="off"
            maxlength=${longestCode + 1}
            aria-describedby="author-help"
            .value=${this.author}
            @input=${(event: Event) => (this.author = (event.target as HTMLInputElement).value)}
          />
          <p id="author-help" class="quiet">${DOOR_WORDS['author-help'].text}</p>
        </div>
        <p role="alert" class="voice">${this.authorRefusal}</p>
        <button type="submit">${words['who-change'].text}</button>
      </form>
    </section>`;
  }

  private async changeAuthor(event: SubmitEvent): Promise<void> {
    event.preventDefault();
    const code = authorFrom(this.author);
    if (code === undefined) {
      this.authorRefusal = DOOR_WORDS['author-wrong'].text;
      return;
    }
    try {
      await this.door.changeAuthor(code);
      this.author = '';
      this.authorRefusal = '';
    } catch (error) {
      this.authorRefusal = storeWords(error);
    }
  }

  /** Whether the browser keeps the record by itself. */
  private keptHere(): TemplateResult | typeof nothing {
    const { promised } = this;
    if (promised === undefined) return nothing;
    const words = CLINIC_WORDS;
    const said =
      promised === true
        ? words['kept-promised']
        : promised === null
          ? words['kept-not-told']
          : words[this.wasAsked ? 'kept-refused' : 'kept-not-promised'];
    return html`<section>
      <h2>${words['kept-title'].text}</h2>
      <p role="status" class=${promised === true ? 'quiet' : 'voice'}>${said.text}</p>
      ${
        promised === false && !this.wasAsked
          ? html`<button type="button" @click=${() => void this.askToKeep()}>${words['kept-ask'].text}</button>`
          : nothing
      }
    </section>`;
  }

  private async askToKeep(): Promise<void> {
    this.promised = await askToKeep(navigator.storage);
    this.wasAsked = true;
  }

  private lock(): TemplateResult {
    const words = CLINIC_WORDS;
    const chips = lockChoices.map((minutes) => ({
      value: minutes === null ? never : String(minutes),
      text: minutes === null ? words['lock-never'].text : fill(words['lock-minutes'], { minutes }),
    }));
    const { lockMinutes } = this.settings;
    return html`<section>
      <h2>${words['lock-title'].text}</h2>
      <chip-choice
        legend=${words['lock-after'].text}
        .chips=${chips}
        .value=${lockMinutes === null ? never : String(lockMinutes)}
        @chip-chosen=${({ detail }: ChipChosen<string>) => {
          const chosen = detail ?? never;
          this.keep({ ...this.settings, lockMinutes: chosen === never ? null : Number(chosen) });
        }}
      ></chip-choice>
      <p class="quiet note">${words['lock-running'].text}</p>
      <button type="button" @click=${() => void this.door.lock()}>${words['lock-now'].text}</button>
    </section>`;
  }

  private keys(): TemplateResult {
    const words = CLINIC_WORDS;
    return html`<section>
      <h2>${words['keys-title'].text}</h2>
      <p role="status" class="voice">${this.said}</p>
      <details>
        <summary>${words.change.text}</summary>
        <passphrase-twice
          .presentLabel=${words.present.text}
          .label=${words.next.text}
          .action=${words.change.text}
          .refusal=${this.refusal}
          .busy=${this.busy}
          @passphrase-chosen=${(event: PassphraseChosen) => void this.change(event)}
        ></passphrase-twice>
      </details>
      <details>
        <summary>${words['new-code'].text}</summary>
        <form novalidate @submit=${(event: SubmitEvent) => void this.newCode(event)}>
          <p>${words['new-code-explain'].text}</p>
          ${secretField({
            id: 'code-secret',
            label: words.present.text,
            value: this.present,
            shown: this.shown,
            purpose: 'current-password',
            type: (value) => (this.present = value),
          })}
          ${showButton(this.shown, () => (this.shown = !this.shown))}
          <p role="alert" class="voice">${this.codeRefusal}</p>
          <button type="submit" ?disabled=${this.busy}>
            ${this.busy ? DOOR_WORDS.opening.text : words['new-code'].text}
          </button>
        </form>
      </details>
    </section>`;
  }

  /** Does something with the keys, which takes a moment; gives why it was refused, or nothing. */
  private async withKeys(work: () => Promise<void>): Promise<string> {
    this.busy = true;
    this.said = '';
    await this.updateComplete;
    await new Promise(requestAnimationFrame);
    try {
      await work();
      return '';
    } catch (error) {
      return storeWords(error);
    } finally {
      this.busy = false;
    }
  }

  private async change({ target, detail: { present, next } }: PassphraseChosen): Promise<void> {
    const form = target as PassphraseTwice;
    this.refusal = await this.withKeys(() => this.door.changePassphrase(present, next));
    if (this.refusal !== '') return;
    form.clear();
    form.closest('details')?.removeAttribute('open');
    this.said = CLINIC_WORDS.changed.text;
  }

  private async newCode(event: SubmitEvent): Promise<void> {
    event.preventDefault();
    this.codeRefusal = await this.withKeys(async () => {
      this.code = await this.door.newRecoveryCode(this.present);
      this.present = '';
    });
  }

  private codeKept(): void {
    this.code = undefined;
    this.said = CLINIC_WORDS['new-code-done'].text;
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('h1')?.focus());
  }
}
