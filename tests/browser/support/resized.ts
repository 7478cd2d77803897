import type { Page } from 'playwright-core';

/** Makes the window of a page this large, and waits until the page is: a busy machine tells it later. */
export async function resized(page: Page, size: { readonly width: number; readonly height: number }): Promise<void> {
  await page.setViewportSize(size);
  await page.waitForFunction(
    ({ width, height }) =>
      innerWidth === width && innerHeight === height && document.body.getBoundingClientRect().width <= width,
    size,
  );
}
