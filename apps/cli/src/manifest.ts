import { dirname, isAbsolute, join } from 'node:path';
import type { Placement, Side } from '@surae/analysis';
import { parseCsvText, type TextTable } from './csv-text.ts';
import { reservedNames } from './frame-columns.ts';
import { isPlacement, isSide, PLACEMENTS, SIDES, TESTS } from './known-words.ts';
import { positiveNumber } from './positive-number.ts';
import { UsageError } from './usage-error.ts';
import type { GivenAbout, WorkItem } from './work-list.ts';

/** Columns that the command itself uses; every other column is handed on as it came. */
const USED = [
  'file',
  'side',
  'test',
  'placement',
  'protocol',
  'heel_lever_mm',
  'body_mass_kg',
  'string_rest_mm',
  'external_mass_kg',
  'ankle_lever_mm',
  'ankle_angle_deg',
] as const;

type Used = (typeof USED)[number];

/**
 * The recordings that a manifest names, in its order. A cell that is empty is unknown: what the command line said fills it.
 * A row that cannot be followed is in the list with its refusal; the others are not touched by it.
 *
 * @throws {@link UsageError} when the manifest as a whole cannot be read
 */
export function readManifest(path: string, bytes: Uint8Array, given: GivenAbout): WorkItem[] {
  const table = tableOf(path, bytes);
  const twice = table.header.find((name, index) => table.header.indexOf(name) !== index);
  if (twice !== undefined) throw new UsageError(`${path}: the column "${twice}" is there twice`);
  if (!table.header.includes('file')) {
    throw new UsageError(
      `${path}: the first line must name a column "file"; it names ${table.header.join(', ') || 'nothing'}`,
    );
  }
  const taken = table.header.find((name) => reservedNames().has(name) && !USED.some((used) => used === name));
  if (taken !== undefined) {
    throw new UsageError(`${path}: the column "${taken}" has the name of a result; give it another`);
  }
  if (table.rows.length === 0) throw new UsageError(`${path}: the manifest names no files`);
  return table.rows.map((row) => item(path, table.header, row, given));
}

function tableOf(path: string, bytes: Uint8Array): TextTable {
  try {
    return parseCsvText(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch (error) {
    const why = error instanceof SyntaxError ? error.message : 'the text is not UTF-8';
    throw new UsageError(`${path}: ${why}`);
  }
}

function item(path: string, header: readonly string[], row: TextTable['rows'][number], given: GivenAbout): WorkItem {
  const place = `${path}, line ${row.line}`;
  const cells = new Map(header.map((name, index) => [name, (row.cells[index] ?? '').trim()]));
  const file = cells.get('file') ?? '';
  const refusals: string[] = [];
  if (row.cells.length !== header.length) {
    refusals.push(`${place}: ${row.cells.length} cells where the first line names ${header.length} columns`);
  }
  if (file === '') refusals.push(`${place}, column file: empty`);
  const word = (column: Used): string | undefined => cells.get(column) || undefined;
  const refuse = (column: Used, came: string, expected: string): undefined => {
    refusals.push(`${place}, column ${column}: expected ${expected}, got "${came}"`);
    return undefined;
  };
  const size = (column: Used): number | undefined => {
    const text = word(column);
    return text === undefined ? undefined : (positiveNumber(text) ?? refuse(column, text, 'a number above 0'));
  };
  const test = word('test') ?? given.test;
  if (test !== undefined && !TESTS.some((known) => known === test)) refuse('test', test, TESTS.join(', '));
  const about: GivenAbout = {
    test,
    placement: placementOf(word('placement'), refuse) ?? given.placement,
    side: sideOf(word('side'), refuse) ?? given.side,
    protocol: word('protocol') ?? given.protocol,
    heelLeverMm: size('heel_lever_mm') ?? given.heelLeverMm,
    bodyMassKg: size('body_mass_kg') ?? given.bodyMassKg,
    stringRestMm: size('string_rest_mm') ?? given.stringRestMm,
    externalMassKg: size('external_mass_kg') ?? given.externalMassKg,
    ankleLeverMm: size('ankle_lever_mm') ?? given.ankleLeverMm,
    ankleAngleDeg: size('ankle_angle_deg') ?? given.ankleAngleDeg,
  };
  return {
    file,
    path: isAbsolute(file) ? file : join(dirname(path), file),
    about,
    carried: Object.fromEntries(
      [...cells].filter(([name, value]) => name !== '' && value !== '' && !USED.some((used) => used === name)),
    ),
    refusal: refusals[0],
  };
}

type Refuse = (column: Used, came: string, expected: string) => undefined;

function placementOf(word: string | undefined, refuse: Refuse): Placement | undefined {
  if (word === undefined || isPlacement(word)) return word;
  return refuse('placement', word, PLACEMENTS.join(', '));
}

function sideOf(word: string | undefined, refuse: Refuse): Side | undefined {
  if (word === undefined || isSide(word)) return word;
  return refuse('side', word, SIDES.join(', '));
}
