import type { SimulatedSet } from '@surae/simulation';

/** How one assistant saves and names a recording. */
export interface MessyWay {
  readonly folder: string;
  readonly nameOf: (person: string, visit: number, side: 'left' | 'right') => string;
  readonly bytesOf: (rows: readonly HeightRow[]) => Uint8Array;
}

/** A sample of a heel. */
interface HeightRow {
  readonly timeS: number;
  readonly heightM: number;
}

/** The samples of a simulated heel. */
export function heightRows({ trace }: SimulatedSet): HeightRow[] {
  const [group] = trace.groups;
  const heights = group!.channels[0]!.samples;
  return Array.from(group!.timesS, (timeS, at) => ({ timeS, heightM: heights[at]! }));
}

const letters = new TextEncoder();

function utf16(text: string): Uint8Array {
  const bytes = new Uint8Array(2 + 2 * text.length);
  const view = new DataView(bytes.buffer);
  view.setUint16(0, 0xfeff, true);
  for (let at = 0; at < text.length; at += 1) view.setUint16(2 + 2 * at, text.charCodeAt(at), true);
  return bytes;
}

/** Three people who saved what the same sensor sent, each in their own way. */
export const MESSY_WAYS: readonly MessyWay[] = [
  {
    folder: 'room-1',
    nameOf: (person, visit, side) => `${person}_${visit}_${side === 'left' ? 'L' : 'R'}.csv`,
    // a spreadsheet of a place with decimal commas
    bytesOf: (rows) => {
      const line = ({ timeS, heightM }: HeightRow): string =>
        `${timeS.toFixed(4)};${(heightM * 100).toFixed(4)}\r\n`.replaceAll('.', ',');
      return letters.encode(`\uFEFFZeit [s];Ferse [cm]\r\n${rows.map(line).join('')}`);
    },
  },
  {
    folder: 'room-2',
    nameOf: (person, visit, side) => `${side}-${visit}-${person}.txt`,
    // lines of its own above the names, whole milliseconds, and a name that does not say that they are times
    bytesOf: (rows) => {
      const line = ({ timeS, heightM }: HeightRow): string =>
        `${(timeS * 1000).toFixed(1)}\t${(heightM * 1000).toFixed(3)}\n`;
      return letters.encode(`Recorder 3\nGain 1.0\n\nms\theel height (mm)\n${rows.map(line).join('')}`);
    },
  },
  {
    folder: 'ward',
    nameOf: (person, visit, side) => `${person} v${visit} ${side}.csv`,
    // letters of two bytes, and the units on a line of their own
    bytesOf: (rows) => {
      const line = ({ timeS, heightM }: HeightRow): string => `${timeS.toFixed(4)},${heightM.toFixed(6)}\r\n`;
      return utf16(`"t","h"\r\n"s","m"\r\n${rows.map(line).join('')}`);
    },
  },
];
