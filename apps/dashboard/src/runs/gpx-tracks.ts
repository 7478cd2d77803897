import { SaxesParser } from 'saxes';
import type { Place } from './great-circle.ts';
import { RunFileError } from './run-file-error.ts';

/** A point of a track. */
export interface TrackPoint extends Place {
  /** since 1970 [ms]; null where none, or none that can be read, was written */
  readonly timeMs: number | null;
  /** minutes that the clock of the place is before UTC; null where the time was written in UTC, as the format asks */
  readonly offsetMin: number | null;
}

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

/**
 * The tracks of a GPX file of version 1.0 or 1.1; routes, waypoints, heart rates and whatever else stands in it are passed over.
 * Nothing that a file defines for itself is filled in: one that begins to define is refused at once.
 *
 * @param text - the whole file [-]
 * @returns tracks that have a point [-]
 * @throws {@link RunFileError}
 * Source: GPX 1.1 Schema Documentation (trk, trkseg, trkpt, time in UTC), from memory
 */
export function gpxTracks(text: string): readonly Track[] {
  if (text.trim() === '') throw new RunFileError('empty', '0');
  if (!text.trimStart().startsWith('<')) throw new RunFileError('not-xml', text.trim().slice(0, 20));
  const parser = new SaxesParser();
  const path: string[] = [];
  const tracks: TrackPoint[][][] = [];
  let point: { latitude: number; longitude: number; time: string } | undefined;
  parser.on('doctype', (given) => {
    throw new RunFileError(/^\s*html\b/i.test(given) ? 'web-page' : 'definitions', given.trim().slice(0, 20));
  });
  parser.on('error', (error) => {
    if (/^html$/i.test(path[0] ?? '')) throw new RunFileError('web-page', 'html');
    throw new RunFileError(
      path.length === 0 && tracks.length === 0 ? 'not-xml' : 'damaged',
      error.message.slice(0, 80),
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
    point = { latitude: placeOf(lat, 90, parser.line), longitude: placeOf(lon, 180, parser.line), time: '' };
  });
  parser.on('text', (part) => {
    if (point !== undefined && path.length === 5 && path[4] === 'time') point.time += part;
  });
  parser.on('closetag', () => {
    if (path.length === 4 && point !== undefined) {
      const { latitude, longitude, time } = point;
      tracks
        .at(-1)
        ?.at(-1)
        ?.push({ latitude, longitude, ...timeOf(time) });
      point = undefined;
    }
    path.pop();
  });
  parser.write(text).close();
  const filled = tracks.map((track) => track.filter((one) => one.length > 0)).filter((track) => track.length > 0);
  if (filled.length === 0) throw new RunFileError('no-track', String(tracks.length));
  return filled;
}
