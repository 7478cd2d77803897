import { consume } from '@lit/context';
import { CLINIC_WORDS } from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { type BackupAge, backupAge } from '../clinic/backup-age.ts';
import type { ClinicDoor } from '../clinic/clinic-door.ts';
import { keptSettings } from '../clinic/device-settings.ts';
import { clockContext, doorContext, type HostClock, storeContext } from '../contexts/capabilities.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** Says that the last backup is old, or that there never was one; never of the demo clinic, which holds nobody. */
@customElement('backup-reminder')
export class BackupReminder extends LitElement {
  static override styles = [base];

  @consume({ context: storeContext }) private readonly store!: RecordStore;
  @consume({ context: doorContext }) private readonly door!: ClinicDoor;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  /** whether there is nobody in the book; undefined until that is known. The reminder is made by the first answer. */
  @property({ attribute: false }) isEmpty: boolean | undefined;
  @state() private backup: BackupAge = { due: false, days: null };

  protected override updated(changed: PropertyValues<this>): void {
    const isFirst = changed.has('isEmpty') && changed.get('isEmpty') === undefined;
    if (isFirst && this.isEmpty !== undefined && this.door.open?.which === 'own') void this.look(this.isEmpty);
  }

  private async look(isEmpty: boolean): Promise<void> {
    const { backupDays } = keptSettings(localStorage);
    const asked = { nowIso: this.clock.isoNow(), backupDays, isEmpty };
    this.backup = backupAge(await this.store.lastBackup(), asked);
  }

  override render(): TemplateResult | typeof nothing {
    const { due, days } = this.backup;
    if (!due) return nothing;
    const code = days === null ? 'backup-due-never' : days === 1 ? 'backup-due-one' : 'backup-due';
    return html`<p class="voice" role="status">
      ${fill(CLINIC_WORDS[code], { days: days ?? 0 })}
      <a href=${hashOf({ page: 'clinic' })}>${CLINIC_WORDS['backup-go'].text}</a>
    </p>`;
  }
}
