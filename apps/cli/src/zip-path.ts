/** The place of a file inside a zip: `study.zip/left/1.csv` is `left/1.csv` in `study.zip`. */
export interface ZipPlace {
  readonly zip: string;
  readonly entry: string;
}

/** Where a path leads into a zip, by its spelling alone; the first part that ends in .zip is the zip. */
export function zipPlace(path: string): ZipPlace | undefined {
  const found = /^(.*?\.zip)[\\/](.+)$/i.exec(path);
  return found === null ? undefined : { zip: found[1]!, entry: found[2]!.replaceAll('\\', '/') };
}

/** Whether a name is that of a zip. */
export function isZip(path: string): boolean {
  return /\.zip$/i.test(path);
}
