import { readFileSync } from 'node:fs';
import type { CDPSession, Page } from 'playwright-core';

/** What the processes of the pages of a browser hold [bytes]. */
export interface PageMemory {
  /** memory that is theirs alone, arrays and pictures too; undefined where the system does not tell */
  readonly ownBytes: number | undefined;
  /** objects of the script, what is waiting to be swept away too */
  readonly heapBytes: number;
}

/** Watches the memory of one page without stopping it. */
export class MemoryWatch {
  private readonly page: CDPSession;
  private readonly browser: CDPSession | undefined;

  private constructor(page: CDPSession, browser: CDPSession | undefined) {
    this.page = page;
    this.browser = browser;
  }

  static async of(page: Page): Promise<MemoryWatch> {
    const context = page.context();
    const session = await context.newCDPSession(page);
    await session.send('Performance.enable');
    return new MemoryWatch(session, await context.browser()?.newBrowserCDPSession());
  }

  async read(): Promise<PageMemory> {
    const { metrics } = await this.page.send('Performance.getMetrics');
    const heapBytes = metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? 0;
    const held = (await this.pageProcesses()).map(ownBytesOf);
    const known = held.length > 0 && held.every((bytes) => bytes !== undefined);
    return { ownBytes: known ? held.reduce((sum, bytes) => sum + bytes, 0) : undefined, heapBytes };
  }

  private async pageProcesses(): Promise<number[]> {
    if (this.browser === undefined) return [];
    const { processInfo } = await this.browser.send('SystemInfo.getProcessInfo');
    return processInfo.filter(({ type }) => type === 'renderer').map(({ id }) => id);
  }
}

function ownBytesOf(pid: number): number | undefined {
  try {
    const line = /^RssAnon:\s+(\d+) kB$/m.exec(readFileSync(`/proc/${pid}/status`, 'utf8'));
    return line === null ? undefined : 1024 * Number(line[1]);
  } catch {
    return undefined;
  }
}
