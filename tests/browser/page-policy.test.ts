import { expect, test } from 'vitest';
import { openContext, startBrowser } from './support/browser.mjs';
import { findChromium } from './support/chromium.mjs';
import { serveSite } from './support/site.mjs';

// The other tests fail on anything that a page does against its policy; here the policy itself is tried.
test.skipIf(findChromium() === undefined)(
  'the page runs and loads its own files only: what is put into it is refused',
  { timeout: 60_000 },
  async () => {
    const site = await serveSite();
    const browser = await startBrowser();
    try {
      const page = await (await openContext(browser)).newPage();
      const answered: string[] = [];
      page.on('response', (response) => answered.push(response.url()));
      await page.goto(site.origin);
      await page.locator('start-page').waitFor();
      const refused = await page.evaluate(async () => {
        const seen: string[] = [];
        document.addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI }) => {
          // the library of distributions tries whether text becomes code and goes on without; it may come now or earlier
          if (blockedURI !== 'eval') seen.push(`${effectiveDirective} ${blockedURI}`);
        });
        const add = (tag: string, properties: object): void => {
          document.body.append(Object.assign(document.createElement(tag), properties));
        };
        add('script', { textContent: 'globalThis.ranInline = true' });
        add('script', { src: 'https://elsewhere.invalid/a.js' });
        add('style', { textContent: 'body { color: red }' });
        add('img', { src: 'https://elsewhere.invalid/a.png' });
        add('iframe', { src: 'https://elsewhere.invalid/' });
        const markup = document.createElement('p');
        // as a name out of a file would, were it ever taken for markup
        markup.innerHTML = '<img src="x:" onerror="globalThis.ranInline = true"><b style="color: red">x</b>';
        document.body.append(markup);
        await fetch('https://elsewhere.invalid/b').catch(() => undefined);
        // the events come some frames later
        for (let frame = 0; frame < 600 && seen.length < 9; frame += 1) await new Promise(requestAnimationFrame);
        const becomesCode = ((): boolean => {
          try {
            return globalThis.eval('true') === true;
          } catch {
            return false;
          }
        })();
        return { seen: [...new Set(seen)].sort(), ran: 'ranInline' in globalThis || becomesCode };
      });
      expect(refused.ran).toBe(false);
      expect(refused.seen).toEqual([
        'connect-src https://elsewhere.invalid/b',
        'frame-src https://elsewhere.invalid',
        'img-src https://elsewhere.invalid/a.png',
        'img-src x',
        'script-src-attr inline',
        'script-src-elem https://elsewhere.invalid/a.js',
        'script-src-elem inline',
        'style-src-attr inline',
        'style-src-elem inline',
      ]);
      expect(answered.filter((url) => !url.startsWith(site.origin))).toEqual([]);
    } finally {
      await browser.close();
      await site.close();
    }
  },
);
