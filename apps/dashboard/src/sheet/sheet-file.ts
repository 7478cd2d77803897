import { legsStyle, paperColours } from '../legs/legs-style.ts';
import type { SavedFile } from '../result/set-files.ts';
import type { SheetPart } from './sheet.ts';
import { element, sheetMarkup } from './sheet-markup.ts';

/** What the page has from its tokens and its base, for a file that stands alone; on paper black on white. */
const ground = `
:root { color-scheme: light; --size-1: 1rem; --size-2: 1.25rem; --size-3: 1.625rem; --gap-1: 4px; --gap-2: 8px; --gap-3: 12px; --gap-4: 16px; --gap-6: 24px; --line: 66ch;
${Object.entries(paperColours)
  .map(([name, value]) => `--${name}: ${value};`)
  .join(' ')} }
* { box-sizing: border-box; }
body { background: var(--paper); color: var(--ink); font: 100%/1.4 system-ui, sans-serif; font-variant-numeric: tabular-nums lining-nums; margin: 0; overflow-wrap: anywhere; }
main { display: flex; flex-direction: column; margin-inline: auto; max-inline-size: 44rem; padding: 16px; }
h1, h2 { line-height: 1.15; margin-block: 0 12px; }
p { margin-block: 0 12px; max-inline-size: var(--line); }
.quiet { color: var(--ink-quiet); }
.code-drawn { background: #fff; block-size: auto; display: block; fill: #000; inline-size: 100%; }
.paper-code { inline-size: min(100%, 16rem); order: 1; }
@media print {
  @page { margin: 14mm; size: A4; }
  :root { --paper: #fff; --ink: #000; --ink-quiet: #000; --hairline: #999; --left: #000; --right: #000; }
  main { display: block; padding: 0; }
  .paper-code { float: inline-end; inline-size: 3cm; margin-inline-start: 10pt; }
}`;

/**
 * A sheet as one file that needs nothing else: no script and no address to follow. It opens from a disk without a network; its
 * own policy lets it load nothing.
 */
export function sheetFile(name: string, title: string, parts: readonly SheetPart[], style = ''): SavedFile {
  const content = [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    element('title', title),
    `<style>${ground}${legsStyle.cssText}${style}</style>`,
    '</head>',
    '<body>',
    '<main>',
    ...sheetMarkup(parts),
    '</main>',
    '</body>',
    '</html>',
    '',
  ].join('\n');
  return { name, type: 'text/html', content };
}
