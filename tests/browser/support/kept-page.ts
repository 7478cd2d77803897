import type { Browser, CDPSession, Page } from 'playwright-core';
import { openContext, viewport } from './browser.mjs';

/**
 * What may be asked of a context, and of a page, without a trace that outlives its document. Whatever is not named here spoils the page
 * for the tests that follow: a script for every document, a route, a clock, a permission, a header.
 */
const traceless = {
  context: new Set(['browser', 'cookies', 'newPage', 'pages', 'storageState', 'waitForEvent']),
  page: new Set([
    ...['context', 'isClosed', 'mainFrame', 'frames', 'frame', 'url', 'title', 'content', 'viewportSize', 'opener'],
    ...['goto', 'reload', 'setContent', 'bringToFront', 'screenshot', 'pdf', 'requestGC', 'ariaSnapshot'],
    ...['goBack', 'goForward'],
    ...['evaluate', 'evaluateHandle', '$', '$$', '$eval', '$$eval', 'addScriptTag', 'addStyleTag'],
    ...['locator', 'frameLocator', 'getByAltText', 'getByLabel', 'getByPlaceholder', 'getByRole', 'getByTestId'],
    ...['getByText', 'getByTitle', 'click', 'dblclick', 'fill', 'press', 'check', 'uncheck', 'setInputFiles'],
    ...['waitForEvent', 'waitForFunction', 'waitForLoadState', 'waitForRequest', 'waitForResponse', 'waitForURL'],
  ]),
};
/** What a page is set back from between two tests. */
const setBack: ReadonlySet<string> = new Set(['emulateMedia', 'setViewportSize']);

/** What a page is asked to look like before a test asks for something else. */
const asAtFirst = {
  media: null,
  colorScheme: 'light',
  reducedMotion: 'reduce',
  forcedColors: 'none',
  contrast: 'no-preference',
} as const;

/**
 * What a context without a profile stores lies in memory, and no crash tears a log on a disk: the megabytes that make the browser lay its
 * log aside find no room, as on a full device. They are a fifth of what opening the dashboard costs; browsers with a profile write them.
 */
function leaveLog(): void {
  const { prototype } = IDBFactory;
  const open = Reflect.get(prototype, 'open') as (this: IDBFactory, ...given: readonly unknown[]) => IDBOpenDBRequest;
  prototype.open = function (this: IDBFactory, ...given) {
    if (given[0] === 'surae log') throw new DOMException('No log is laid aside here.', 'QuotaExceededError');
    return open.call(this, ...given);
  };
}

/** Calls `heard` whenever one of the public methods of an object is called that is not in a list. */
function listen(object: object, silent: ReadonlySet<string>, heard: (name: string) => void): void {
  const methods = Object.getOwnPropertyDescriptors(Object.getPrototypeOf(object) as object);
  for (const [name, { value }] of Object.entries(methods)) {
    if (typeof value !== 'function' || name.startsWith('_') || name === 'constructor' || silent.has(name)) continue;
    const method = value as (...given: unknown[]) => unknown;
    const own = function (this: unknown, ...given: unknown[]): unknown {
      heard(name);
      return method.apply(this, given);
    };
    Object.defineProperty(object, name, { value: own, configurable: true, writable: true });
  }
}

/**
 * A page that the tests of a worker have one after the other, each with nothing stored: opening another context, with a process of its
 * own that reads and compiles every file of the page anew, costs more than most tests do.
 */
export class KeptPage {
  readonly page: Page;
  private readonly session: CDPSession;
  private readonly origin: string;
  private readonly listeners: string;
  private isSpoiled = false;
  private looksOtherwise = false;

  /** A new page in a context of its own. */
  static async open(browser: Browser, origin: string): Promise<KeptPage> {
    const context = await openContext(browser);
    await context.addInitScript(leaveLog);
    const page = await context.newPage();
    return new KeptPage(page, await context.newCDPSession(page), origin);
  }

  private constructor(page: Page, session: CDPSession, origin: string) {
    this.page = page;
    this.session = session;
    this.origin = origin;
    this.listeners = this.listening();
    const heard = (name: string): void => {
      if (setBack.has(name)) this.looksOtherwise = true;
      else this.isSpoiled = true;
    };
    const context = page.context();
    listen(context, traceless.context, heard);
    listen(page, traceless.page, heard);
    for (const part of [context.clock, context.credentials, context.tracing, page.coverage, page.screencast]) {
      listen(part, new Set(), heard);
    }
  }

  /** Ends a page that no test is to have after this. */
  async end(): Promise<void> {
    await this.page.context().close();
  }

  /**
   * Takes away whatever a test stored and asked for; false where something of it would stay. The files of the page, which the browser
   * has read, stay with it.
   */
  async clear(): Promise<boolean> {
    const { page, session, origin } = this;
    if (this.isSpoiled || page.isClosed() || !page.url().startsWith(origin)) return false;
    if (this.listening() !== this.listeners) return false;
    const others = page
      .context()
      .pages()
      .filter((other) => other !== page);
    for (const other of others) await other.close();
    await page.evaluate(() => {
      sessionStorage.clear();
      window.name = '';
    });
    await page.goto('about:blank');
    await page.mouse.move(-1, -1);
    if (this.looksOtherwise) {
      await page.emulateMedia(asAtFirst);
      await page.setViewportSize(viewport);
      this.looksOtherwise = false;
    }
    await session.send('Storage.clearDataForOrigin', { origin, storageTypes: 'all' });
    await session.send('Page.resetNavigationHistory');
    return true;
  }

  /** How many listen to what of the page and of its context. */
  private listening(): string {
    return [this.page, this.page.context()]
      .map((one) => {
        const emitter = one as unknown as NodeJS.EventEmitter;
        return emitter.eventNames().map((name) => `${String(name)} ${emitter.listenerCount(name)}`);
      })
      .join(', ');
  }
}
