import type { HelpTopic } from './arguments.ts';
import { GATHER_HELP, SCATTER_HELP, WORK_HELP } from './cluster/help-cluster.ts';
import { ASSESS_HELP } from './help-assess.ts';
import { STUDY_HELP } from './study-help.ts';

const SURAE = `surae: from a raw trace of a calf test to repetitions one can trust

  surae assess FILE...          find and measure the repetitions in recordings,
                                in folders and zips of them as well
  surae assess --manifest M.csv the same for a list of recordings
  surae assess --stdin          the same for a scheduler: names in, JSON out
  surae simulate --out DIR      write recordings whose repetitions are known
  surae agree TABLE.csv         how far raters, days or devices agree
  surae export --manifest M.csv --out BUNDLE.zip
                                hand a study over in open formats
  surae look FILE...            what a table holds that nobody described
  surae study STUDY.json --manifest M.csv --out DIR
                                from what was declared to a table and a figure
  surae design QUESTION         how many people a study needs
  surae scatter --manifest M.csv --database URL
                                the same as assess on several machines: put a
                                list into a database,
  surae work --database URL     assess what is left of it, any number of these,
  surae gather --database URL --csv DIR
                                and write what it came to

  surae assess --help           options and examples
  surae simulate --help
  surae agree --help
  surae export --help
  surae look --help
  surae study --help
  surae design --help
  surae scatter --help          and work, gather
  surae --version

It supports a clinician's judgement. It is not a diagnosis.
`;

const SIMULATE = `surae simulate --out DIR  [options]

Writes recordings of a simulated person, their truth, and a manifest that
"surae assess --manifest" reads. The same seed writes the same files.

  --test TEST           heel-raise, isometric or hop-series  (heel-raise)
  --placement WHERE     heel, foot, trunk or platform        (heel)
                        isometric: inline or platform        (inline)
                        hop-series: platform or foot         (platform)
  --kind KIND           isometric: ramp or fast              (ramp)
  --rate-hz HZ          isometric: 80, 200, 1000 or 2000     (1000)
                        hop-series: 500, 1000 or 2000, of a
                        foot sensor 200, 400 or 1000         (1000)
  --level LEVEL         how much goes wrong                  (typical)
                        clean    nothing
                        typical  what a careful test still has
                        hard     strong sway, noise, jitter, losses, drift
                        field    hard, and steps, bounces, slips, knocks
                        free     field, by people who keep no beat
  --seed N              the first seed                       (1)
  --count N             how many recordings, one seed each   (1)
  --no-gyroscope        a foot sensor without gyroscope
  --messy               a folder as it comes from three assistants: names, units
                        and letters of each, files that hold nothing,
                        people.csv, study.json and truth.csv; heel raises at
                        two visits
  --people N            of so many invented people           (12)
  --out DIR             the folder; made if it is not there
  --replace             replace files of the same names

In DIR: NAME.csv the recording, NAME.truth.json what went into it, truth.csv
every true repetition, effort or hop, manifest.csv the list.

Exit code: 0 done, 2 the command line cannot be followed, or a file is there
already; then nothing is written.

Examples
  surae simulate --placement foot --level hard --seed 1 --count 3 --out sets
  surae assess --manifest sets/manifest.csv
  surae simulate --test isometric --kind fast --rate-hz 2000 --out pulls
  surae simulate --test hop-series --placement foot --level hard --out hops
  surae assess --manifest hops/manifest.csv --csv results
  surae simulate --messy --people 8 --seed 5 --out messy
`;

const AGREE = `surae agree TABLE.csv  [options]

Says how far raters, days or devices agree about the same subjects, and how
well one test repeats: intraclass correlations, standard error of measurement,
detectable change, variation, bias and limits of agreement; for words, kappa.
Every figure has its 95 % interval; a correlation is called by both ends of it.

The table: one row a subject and one column a rater, day or device
  subject,A [mm],B [mm]
or one row a value, with rater or day or both
  subject,rater,day,value [N]
  The unit stands in brackets and is the same for all; it is not converted.
  [repetitions] says that the values are counts, [verdict] that they are words.
  An empty cell was not measured: its subject is left out, and the result says
  so. Nothing is filled in. A subject or rating that comes twice is refused.

What is compared
  --across WHAT         rater or day, where the table has both
  --ratio               differences as ratios, where they grow with the value
  --reach N             standard deviations from the bias to a limit    (1.96)
  --whole-only          refuse a table with an empty cell
  --order WORDS         words from the lowest to the highest, such as
                        none,slight,clear: for kappa by steps and by squares

What comes out
  (nothing)             a table to read
  --json                one JSON object; null is not computed
  --picture FILE        differences against means, as SVG
  --pair PAIR           which two the picture shows, such as A,B
  --replace             let --picture replace the file

How many people a study needs; a TABLE may be left out
  --icc-width N         interval of ICC(1,1) no wider than this
  --icc-expected N      where the correlation is this; else that of the table
  --error-within N      upper bound of the standard error at most N % above it
  --limit-within N      a limit of agreement known to N standard deviations

Exit code: 0 done, 1 the table was refused, 2 the command line cannot be
followed.

Examples
  surae agree heights.csv
  surae agree two-raters.csv --pair A,B --picture agreement.svg
  surae agree force.csv --across day --ratio --json
  surae agree --icc-width 0.1 --icc-expected 0.9 --error-within 25
`;

const EXPORT = `surae export --manifest M.csv | --backup FILE | --store DIR
             --out BUNDLE.zip | FOLDER  [options]

Hands over in open formats what a list of recordings comes to when it is
assessed, or a record with its results as they stand in it: tables of people,
visits, trials, repetitions, efforts and hops with metadata and a dictionary,
the protocols and settings they were judged by, hashes of what was read, and
what an archive asks for (RO-Crate). The same study gives
the same bytes, here and in the dashboard.

What is read
  --manifest FILE       the list of recordings, as for surae assess
  --settings FILE       with a list, as for surae assess
  --backup FILE         a backup that the dashboard wrote; it is checked first
  --store DIR           the folder of a store of files; it is read and never
                        changed
  --passphrase-file FILE  holds the passphrase or recovery code that opens what
                        is encrypted; without it it is asked on the terminal,
                        and not shown

What leaves
  --tables FORMS        csv, json-lines, parquet, with commas   (csv)
  --samples             the samples of every recording in SI units
  --health-records      a bundle of FHIR R4 for each person, with traces where
                        samples are asked for; codes of our own, UCUM units
  --letters             a letter about each visit, as text and as a page; no
                        number stands in it without its uncertainty
  --raw                 the files as they came
  --without-names       study keys for people, visits and trials; days since
                        the first visit for dates; ages for years of birth, 90
                        and over in one group; no free text, no hashes of
                        recordings
  --secret-file FILE    with it the same people have the same study keys in
                        every export; else a secret is drawn and forgotten
  --keep-devices        names of devices stay, unless they name a person
  --written-on DAY      day of writing, such as 2026-03-01   (today)

Where
  --out PATH            one file where it ends in .zip, else a folder
  --replace             write over what is there

Exit code: 0 done, 1 a recording was refused (it is in the table of trials
with its reason) or a part of a store is not whole (it is named, and the rest
leaves), 2 the command line cannot be followed: no or a newer store, a damaged
backup, another passphrase. Then nothing is written.

Examples
  surae export --manifest visits.csv --out study.zip
  surae export --manifest visits.csv --out study --tables csv,parquet --samples
  surae export --manifest visits.csv --out open.zip --without-names
  surae export --store clinic --out study.zip --samples --raw

Even without names somebody who knows the figures of a person can find them:
local rules on health data hold for every copy.
`;

const LOOK = `surae look FILE|FOLDER|ZIP...  [options]

Looks at tables that another program wrote, in folders and zips as well: how
the text is written, what each column holds, in which unit, of which leg and
where the sensor was. Every guess says what it rests on and how sure it is,
from 0 to 1; what is below 0.9 is asked. Nothing is assessed, and the files are
read and never changed.

  --set TOPIC=ANSWER    answer a question, or say what is known better; repeat
                        it for each. Of the file: encoding, delimiter, decimal,
                        thousands, dates, header, time, time-unit, rate. Of a
                        column: use, axis, unit, side, placement, as in
                        --set "unit:Force=kgf"
  --recipe-out FILE     write what was found and answered as a recipe, by which
                        surae assess --recipe reads files like this one
  --name NAME           what people call the recipe     (the name of the file)
  --replace             let --recipe-out replace a file of that name
  --json                one JSON object a line; null is not known

A whole folder, whoever wrote what is in it
  --manifest-out FILE   write a manifest with a row for each file and, in a
                        folder of its name with .recipes, a recipe for each way
                        in which they are written; a --set answers the files
                        that ask for it
  --names PATTERN       what the names tell: {person}_{visit}_{side} for
                        P07_1_L.csv. A column of a manifest in braces takes
                        letters and digits, side left, right, l or r, date a
                        day as 2026-03-01; * takes anything; with / folders are
                        looked at as well. Repeat it for each way of naming
  --facts FILE          a table with the column person, and visit or side where
                        a fact is of one: its other columns go into the manifest
  A file that cannot be read or named has its row all the same, and is said.

Exit code: 0 done, 1 a file was refused, or asks something that a recipe needs,
or has a name that tells nothing, 2 the command line cannot be followed.

Examples
  surae look export.txt
  surae look export.txt --set rate=100 --set "side:Fz=left" \\
      --recipe-out plate.json --name "Plate in room 2"
  surae assess --recipe plate.json export.txt
  surae look traces --manifest-out visits.csv \\
      --names "{person}_{visit}_{side}" --facts people.csv
  surae assess --manifest visits.csv
`;

/** The words that a command says about itself. */
export function helpText(about: Exclude<HelpTopic, 'design'>): string {
  switch (about) {
    case 'surae':
      return SURAE;
    case 'assess':
      return ASSESS_HELP;
    case 'simulate':
      return SIMULATE;
    case 'agree':
      return AGREE;
    case 'export':
      return EXPORT;
    case 'look':
      return LOOK;
    case 'study':
      return STUDY_HELP;
    case 'scatter':
      return SCATTER_HELP;
    case 'work':
      return WORK_HELP;
    case 'gather':
      return GATHER_HELP;
  }
}
