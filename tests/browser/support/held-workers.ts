import type { Page } from 'playwright-core';

/** Holds back whatever the page asks of its workers from now on; gives a call that lets all of it go. */
export async function holdWorkers(page: Page): Promise<() => Promise<void>> {
  await page.evaluate(() => {
    const held: (() => void)[] = [];
    const { prototype } = Worker;
    const post = Reflect.get(prototype, 'postMessage') as (this: Worker, ...given: readonly unknown[]) => void;
    prototype.postMessage = function (this: Worker, ...given: readonly unknown[]): void {
      held.push(() => post.apply(this, [...given]));
    };
    addEventListener(
      'workers-let-go',
      () => {
        prototype.postMessage = post;
        for (const go of held) go();
      },
      { once: true },
    );
  });
  return () => page.evaluate(() => void dispatchEvent(new Event('workers-let-go')));
}
