import type { Codec } from './codec.ts';
import type { NewDocument } from './document.ts';
import { isReadable } from './readable.ts';
import type { ClockSetBack } from './record-store.ts';
import type { Rows } from './rows.ts';

/** A clock that is right is corrected by less than this [ms]; ours. */
const toleranceMs = 60_000;

/** Notices that the clock of the machine was set back between two documents; the latest time outlives the program. */
export class ClockWatch {
  private readonly isoNow: () => string;
  private readonly rows: Rows;
  private readonly codec: Codec;
  private latest: string | undefined;

  constructor(isoNow: () => string, rows: Rows, codec: Codec) {
    this.isoNow = isoNow;
    this.rows = rows;
    this.codec = codec;
  }

  /** Looks at the clock, and has a note kept where it was set back. */
  async look(note: (document: NewDocument) => Promise<unknown>): Promise<void> {
    const isAt = this.isoNow();
    this.latest ??= await this.kept();
    const wasAt = this.latest;
    const aheadMs = wasAt === undefined ? Infinity : Date.parse(isAt) - Date.parse(wasAt);
    if (Math.abs(aheadMs) <= toleranceMs) return;
    if (aheadMs < 0) {
      const body: ClockSetBack = { wasAt: wasAt!, isAt };
      await note({ kind: 'clock-set-back', schema: 1, about: null, author: 'store', at: isAt, body });
    }
    // after the note: rather two of them than none where the program is killed between
    await this.rows.keepSetting('clock', await this.codec.sealSetting('clock', isAt));
    this.latest = isAt;
  }

  private async kept(): Promise<string | undefined> {
    const value = await this.rows.setting('clock');
    if (value === undefined) return undefined;
    const opened = await this.codec.openSetting('clock', value);
    const time = isReadable(opened) ? opened.value : undefined;
    return typeof time === 'string' && !Number.isNaN(Date.parse(time)) ? time : undefined;
  }
}
