// read where the page is built, so that one number says which version it is
const versions = import.meta.glob<string>('../../package.json', { import: 'version', eager: true });

/** Name and version of this software, as they stand beside every result. */
export function softwareName(): string {
  return `surae ${Object.values(versions).join('')}`;
}
