// Writes apps/dashboard/public/licences.txt: every package that stands in the page or the command line, and its licence.
// node tests/conventions/licences.mjs; with --print it prints and writes nothing
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
export const licencesFile = 'apps/dashboard/public/licences.txt';

/** What the build puts into the worker that keeps the page for days without a network. */
const ofWorker = ['workbox-core', 'workbox-precaching', 'workbox-routing'];

const manifestOf = (folder) => JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));

/** Folder of a package as Node finds it from another one. */
function folderOf(name, from) {
  for (let at = from; at.length >= root.length - 1; at = join(at, '..')) {
    const folder = join(at, 'node_modules', name);
    if (existsSync(join(folder, 'package.json'))) return folder;
  }
  throw new Error(`${name}, which ${from} asks for, is not installed`);
}

/** The text of the licence that a package carries; empty where it carries none. */
function licenceText(folder) {
  const name = readdirSync(folder).find((one) => /^licen[cs]e(\.(md|txt))?$/i.test(one));
  return name === undefined ? '' : readFileSync(join(folder, name), 'utf8').replaceAll('\r\n', '\n').trim();
}

/** Every package that stands in what is handed out, with its licence. */
export function packagesInUse() {
  const found = new Map();
  const take = (name, from) => {
    const folder = folderOf(name, from);
    const { version, license, dependencies = {} } = manifestOf(folder);
    const key = `${name} ${version}`;
    if (found.has(key)) return;
    found.set(key, { key, licence: license ?? 'not named', text: licenceText(folder) });
    for (const one of Object.keys(dependencies)) take(one, folder);
  };
  const workspaces = [
    'shared',
    ...readdirSync(join(root, 'packages')).map((one) => `packages/${one}`),
    'apps/cli',
    'apps/dashboard',
  ];
  for (const workspace of workspaces) {
    const folder = join(root, workspace);
    if (!existsSync(join(folder, 'package.json'))) continue;
    for (const name of Object.keys(manifestOf(folder).dependencies ?? {}))
      if (!name.startsWith('@surae/')) take(name, folder);
  }
  for (const name of ofWorker) take(name, root);
  return [...found.values()].sort((a, b) => (a.key < b.key ? -1 : 1));
}

/** The file as it should be: packages by licence text, so that a text that many share stands once. */
export function licencesText() {
  const packages = packagesInUse();
  const texts = new Map();
  for (const { key, licence, text } of packages) {
    const id = `${licence}\n${text}`;
    texts.set(id, { licence, text, keys: [...(texts.get(id)?.keys ?? []), key] });
  }
  const parts = [...texts.values()].map(
    ({ licence, text, keys }) => `${keys.join('\n')}\n\nLicence: ${licence}\n${text === '' ? '' : `\n${text}\n`}`,
  );
  const rule = `\n${'-'.repeat(78)}\n\n`;
  return `Surae is made of these packages, each under its own licence. Written by tests/conventions/licences.mjs.\n${rule}${parts.join(rule)}`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  if (process.argv.includes('--print')) process.stdout.write(licencesText());
  else writeFileSync(join(root, licencesFile), licencesText());
}
