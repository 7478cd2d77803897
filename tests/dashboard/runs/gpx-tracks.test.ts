import fc from 'fast-check';
import { expect, test } from 'vitest';
import { gpxTracks } from '../../../apps/dashboard/src/runs/gpx-tracks.ts';
import { RunFileError } from '../../../apps/dashboard/src/runs/run-file-error.ts';
import { gpxText, steady } from '../../support/made-gpx.ts';

function codeOf(text: string): string {
  try {
    gpxTracks(text);
  } catch (error) {
    if (error instanceof RunFileError) return error.code;
    throw error;
  }
  return 'read';
}

const point = '<trkpt lat="46.5" lon="7.25"><time>2026-03-01T09:00:00Z</time></trkpt>';
const inTrack = (inside: string): string => `<gpx><trk><trkseg>${inside}</trkseg></trk></gpx>`;

test('tracks, segments and points come as they stand; what is beside them is passed over', () => {
  const text = `<gpx><wpt lat="1" lon="1"/><rte><rtept lat="2" lon="2"/></rte><trk><time>1999-01-01T00:00:00Z</time><trkseg>${point}<trkpt lat="-1" lon="-179.5"><extensions><x><time>2001-01-01T00:00:00Z</time></x></extensions></trkpt></trkseg><trkseg></trkseg></trk><trk><trkseg>${point}</trkseg></trk></gpx>`;
  const at = { latitude: 46.5, longitude: 7.25, timeMs: Date.UTC(2026, 2, 1, 9), offsetMin: null, cadence: null };
  expect(gpxTracks(text)).toEqual([
    [[at, { latitude: -1, longitude: -179.5, timeMs: null, offsetMin: null, cadence: null }]],
    [[at]],
  ]);
  // with a prefix, as some write it
  expect(
    gpxTracks('<g:gpx xmlns:g="urn:x"><g:trk><g:trkseg><g:trkpt lat="1" lon="2"/></g:trkseg></g:trk></g:gpx>'),
  ).toHaveLength(1);
});

test.each([
  ['2026-03-01T09:00:00Z', Date.UTC(2026, 2, 1, 9), null],
  ['2026-03-01T09:00:00.500Z', Date.UTC(2026, 2, 1, 9) + 500, null],
  // the format counts in UTC
  ['2026-03-01T09:00:00', Date.UTC(2026, 2, 1, 9), null],
  ['2026-03-01T09:00:00+00:00', Date.UTC(2026, 2, 1, 9), null],
  ['2026-03-01T09:00:00+05:30', Date.UTC(2026, 2, 1, 3, 30), 330],
  ['2026-03-01T09:00:00-08:00', Date.UTC(2026, 2, 1, 17), -480],
  ['1 March 2026', null, null],
  ['2026-13-01T09:00:00Z', null, null],
  ['', null, null],
])('the time %s is read as it is meant, or not at all', (text, timeMs, offsetMin) => {
  const read = gpxTracks(inTrack(`<trkpt lat="1" lon="1"><time>${text}</time></trkpt>`)).flat(2);
  expect(read).toMatchObject([{ timeMs, offsetMin }]);
});

test.each([
  ['<extensions><p:ext><p:cad>83</p:cad></p:ext></extensions>', 83],
  ['<extensions><cadence> 166.5 </cadence></extensions>', 166.5],
  ['<extensions><ext><cad>0</cad><hr>150</hr></ext></extensions>', 0],
  // no rate, none of a point, or none that can be read
  ['<extensions><ext><hr>150</hr></ext></extensions>', null],
  ['<cmt>cad 83</cmt><cad>83</cad>', null],
  ['<extensions><cad></cad></extensions>', null],
  ['<extensions><cad>fast</cad></extensions>', null],
  ['<extensions><cad>-1</cad></extensions>', null],
])('of %s the steps a minute are %s', (inside, cadence) => {
  const text = inTrack(`<trkpt lat="1" lon="1">${inside}</trkpt>`).replace('<gpx>', '<gpx xmlns:p="urn:p">');
  expect(gpxTracks(text).flat(2)).toMatchObject([{ cadence }]);
});

test('a file is read the same in pieces: signs of two units may be cut anywhere', () => {
  const long = `<name>${'\u{1F3C3}'.repeat(1 << 17)}x</name>`;
  const told: number[] = [];
  const text = `<gpx><trk>${long}<trkseg>${point}</trkseg></trk></gpx>`;
  expect(gpxTracks(text, (done) => told.push(done)).flat(2)).toHaveLength(1);
  expect(told[0]).toBe(0);
  expect(told.length).toBeGreaterThan(1);
});

test.each([
  ['', 'empty'],
  [' \n', 'empty'],
  ['{"lat": 1}', 'not-xml'],
  ['<', 'not-xml'],
  ['<!DOCTYPE html><html><body>Sign in</body></html>', 'web-page'],
  ['<html><br></html>', 'web-page'],
  ['<kml><Document/></kml>', 'other-xml'],
  ['<gpx></gpx>', 'no-track'],
  ['<gpx><trk><trkseg/></trk></gpx>', 'no-track'],
  ['<gpx><rte><rtept lat="1" lon="1"/></rte></gpx>', 'no-track'],
  [inTrack('<trkpt lat="91" lon="0"/>'), 'bad-position'],
  [inTrack('<trkpt lat="1"/>'), 'bad-position'],
  [inTrack('<trkpt lat="" lon="0"/>'), 'bad-position'],
  [inTrack('<trkpt lat="NaN" lon="0"/>'), 'bad-position'],
  [inTrack(`${point}&nothing;`), 'damaged'],
  [inTrack(point).slice(0, -20), 'damaged'],
  [`${inTrack(point)}<gpx/>`, 'damaged'],
])('%j is refused as %s', (text, code) => {
  expect(codeOf(text)).toBe(code);
});

test('a file that defines what grows a thousandfold is refused at its head, before anything is filled in', () => {
  const grow = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i'].map(
    (name, i, all) => `<!ENTITY ${name} "${i === 0 ? 'ha' : `&${all[i - 1]};`.repeat(10)}">`,
  );
  expect(codeOf(`<!DOCTYPE gpx [${grow.join('')}]>${inTrack(`${point}<name>&i;</name>`)}`)).toBe('definitions');
  expect(codeOf(`<!DOCTYPE gpx [<!ENTITY x SYSTEM "file:///etc/hostname">]>${inTrack(point)}`)).toBe('definitions');
});

test('a file that is cut off anywhere, or has any one sign changed, is read or refused with a code, and never breaks otherwise', () => {
  const whole = gpxText([[steady(5, 3)]]);
  fc.assert(
    fc.property(fc.nat(whole.length - 2), fc.string({ maxLength: 3 }), fc.boolean(), (at, put, isCut) => {
      const text = isCut ? whole.slice(0, at) : `${whole.slice(0, at)}${put}${whole.slice(at + 1)}`;
      const code = codeOf(text);
      expect(code).toMatch(isCut ? /^(?!read)/ : /./);
    }),
  );
});
