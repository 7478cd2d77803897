import { PROTOCOLS, PULL_PROTOCOLS } from '@surae/shared';
import { toldHelp } from './told-help.ts';

/** The protocols of both tests by name. */
function protocolLines(): string {
  return [...PROTOCOLS, ...PULL_PROTOCOLS].map(({ id }) => `${' '.repeat(24)}${id}`).join('\n');
}

/** The words that the command says about assessing. */
export const ASSESS_HELP = `surae assess FILE|FOLDER|ZIP... | --manifest M.csv | --stdin  [options]

Reads recordings (CSV), finds every attempted heel raise or isometric effort,
measures it and says which ones meet the protocol, which do not and why, and
where it cannot tell. The files are read and never changed.

Which recordings
  FILE, FOLDER, ZIP     folders and zips are looked through to the bottom for
                        .csv, .tsv, .txt and .dat, in an order that no locale
                        changes; what is passed over is counted. Nothing is
                        unpacked: DIR/study.zip/left.csv names a file in a zip,
                        in a manifest as well
  --manifest FILE       a list with what is known of each recording, see below
  --stdin               for GNU parallel, the pipe of Spark or any scheduler: a
                        line names a recording, and a line of JSON on standard
                        output answers it, in the order of the lines and as soon
                        as it is known. A refusal is an answer; the exit code is
                        0 when every line has one
  --lines FORM          what the lines are: names of files (names), a manifest
                        with its header (csv) or objects with the same names
                        (json); the first line tells when it is left out (auto)

What the recording is
  --placement WHERE     heel      displacement of the heel
                        foot      accelerometer on the foot, gyroscope or not
                        trunk     accelerometer at the sacrum
                        platform  vertical force under the whole foot; with
                                  --test isometric a plate under the forefoot
                        hand      taps of somebody who counted by hand
                        inline    isometric only: a cell in line with the push,
                                  or a dynamometer
                        Not needed where the columns leave no doubt
                        (heel_height, torque; force of heel raises).
  --side SIDE           left or right
  --test TEST           heel-raise, isometric or hop-series   (heel-raise)
  --heel-lever-mm N     ball of the foot to the sensor point at the heel;
                        without it a foot sensor gives no heights
  --body-mass-kg N      needed for work and power; never guessed
  --string-rest-mm N    length of the string at rest, where a string measured
                        the heel and its obliquity should be corrected
  --external-mass-kg N  a load that is carried, or seated lies on the knee
  --load-percent N      the load on the knee in percent of body mass
  --ankle-lever-mm N    ball of the foot to the ankle axis, and the angle of
  --ankle-angle-deg N   that line above the foot line: for work by the ankle
  --forefoot-lever-mm N isometric: ankle axis to the line of the force under
                        the forefoot, across it, measured with a tape; without
                        it a force gives no torque
  --calibration-u-percent PERCENT
                        isometric: standard uncertainty of the calibration of
                        the sensor; without it no uncertainty holds it, and the
                        report says so
  --calibration-zero-u N
                        isometric: standard uncertainty of its zero, in the unit
                        of the recording, for gross forces and the load at rest
  --polarity SIGN       isometric: positive or negative, which way the reading
                        goes with a pull; without it the signal tells
  --warm-up-pushes N    isometric: so many of the first pushes were warm-ups and
                        no trials; without it those far below the best before
                        the first full one are taken for some, and said
  --protocol ID         which rules a repetition or an effort is judged by, the
                        usual one of each test first:
${protocolLines()}
  --settings FILE       JSON with what differs from the usual settings, such as
                        {"protocol": {"heightFraction": 0.6}}, of isometric
                        tests {"pullProtocol": {"plateauLeast": 2}}, of hops
                        {"hopProtocol": {"analysedTo": 15}}, or of the method
                        {"hops": {"platform": {"contactN": 10}}}

A table that another program wrote
  --recipe FILE         read the files by a recipe that surae look made; a file
                        that differs is refused with what differs
  --part PART           of a file with several people or recordings: the number
                        or the name of one, or all
  --window SECONDS      of a recording of ten minutes and more: from when to
                        when the test is, such as 120-180.5, or all
  --rate-hz HZ          samples a second, where neither file nor recipe says it

What is compared, where a manifest names persons: both legs of each visit, and
each leg over its visits. A ratio stands only where nothing speaks against it;
else every reason is listed, with what would lift it.
  --reliability FILE    the clinic's own error of a test, used first from 15
                        pairs of tests on: what surae agree --json wrote, or
                        {"protocol": "single-leg.floor", "pairs": 20,
                        "standard_error": 1.9, "standard_error_upper_80": 2.3,
                        "scale": "natural", "source": "...", "group": "..."}
                        with it or alone "ratios": [[0.92, 0.97], ...], left
                        over right, a row a person, a column a visit: from 15
                        pairs on the interval of the ratio rests on them
  --reliability-of ID   the protocol that it was measured with
  --vary NAME=V,V,...   judge each recording by these values of one parameter
                        of the protocol as well, such as
                        heightFraction=0.6,0.75,0.9, and say whether the
                        comparison of the legs is the same under all

What comes out
  (nothing)             a table to read, with a picture of the heights
  --json                one JSON object a line, in the order of the files
  --csv DIR             repetitions.csv, sets.csv, issues.csv, refused.csv and
                        dictionary.csv, which explains every column; with
                        persons also sides.csv (legs of a visit), legs.csv
                        (each leg), changes.csv and remarks.csv; with isometric
                        tests also efforts.csv and pulls.csv
  --parquet DIR         the same tables as Parquet, units and descriptions in
                        their metadata; with --csv or alone
  --replace             let --csv and --parquet replace files of these names
  Tables get their names when all of them are whole.

Many recordings
  --workers N           so many at once                  (one for each core)
  --memory-mb MB        heap of each worker; a recording that needs more is
                        refused, and the others are not touched
  --journal FILE        finished results are kept here, and a run that was
                        stopped goes on from them: those of the same bytes, the
                        same settings, manifest row and version are taken, all
                        others are made. It is only ever added to. With --csv
                        or --parquet it lies beside their folder: DIR.journal
  --no-journal          keep none
  The result is the same, byte for byte, with any number of workers, stopped
  in between or not. Interrupt (Ctrl-C) stops a run cleanly.

The recording: a first line such as
  time [s],heel_height [mm]
  time [s],acc_x [m/s2],acc_y [m/s2],acc_z [m/s2],gyro_x [deg/s],...
  time [s],force [N]
  time [s],torque [N.m]
  Lines that begin with # are remarks. Decimals have a point.
The manifest: columns file,person,visit,side,test,placement,heel_lever_mm,
body_mass_kg. Used as well where they are there: string_rest_length_mm,
external_mass_kg, load_percent, ankle_lever_mm, ankle_angle_deg,
forefoot_lever_mm, calibration_u_percent, calibration_zero_u, polarity,
protocol, recipe (of this row, with recipe_part, recipe_window and
recipe_rate_hz where the file needs them), and those below.
All others are handed on as they came. Paths are relative to it; an empty cell
is unknown, and what the command line says fills it. What is unknown is never
taken as harmless: it stands against a ratio. A word that is none of those
below refuses its row.
${toldHelp(80).join('\n')}

Exit code: 0 all assessed, 1 some refused (listed on standard error), 2 the
command line cannot be followed, 128 and the number of the signal when it was
stopped.

Examples
  surae assess left.csv --placement heel --side left --body-mass-kg 70
  surae assess foot.csv --placement foot --heel-lever-mm 186
  surae assess --manifest study.csv --csv results
  surae assess *.csv --placement platform --json > sets.jsonl
  surae assess pull.csv --test isometric --placement inline --side left \\
      --body-mass-kg 82 --forefoot-lever-mm 130
  surae assess torque.csv --protocol isometric.seated-fast --json
  surae assess --recipe plate.json --side left monday.csv tuesday.csv
  surae assess study/ more.zip --placement heel --csv results --parquet results
  find . -name '*.csv' | surae assess --stdin --placement heel > sets.jsonl
  parallel --pipepart -a names.txt --block -1 surae assess --stdin --workers 1 \\
      --placement heel > sets.jsonl
`;
