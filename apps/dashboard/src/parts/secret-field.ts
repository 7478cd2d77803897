import { DOOR_WORDS } from '@surae/shared';
import { html, nothing, type TemplateResult } from 'lit';

/** A field for a passphrase or a recovery code. */
export interface SecretField {
  readonly id: string;
  readonly label: string;
  readonly help?: string;
  /** what is wrong with it; undefined for nothing */
  readonly problem?: string | undefined;
  readonly value: string;
  /** typed in the open */
  readonly shown: boolean;
  readonly purpose: 'current-password' | 'new-password';
  readonly type: (value: string) => void;
}

/** The field with its label, and its help or what is wrong with it. */
export function secretField({ id, label, help, problem, value, shown, purpose, type }: SecretField): TemplateResult {
  const told = problem ?? help;
  return html`<div>
    <label for=${id}>${label}</label>
    <input
      id=${id}
      type=${shown ? 'text' : 'password'}
      autocomplete=${purpose}
      autocapitalize="off"
      spellcheck="false"
      aria-invalid=${problem === undefined ? nothing : 'true'}
      aria-describedby=${`${id}-help`}
      .value=${value}
      @input=${(event: InputEvent) => type((event.target as HTMLInputElement).value)}
    />
    <p id=${`${id}-help`} aria-live="polite" class=${problem === undefined ? 'quiet' : 'voice'}>${told ?? ''}</p>
  </div>`;
}

/** The button that shows what is typed, or hides it again. */
export function showButton(shown: boolean, turn: () => void): TemplateResult {
  return html`<button class="plain show" type="button" aria-pressed=${String(shown)} @click=${turn}>
    ${DOOR_WORDS.show.text}
  </button>`;
}
