import { consume } from '@lit/context';
import { CLINIC_WORDS } from '@surae/shared';
import type { BackupNote, RecordStore } from '@surae/storage';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { backupName, madeBackup } from '../clinic/backup-work.ts';
import type { ClinicDoor } from '../clinic/clinic-door.ts';
import { backupChoices } from '../clinic/device-settings.ts';
import { sizeWords } from '../clinic/size-words.ts';
import { clockContext, doorContext, type HostClock, storeContext } from '../contexts/capabilities.ts';
import { storeWords } from '../live/store-words.ts';
import { saveBlob } from '../result/save-file.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import './chip-choice.ts';
import type { ChipChosen } from './chip-choice.ts';

/** When the last backup was, and how one is saved. Tells `days-chosen`. */
@customElement('clinic-backup')
export class ClinicBackup extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        gap: var(--gap-3);
        max-inline-size: 44rem;
      }
      p {
        margin: 0;
      }
      button {
        justify-self: start;
      }
    `,
  ];

  /** days after which a backup counts as old */
  @property({ attribute: false }) days = 0;
  @consume({ context: storeContext }) private readonly store!: RecordStore;
  @consume({ context: doorContext }) private readonly door!: ClinicDoor;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private last: BackupNote | null | undefined;
  @state() private busy = false;
  @state() private said = '';

  override connectedCallback(): void {
    super.connectedCallback();
    void this.look();
  }

  private async look(): Promise<void> {
    try {
      this.last = await this.store.lastBackup();
    } catch (error) {
      this.said = storeWords(error);
    }
  }

  private async save(): Promise<void> {
    this.busy = true;
    this.said = '';
    try {
      const made = await madeBackup(this.store, this.clock.isoNow());
      saveBlob(made.blob, backupName(made.note.at));
      await this.store.noteBackup(made.note);
      const { documents, streams, bytes } = made.note;
      await this.door.open?.audit.write('backed-up', null, { entries: documents, recordings: streams });
      this.said = fill(CLINIC_WORDS['backup-done'], { documents, streams, size: sizeWords(bytes) });
    } catch (error) {
      this.said = storeWords(error);
    }
    this.busy = false;
    await this.look();
  }

  override render(): TemplateResult {
    const words = CLINIC_WORDS;
    const isOwn = this.door.open?.which === 'own';
    const chips = backupChoices.map((days) => ({
      value: String(days),
      text: days === 1 ? words.day.text : fill(words.days, { days }),
    }));
    return html`
      <p>${words[isOwn ? 'backup-explain-sealed' : 'backup-explain'].text}</p>
      <p class=${this.last === null ? 'voice' : 'quiet'}>${this.lastWords()}</p>
      <button type="button" ?disabled=${this.busy} @click=${() => void this.save()}>
        ${words[this.busy ? 'backup-working' : 'backup-save'].text}
      </button>
      <p role="status" class="voice">${this.said}</p>
      <chip-choice
        legend=${words['backup-remind'].text}
        .chips=${chips}
        .value=${String(this.days)}
        @chip-chosen=${({ detail }: ChipChosen<string>) => {
          if (detail !== null) this.dispatchEvent(new CustomEvent('days-chosen', { detail: Number(detail) }));
        }}
      ></chip-choice>
    `;
  }

  private lastWords(): string {
    if (this.last === undefined) return '';
    if (this.last === null) return CLINIC_WORDS['backup-never'].text;
    const { at, documents, streams } = this.last;
    return fill(CLINIC_WORDS['backup-last'], { date: dayOf(at), documents, streams });
  }
}
