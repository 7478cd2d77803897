import { expect, test } from 'vitest';
import { sheetFile } from '../../../apps/dashboard/src/sheet/sheet-file.ts';

test('a sheet is one file that runs and loads nothing, in the light colours of the page and black on paper', () => {
  const file = sheetFile('a.html', 'A & B', [{ kind: 'title', text: 'A & B' }], '.own { color: red; }');
  const html = String(file.content);
  expect([file.name, file.type]).toEqual(['a.html', 'text/html']);
  expect(html).toContain(`content="default-src 'none'; style-src 'unsafe-inline'"`);
  expect(html).toContain('<title>A &amp; B</title>');
  expect(html).toMatch(/--left: #2b4c8c;[\s\S]*@media print[\s\S]*--left: #000;[\s\S]*\.own/);
  expect(html).not.toMatch(/<script|<link|<img|https?:|url\(|@import/i);
});
