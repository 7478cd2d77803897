/** A point of a made track: metres north of the equator at longitude 0, and seconds since the start; null for no time. */
export interface MadePoint {
  readonly northM: number;
  readonly s: number | null;
  readonly east?: number;
  /** steps a minute, as an extension of the point */
  readonly cadence?: number;
}

/** Metres of one degree of latitude on a sphere of 6371.0088 km: 2 pi r / 360. */
export const DEGREE_M = 111_195.08;

function steps(cadence: number | undefined): string {
  return cadence === undefined ? '' : `<extensions><point><cad>${cadence}</cad></point></extensions>`;
}

/** The text of a GPX file with these tracks of segments; it begins at a time in UTC or with an offset. */
export function gpxText(
  tracks: readonly (readonly (readonly MadePoint[])[])[],
  start = '2026-03-01T09:00:00Z',
): string {
  const zone = start.slice(19);
  const offset = zone === 'Z' ? 0 : Date.parse(`${start.slice(0, 19)}Z`) - Date.parse(start);
  const time = (s: number): string =>
    `${new Date(Date.parse(start) + offset + 1000 * s).toISOString().slice(0, 19)}${zone}`;
  const point = ({ northM, s, east = 0, cadence }: MadePoint): string =>
    `<trkpt lat="${(northM / DEGREE_M).toFixed(9)}" lon="${east}"><ele>400</ele>${s === null ? '' : `<time>${time(s)}</time>`}${steps(cadence)}</trkpt>`;
  const segments = tracks.map(
    (track) =>
      `<trk><name>a way</name>${track.map((one) => `<trkseg>${one.map(point).join('')}</trkseg>`).join('')}</trk>`,
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n<gpx version="1.1" creator="made" xmlns="urn:made"><metadata><time>2020-01-01T00:00:00Z</time></metadata>${segments.join('')}</gpx>\n`;
}

/** Points at one speed, one every so many seconds. */
export function steady(seconds: number, speed: number, from = { northM: 0, s: 0 }, everyS = 1): readonly MadePoint[] {
  const count = Math.floor(seconds / everyS);
  return Array.from({ length: count + 1 }, (_, i) => ({
    northM: from.northM + i * everyS * speed,
    s: from.s + i * everyS,
  }));
}
