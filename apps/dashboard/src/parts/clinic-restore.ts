import { consume } from '@lit/context';
import { CLINIC_WORDS } from '@surae/shared';
import { type BackupReport, type RecordStore, type RestoreReport, StorageError } from '@surae/storage';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { sourceOf } from '../clinic/backup-work.ts';
import type { ClinicDoor } from '../clinic/clinic-door.ts';
import { sizeWords } from '../clinic/size-words.ts';
import { doorContext, storeContext } from '../contexts/capabilities.ts';
import { storeWords } from '../live/store-words.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { fieldStyle } from './field-style.ts';
import { secretField, showButton } from './secret-field.ts';
import { secretStyle } from './secret-style.ts';

/** Why nothing of a backup was taken. */
function refusedWords(error: unknown): string {
  const isNewer = error instanceof StorageError && error.code === 'newer-version';
  return isNewer ? CLINIC_WORDS['restore-newer'].text : storeWords(error);
}

/** A backup is looked into, and then added to the clinic that is open. */
@customElement('clinic-restore')
export class ClinicRestore extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    secretStyle,
    css`
      :host {
        display: grid;
        gap: var(--gap-3);
        max-inline-size: 44rem;
      }
      p {
        margin: 0;
      }
    `,
  ];

  @consume({ context: storeContext }) private readonly store!: RecordStore;
  @consume({ context: doorContext }) private readonly door!: ClinicDoor;
  @state() private file: File | undefined;
  /** the file is encrypted by keys that this clinic does not have */
  @state() private isAsked = false;
  @state() private secret = '';
  @state() private shown = false;
  @state() private report: BackupReport | undefined;
  @state() private receipt: RestoreReport | undefined;
  @state() private busy: 'reading' | 'working' | undefined;
  @state() private refusal = '';

  private async choose(input: HTMLInputElement): Promise<void> {
    const [file] = input.files ?? [];
    if (file === undefined) return;
    this.file = file;
    this.isAsked = false;
    this.secret = '';
    await this.look();
    // the same file, after another one, can be chosen again
    input.value = '';
  }

  /** Reads the file to its end and writes nothing. */
  private async look(): Promise<void> {
    const { file } = this;
    if (file === undefined) return;
    this.report = undefined;
    this.receipt = undefined;
    this.refusal = '';
    this.busy = 'reading';
    try {
      this.report = await this.store.checkBackup(sourceOf(file), this.isAsked ? this.secret : undefined);
    } catch (error) {
      const isLocked = error instanceof StorageError && error.code === 'locked';
      if (isLocked) this.isAsked = true;
      else this.refusal = refusedWords(error);
    }
    this.busy = undefined;
  }

  private async add(): Promise<void> {
    const { file } = this;
    if (file === undefined) return;
    this.busy = 'working';
    this.refusal = '';
    try {
      const opened = this.isAsked ? { secret: this.secret } : {};
      // what is missing was shown before
      const receipt = await this.store.restore(sourceOf(file), { ...opened, evenIfDamaged: true });
      this.receipt = receipt;
      this.report = undefined;
      await this.door.open?.audit.write('restored', null, {
        added: receipt.added,
        known: receipt.alreadyThere,
        refused: receipt.refused.length,
      });
    } catch (error) {
      this.refusal = storeWords(error);
    }
    this.busy = undefined;
  }

  override render(): TemplateResult {
    const words = CLINIC_WORDS;
    return html`
      <p>${words['restore-explain'].text}</p>
      <div>
        <label for="backup">${words['restore-file'].text}</label>
        <input
          id="backup"
          type="file"
          accept=".jsonl"
          @change=${(event: Event) => void this.choose(event.currentTarget as HTMLInputElement)}
        />
      </div>
      ${this.isAsked ? this.ask() : nothing}
      <p role="status" class="quiet">
        ${this.busy === undefined ? '' : words[this.busy === 'reading' ? 'restore-reading' : 'restore-working'].text}
      </p>
      <p role="alert" class="voice">${this.refusal}</p>
      ${this.report === undefined ? nothing : this.holds(this.report)}
      <p role="status">${this.receipt === undefined ? '' : this.receiptWords(this.receipt)}</p>
    `;
  }

  private ask(): TemplateResult {
    return html`<form
      novalidate
      @submit=${(event: SubmitEvent) => {
        event.preventDefault();
        void this.look();
      }}
    >
      ${secretField({
        id: 'backup-secret',
        label: CLINIC_WORDS['restore-secret'].text,
        value: this.secret,
        shown: this.shown,
        purpose: 'current-password',
        type: (value) => (this.secret = value),
      })}
      ${showButton(this.shown, () => (this.shown = !this.shown))}
      <button type="submit" ?disabled=${this.busy !== undefined}>${CLINIC_WORDS['restore-look'].text}</button>
    </form>`;
  }

  private holds({ documents, streams, bytes, isWhole, problems }: BackupReport): TemplateResult {
    const words = CLINIC_WORDS;
    const counts = { documents: documents.whole, streams: streams.whole, size: sizeWords(bytes) };
    const lost = { documents: documents.missing.length, streams: streams.missing.length, places: problems.length };
    return html`<div role="status">
        <p>${fill(words['restore-holds'], { file: this.file?.name ?? '', ...counts })}</p>
        ${isWhole ? nothing : html`<p class="voice">${fill(words['restore-damaged'], lost)}</p>`}
      </div>
      <button type="button" ?disabled=${this.busy !== undefined} @click=${() => void this.add()}>
        ${words[isWhole ? 'restore-write' : 'restore-write-whole'].text}
      </button>`;
  }

  private receiptWords({ added, alreadyThere, refused }: RestoreReport): string {
    const erased = refused.filter(({ why }) => why === 'erased').length;
    return fill(CLINIC_WORDS['restore-receipt'], {
      added,
      known: alreadyThere,
      erased,
      refused: refused.length - erased,
    });
  }
}
