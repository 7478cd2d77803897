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

/** Names of the scripts that run before the language is set: the first of the page, and what it imports before it runs. */
export function firstScripts() {
  const page = readFileSync(join(siteFolder, 'index.html'), 'utf8');
  const found = new Set([...page.matchAll(/<script[^>]* src="\.\/assets\/([^"]+)"/g)].map((match) => match[1]));
  // a set that grows is walked to its new end
  for (const name of found) {
    const script = readFileSync(join(siteFolder, 'assets', name), 'utf8');
    for (const [, imported] of script.matchAll(/(?:from|import)\s*["'`]\.\/([^"'`]+\.js)["'`]/g)) found.add(imported);
  }
  return [...found];
}
