import type { BundleRequest, Extent, Study, TableForm } from '@surae/exchange';
import { studyTables } from '@surae/exchange';

/** What somebody chose on the page. */
export interface ExportChoice {
  /** null is everybody */
  readonly personId: string | null;
  /** null is all visits of the person */
  readonly visitId: string | null;
  readonly tables: readonly TableForm[];
  readonly samples: boolean;
  readonly raw: boolean;
  readonly healthRecords: boolean;
  readonly letters: boolean;
  readonly withoutNames: boolean;
  readonly keepDevices: boolean;
}

/** What is chosen before anybody chooses: the whole clinic as plain tables, without names. */
export const firstChoice: ExportChoice = {
  personId: null,
  visitId: null,
  tables: ['csv'],
  samples: false,
  raw: false,
  healthRecords: false,
  letters: false,
  withoutNames: true,
  keepDevices: false,
};

/** Which part of the record that is. */
export function extentOf({ personId, visitId }: ExportChoice): Extent {
  if (visitId !== null) return { of: 'visits', visitIds: [visitId] };
  return personId === null ? { of: 'clinic' } : { of: 'person', personId };
}

/** The same choice as the packing asks for it; bytes as they were recorded never leave without names. */
export function requestOf(choice: ExportChoice, secret: string, day: string): Omit<BundleRequest, 'progress'> {
  const { tables, samples, raw, healthRecords, letters, withoutNames, keepDevices } = choice;
  return {
    tables,
    samples,
    raw: raw && !withoutNames,
    healthRecords,
    letters,
    deidentify: withoutNames ? { secret, keepDevices } : null,
    writtenOn: day,
  };
}

/** What is in an export, before it is made. */
export interface ExportContent {
  readonly people: number;
  readonly visits: number;
  readonly trials: number;
  readonly tables: readonly { readonly name: string; readonly rows: number; readonly columns: number }[];
}

/** Counts of what would leave, from the documents alone. */
export function contentOf(study: Study): ExportContent {
  return {
    people: study.people.length,
    visits: study.visits.length,
    trials: study.trials.length,
    tables: studyTables(study).map(({ title, rows, columns }) => ({
      name: title,
      rows: rows.length,
      columns: columns.length,
    })),
  };
}

/** Name of the file: when it was made, and nobody in it. */
export function exportName({ withoutNames }: ExportChoice, day: string): string {
  return `surae-study-${day.replaceAll('-', '')}${withoutNames ? '-without-names' : ''}.zip`;
}
