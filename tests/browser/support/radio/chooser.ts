import type { CDPSession, Page } from 'playwright-core';

interface Prompt {
  readonly id: string;
  readonly devices: readonly { readonly id: string; readonly name: string }[];
}

/** Answers the browser's own list of devices in place of a person. */
export class Chooser {
  private readonly session: CDPSession;
  /** a prompt that is answered twice ends the browser */
  private readonly answered = new Set<string>();
  private wanted: { readonly name: string } | 'nothing' | 'leave' = 'leave';

  private constructor(session: CDPSession) {
    this.session = session;
    session.on('DeviceAccess.deviceRequestPrompted', (prompt) => void this.answer(prompt as Prompt));
  }

  static async of(page: Page): Promise<Chooser> {
    const session = await page.context().newCDPSession(page);
    const chooser = new Chooser(session);
    await session.send('DeviceAccess.enable');
    return chooser;
  }

  /** From now on a device of this name is chosen, as soon as it is in the list. */
  choose(name: string): void {
    this.wanted = { name };
  }

  /** From now on the list is closed without a choice. */
  cancel(): void {
    this.wanted = 'nothing';
  }

  private async answer({ id, devices }: Prompt): Promise<void> {
    const { wanted } = this;
    if (this.answered.has(id) || wanted === 'leave') return;
    if (wanted === 'nothing') {
      this.answered.add(id);
      await this.session.send('DeviceAccess.cancelPrompt', { id });
      return;
    }
    const device = devices.find(({ name }) => name === wanted.name);
    if (device === undefined) return;
    this.answered.add(id);
    try {
      await this.session.send('DeviceAccess.selectPrompt', { id, deviceId: device.id });
    } catch {
      // it left the list between the two, or the list was closed: a list that is still open tells of itself again
      this.answered.delete(id);
    }
  }
}
