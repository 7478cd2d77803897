import { CHECKSUMS } from './checksums.ts';

/** Folders in the order in which their files are made; what tells of all files stands at the end. */
const PLACES = [
  /^tables\//,
  /^samples\/(?!csv-metadata\.json$)/,
  /^samples\//,
  /^health-records\//,
  /^letters\//,
  /^raw\//,
];
const LAST = ['ro-crate-metadata.json', CHECKSUMS];

function placeOf(name: string): number {
  const place = PLACES.findIndex((folder) => folder.test(name));
  return place >= 0 ? place : PLACES.length + 1 + LAST.indexOf(name);
}

/** Name without its ending: the forms of one table stand together. */
function stemOf(name: string): string {
  return name.slice(0, name.lastIndexOf('.'));
}

function compared(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/**
 * Order of two files in a bundle by their names alone. It is the order in which files can be made one after the other: trial by
 * trial, and last what tells of all of them.
 */
export function inBundleOrder(a: { readonly name: string }, b: { readonly name: string }): number {
  return placeOf(a.name) - placeOf(b.name) || compared(stemOf(a.name), stemOf(b.name)) || compared(a.name, b.name);
}
