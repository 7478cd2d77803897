import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { siteFolder } from './site.mjs';

/** What has to arrive before the first page is there: the page and all scripts and styles that it names, gzipped [KiB]. */
export function startBundleKib() {
  const page = readFileSync(join(siteFolder, 'index.html'), 'utf8');
  const named = [...page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.(?:js|css))"/g)].map((match) => match[1]);
  const files = ['index.html', ...named].map((name) => readFileSync(join(siteFolder, name)));
  return {
    kib: files.reduce((sum, bytes) => sum + gzipSync(bytes, { level: 9 }).length, 0) / 1024,
    files: files.length,
  };
}
