import { SaxesParser } from 'saxes';
import type { Place } from './great-circle.ts';
import { RunFileError } from './run-file-error.ts';

/** A point of a track. */
export interface TrackPoint extends Place {
  /** since 1970 [ms]; null where none, or none that can be read, was written */
  readonly timeMs: number | null;
  /** minutes that the clock of the place is before UTC; null where the time was written in UTC, as the format asks */
  readonly offsetMin: number | null;
  /** steps a minute as an extension of the point has it, of one foot or of both; null where none was written [1/min] */
  readonly cadence: number | null;
}

/** Signs of the text that are read between two words about how far it is. */
const TOLD_EVERY = 1 << 18;

/** Names of the element that holds steps a minute, without the prefix of whoever defined it. */
const CADENCES: readonly string[] = ['cad', 'cadence'];

/** Points that were written without a break. */
export type TrackSegment = readonly TrackPoint[];
/** What was recorded in one go, with its breaks. */
export type Track = readonly TrackSegment[];

const TIME = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d+)?(Z|[+-]\d\d:\d\d)?$/;

function timeOf(text: string): Pick<TrackPoint, 'timeMs' | 'offsetMin'> {
  const trimmed = text.trim();
  const [, zone] = TIME.exec(trimmed) ?? [];
  // the format counts in UTC where no zone is written
  const ms = TIME.test(trimmed) ? Date.parse(zone === undefined ? `${trimmed}Z` : trimmed) : Number.NaN;
  if (!Number.isFinite(ms)) return { timeMs: null, offsetMin: null };
  if (zone === undefined || zone === 'Z') return { timeMs: ms, offsetMin: null };
  const minutes = (60 * Number(zone.slice(1, 3)) + Number(zone.slice(4))) * (zone.startsWith('-') ? -1 : 1);
  // some write UTC as an offset of nothing
  return { timeMs: ms, offsetMin: minutes === 0 ? null : minutes };
}

function placeOf(text: string | undefined, most: number, line: number): number {
  const value = text === undefined || text.trim() === '' ? Number.NaN : Number(text);
  if (Math.abs(value) <= most) return value;
  throw new RunFileError('bad-position', `${text === undefined ? '-' : text.slice(0, 20)}, ${line}`);
}

function cadenceOf(text: string): number | null {
  const value = text.trim() === '' ? Number.NaN : Number(text);
  return Number.isFinite(value) && value >= 0 ? value : null;
}

/**
 * The tracks of a GPX file of version 1.0 or 1.1; routes, waypoints, heart rates and whatever else stands in it are passed over,
 * but for the steps a minute that an extension of a point may hold. Nothing that a file defines for itself is filled in: one that begins to define is refused at once.
 *
 * @param text - the whole file [-]
 * @param told - is told how many signs of how many were read [1]
 * @returns tracks that have a point [-]
 * @throws {@link RunFileError}
 * Source: GPX 1.1 Schema Documentation (trk, trkseg, trkpt, time in UTC), from memory
 */
export function gpxTracks(
  text: string,
  told: (done: number, total: number) => void = () => undefined,
): readonly Track[] {
  if (text.trim() === '') throw new RunFileError('empty', '0');
  if (!text.trimStart().startsWith('<')) throw new RunFileError('not-xml', text.trim().slice(0, 20));
  const parser = new SaxesParser();
  const path: string[] = [];
  const tracks: TrackPoint[][][] = [];
  let point: { latitude: number; longitude: number; time: string; cadence: string } | undefined;
  parser.on('doctype', (given) => {
    throw new RunFileError(/^\s*html\b/i.test(given) ? 'web-page' : 'definitions', given.trim().slice(0, 20));
  });
  parser.on('error', () => {
    if (/^html$/i.test(path[0] ?? '')) throw new RunFileError('web-page', 'html');
    throw new RunFileError(
      path.length === 0 && tracks.length === 0 ? 'not-xml' : 'damaged',
      path.length === 0 && tracks.length === 0 ? text.trim().slice(0, 20) : `${parser.line}, ${parser.column}`,
    );
  });
  parser.on('opentag', ({ name: whole, attributes }) => {
    const name = whole.slice(whole.indexOf(':') + 1);
    if (path.length === 0 && name !== 'gpx') {
      throw new RunFileError(/^html$/i.test(name) ? 'web-page' : 'other-xml', whole.slice(0, 20));
    }
    path.push(name);
    const at = path.join(' ');
    if (at === 'gpx trk') tracks.push([]);
    if (at === 'gpx trk trkseg') tracks.at(-1)?.push([]);
    if (at !== 'gpx trk trkseg trkpt') return;
    const { lat, lon } = attributes as Readonly<Record<string, string | undefined>>;
    point = {
      latitude: placeOf(lat, 90, parser.line),
      longitude: placeOf(lon, 180, parser.line),
      time: '',
      cadence: '',
    };
  });
  parser.on('text', (part) => {
    if (point === undefined) return;
    if (path.length === 5 && path[4] === 'time') point.time += part;
    if (path.length > 5 && path[4] === 'extensions' && CADENCES.includes(path.at(-1)!)) point.cadence += part;
  });
  parser.on('closetag', () => {
    if (path.length === 4 && point !== undefined) {
      const { latitude, longitude, time, cadence } = point;
      tracks
        .at(-1)
        ?.at(-1)
        ?.push({ latitude, longitude, ...timeOf(time), cadence: cadenceOf(cadence) });
      point = undefined;
    }
    path.pop();
  });
  for (let at = 0; at < text.length; at += TOLD_EVERY) {
    told(at, text.length);
    parser.write(text.slice(at, at + TOLD_EVERY));
  }
  parser.close();
  const filled = tracks.map((track) => track.filter((one) => one.length > 0)).filter((track) => track.length > 0);
  if (filled.length === 0) throw new RunFileError('no-track', String(tracks.length));
  return filled;
}
