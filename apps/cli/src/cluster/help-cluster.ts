import { DATABASE_VARIABLE } from './database-address.ts';

const DATABASE = `  --database URL        postgres://USER@HOST/DATABASE, of PostgreSQL 13 or
                        later; left out, the variable ${DATABASE_VARIABLE} names it. A
                        password in the URL is seen by whoever lists the
                        processes of the machine: put it into the variable, into
                        PGPASSWORD or into ~/.pgpass. No message and no table
                        holds it`;

/** What surae scatter says about itself. */
export const SCATTER_HELP = `surae scatter FILE|FOLDER|ZIP... | --manifest M.csv  [options]

Puts a list of recordings into a database, with a job for each, so that any
number of "surae work" on any machines can assess them and "surae gather" can
write what "surae assess" of the same list would have written, byte for byte.
The files are read and never changed. The same command again adds what is
missing and tries again what was given up; what is done stays done.

${DATABASE}
  --run NAME            the name of this list in the database     (run)
  --send-bytes          put the recordings into the database, for machines that
                        share no disk; without it each worker reads them where
                        they lie, and refuses what holds other bytes than now

What the recordings are
  --manifest FILE       a list with what is known of each recording
  --settings FILE       JSON with what differs from the usual settings
  and the others that surae assess --help explains:
    --test, --placement, --side, --protocol, --heel-lever-mm, --body-mass-kg,
    --string-rest-mm, --external-mass-kg, --load-percent, --ankle-lever-mm,
    --ankle-angle-deg, --forefoot-lever-mm, --calibration-u-percent,
    --calibration-zero-u, --polarity, --warm-up-pushes, --vary, --recipe,
    --part, --window, --rate-hz

The database holds what is said of people, results and perhaps recordings:
treat it as them. surae gather --remove takes them away.

Exit code: 0 done, 2 the command line or the database cannot be followed.

Examples
  surae scatter --manifest visits.csv --database postgres://ada@db/calf
  export ${DATABASE_VARIABLE}=postgres://ada@db/calf
  surae scatter study/ more.zip --placement heel --run spring
  surae scatter --manifest visits.csv --settings strict.json --send-bytes
`;

/** What surae work says about itself. */
export const WORK_HELP = `surae work [options]

One worker of any number: takes recordings of a run from a database, assesses
them and writes the results back, until nothing is left by it or by others.
Kill it, or the database, at any time: what was in hand is done again, and each
result is written once. Interrupt (Ctrl-C) finishes what is in hand and ends; a
second one ends at once.

${DATABASE}
  --run NAME            this run only; without it every run that something is
                        left of, one after the other
  --workers N           so many recordings at once         (one for each core)
  --memory-mb MB        heap of each
  --moved FROM=TO       the folder FROM of the machine that made the list is TO
                        here; repeat it for each
  --patience S          a worker that was not heard of for S seconds is taken
                        for lost, and others take what it had in hand    (30)

A recording that cannot be read, or that holds other bytes than when the list
was made, is tried three times, by whichever worker comes. One that three
workers were lost with is left alone. Both are given up: they are refused in
the result, and the same surae scatter tries them again. A run of another
version of surae, or of other usual settings or protocols, is refused.

Exit code: 0 nothing is left, 1 nothing is left and some were given up, 2 the
command line or the database cannot be followed or a run is of another version,
128 and the number of the signal when it was stopped.

Examples
  surae work --database postgres://ada@db/calf
  surae work --run spring --workers 4 --moved /data/study=/mnt/study
`;

/** What surae gather says about itself. */
export const GATHER_HELP = `surae gather --csv DIR | --parquet DIR | --json | --left | --remove  [options]

Writes what a run in a database came to: the same tables or lines, byte for
byte, as surae assess writes of the same list on one machine. Nothing is
written before every recording has a result or was given up.

${DATABASE}
  --run NAME            the run that surae scatter gave this name (run)

What comes out, as for surae assess
  --csv DIR             tables as CSV
  --parquet DIR         the same as Parquet; with --csv or alone
  --json                one JSON object a line, in the order of the list
  --replace             let --csv and --parquet replace files of these names
  --reliability FILE    your own error of the count or of repeated ratios
  --reliability-of ID   the protocol that it was measured with

Or instead
  --left                how far the run is, what was given up and why; with
                        --json as one JSON object
  --remove              take the run out of the database, with its results and
                        recordings as far as no other run has them

Exit code: 0 done, 1 some were refused (listed on standard error) or, with
--left, something is left to do, 2 the command line or the database cannot be
followed, or the run is not whole.

Examples
  surae gather --left --database postgres://ada@db/calf
  surae gather --run spring --csv results --parquet results
  surae gather --run spring --json > sets.jsonl
  surae gather --run spring --remove
`;
