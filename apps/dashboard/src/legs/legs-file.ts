import type { SavedFile } from '../result/set-files.ts';
import { sheetFile } from '../sheet/sheet-file.ts';
import { legsSheet } from './legs-sheet.ts';
import { type LegsView, legsTitle } from './legs-view.ts';

/**
 * What somebody is shown of their visit as one file that needs nothing else: no script, no address to follow, no name. The code
 * for a phone of their own is in it where there is an address.
 */
export function legsFile(view: LegsView, address = ''): SavedFile {
  const name = `surae-my-two-legs-${view.at.slice(0, 10).replaceAll('-', '')}.html`;
  return sheetFile(name, legsTitle(view), legsSheet(view, address));
}
