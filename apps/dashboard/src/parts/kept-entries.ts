import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Entries that the store keeps, as a page lists and changes them, and what became of the last change. */
export class KeptEntries<Entry> implements ReactiveController {
  /** undefined until they were read */
  entries: readonly Entry[] | undefined;
  /** what is said of the last change; empty where nothing is */
  said = '';
  private readonly host: ReactiveControllerHost;
  private readonly read: () => Promise<readonly Entry[]>;
  private readonly notKept: string;

  /**
   * @param read - all entries as they are kept now
   * @param notKept - what is said when the store took a change not
   */
  constructor(host: ReactiveControllerHost, read: () => Promise<readonly Entry[]>, notKept: string) {
    this.host = host;
    this.read = read;
    this.notKept = notKept;
    host.addController(this);
  }

  hostConnected(): void {
    void this.load();
  }

  say(words: string): void {
    this.said = words;
    this.host.requestUpdate();
  }

  /** Makes a change and reads all again; whether the store took it, with what is then said. */
  async change(act: () => Promise<unknown>, said = ''): Promise<boolean> {
    let isKept = true;
    try {
      await act();
    } catch {
      isKept = false;
    }
    this.say(isKept ? said : this.notKept);
    await this.load();
    return isKept;
  }

  private async load(): Promise<void> {
    this.entries = await this.read();
    this.host.requestUpdate();
  }
}
