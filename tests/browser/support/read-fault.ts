import type { Sentence } from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { fill } from '../../../apps/dashboard/src/words/fill.ts';
import { PAGE_FAULTS, type PageFault, type PageFaultName } from './page-faults.ts';

/** Blanks that hold words; all others hold a number. */
const wordBlanks = ['names', 'before', 'file', 'reason'];

/** A sentence as a pattern: the reason in it is the sentence behind it, where there is one. */
function pattern([outer, ...inner]: readonly Sentence[], values: Readonly<Record<string, string | number>>): RegExp {
  const escaped = (text: string): string => text.replace(/[.*+?^$()|[\]\\]/g, '\\$&');
  const filled = escaped(outer.text).replace(/\{(\w+)\}/g, (_blank, name: string) => {
    if (name in values) return escaped(String(values[name]));
    if (name === 'reason' && inner.length > 0) return inner.map(({ text }) => escaped(text)).join('.*');
    return wordBlanks.includes(name) ? '.+' : '\\d[\\d.]*';
  });
  return new RegExp(filled);
}

/**
 * Waits until the words of a fault stand on the page, with the way on ready to be pressed, and prints how it was made.
 *
 * @param values - what the blanks of its first sentence must hold; any other may hold anything
 */
export async function reads(
  page: Page,
  name: PageFaultName,
  values: Readonly<Record<string, string | number>> = {},
): Promise<void> {
  const { done, made, reads: sentences, way }: PageFault = PAGE_FAULTS[name];
  const isNested = sentences[0].text.includes('{reason}');
  const wanted = isNested ? [pattern(sentences, values)] : sentences.map((one) => pattern([one], values));
  const said: string[] = [];
  for (const words of wanted) {
    const shown = page.getByText(words).first();
    await shown.waitFor();
    said.push((await shown.innerText()).replaceAll(/\s+/g, ' ').trim());
  }
  if (way !== null) {
    const button = page.getByRole('button', { name: fill(way) });
    const next = button.or(page.getByRole('link', { name: fill(way) })).first();
    await next.waitFor();
    await expect.poll(() => next.isEnabled()).toBe(true);
  }
  process.stdout.write(`On the page, by ${made}: ${done}: "${said.join(' ')}"\n`);
}
