import { DOOR_WORDS } from '@surae/shared';
import { leastPassphraseLength } from '@surae/storage';
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { passphraseProblem } from '../clinic/passphrase-form.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { fieldStyle } from './field-style.ts';
import { secretField, showButton } from './secret-field.ts';
import { secretStyle } from './secret-style.ts';

/** A passphrase was typed twice alike; with the present one, where that was asked for. */
export type PassphraseChosen = CustomEvent<{ readonly present: string; readonly next: string }>;

/** A form in which a passphrase is typed twice. Tells `passphrase-chosen`. */
@customElement('passphrase-twice')
export class PassphraseTwice extends LitElement {
  static override styles = [base, fieldStyle, secretStyle];

  /** label of the field for the present passphrase; empty where there is none yet */
  @property() presentLabel = '';
  @property() label = DOOR_WORDS.passphrase.text;
  @property() action = '';
  /** why it was not taken by whoever was told; empty for nothing */
  @property() refusal = '';
  @property({ type: Boolean }) busy = false;
  @state() private present = '';
  @state() private once = '';
  @state() private again = '';
  @state() private shown = false;
  @state() private sent = false;

  /** Forgets what was typed. */
  clear(): void {
    this.present = '';
    this.once = '';
    this.again = '';
    this.sent = false;
  }

  override render(): TemplateResult {
    const least = { least: leastPassphraseLength };
    const problem = this.sent ? passphraseProblem(this.once, this.again) : undefined;
    const { shown } = this;
    return html`<form novalidate @submit=${this.send}>
      ${
        this.presentLabel === ''
          ? nothing
          : secretField({
              id: 'present',
              label: this.presentLabel,
              value: this.present,
              shown,
              purpose: 'current-password',
              type: (value) => (this.present = value),
            })
      }
      ${secretField({
        id: 'once',
        label: this.label,
        help: fill(DOOR_WORDS['passphrase-help'], least),
        problem: problem === 'too-short' ? fill(DOOR_WORDS['too-short'], least) : undefined,
        value: this.once,
        shown,
        purpose: 'new-password',
        type: (value) => (this.once = value),
      })}
      ${secretField({
        id: 'again',
        label: DOOR_WORDS.again.text,
        problem: problem === 'not-alike' ? DOOR_WORDS['not-alike'].text : undefined,
        value: this.again,
        shown,
        purpose: 'new-password',
        type: (value) => (this.again = value),
      })}
      ${showButton(shown, () => (this.shown = !this.shown))}
      <p role="alert" class="voice">${this.refusal}</p>
      <button class="main" type="submit" ?disabled=${this.busy}>
        ${this.busy ? DOOR_WORDS.opening.text : this.action}
      </button>
    </form>`;
  }

  private readonly send = (event: SubmitEvent): void => {
    event.preventDefault();
    this.sent = true;
    const problem = passphraseProblem(this.once, this.again);
    if (problem !== undefined) {
      this.renderRoot.querySelector<HTMLInputElement>(problem === 'too-short' ? '#once' : '#again')?.focus();
      return;
    }
    const detail = { present: this.present, next: this.once };
    this.dispatchEvent(new CustomEvent('passphrase-chosen', { detail }));
  };
}
