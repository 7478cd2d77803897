import type { SavedFile } from '../result/set-files.ts';
import { sheetFile } from '../sheet/sheet-file.ts';
import { type Reported, reportSheet } from './report-sheet.ts';
import { reportStyle } from './report-style.ts';

/** The report as one file without a script; its own name holds the day and nobody's name. */
export function reportFile(reported: Reported): SavedFile {
  const parts = reportSheet(reported);
  const title = parts.find((part) => part.kind === 'title')?.text ?? '';
  const name = `surae-report-${reported.visit.begunAt.slice(0, 10).replaceAll('-', '')}.html`;
  return sheetFile(name, title, parts, reportStyle.cssText);
}
