/** What surae study says about itself. */
export const STUDY_HELP = `surae study STUDY.json --manifest M.csv --out DIR  [options]
surae study STUDY.json --decide | --blind | --take-in | --lock | --open |
                       --check

From recordings to a table and a figure that can be defended and made again:
what was declared before the data were looked at decides what is left out,
what is compared and how. The recordings are read and never changed.

The study file, JSON by shared/schemas/study.schema.json: title, question,
test, protocol and what differs from it, outcomes by the keys of the columns
that surae assess --csv explains, groups, visits or sides, reasons to leave a
trial out (by a rule, or by a person), blinding, and choices that would have
been as defensible. Its hash goes into every result.
  --manifest FILE       the list of recordings, as for surae assess
  --earlier FILE        a study file that this one amends; repeat it for each

Results
  --out DIR             quality.csv (each trial and whether it is taken),
                        outcomes.csv (each trial as assessed under each
                        choice), people.csv, groups.csv (the comparison),
                        multiverse.csv (every analysis), choices.csv (each
                        choice alone), shifts.csv (where the outcome lies
                        under each), estimates.svg, people.svg, shifts.svg,
                        dictionary.csv, and reproduce.json: the command,
                        hashes and settings that make the same bytes again
  --decisions FILE      what people decided about trials
  --verdicts FILE       with the --key of the rater: agreement.csv and
                        agreement.svg as well; repeat both for each rater
  --most N              do up to N analyses                    (1000)
  --json                what it comes to as one JSON object
  --replace             write over files of these names

Deciding about a trial: one entry at the end of --decisions FILE
  --decide TRIAL=WHAT   WHAT is include, open or exclude:REASON with a declared
                        reason that is no matter of a rule
  --by NAME --why TEXT  who, and why; --on DAY when
A trial that a declared rule leaves out stays out.

Counting again without knowing whose it is (heel raises)
  --blind RATER         write for one rater: --out DIR with items/ (recordings
                        under names that tell nothing), counts.csv and
                        verdicts.csv to fill in, and --key FILE, which is kept
                        from the rater like the study file and the manifest
  --take-in DIR         take in what the rater filled in, to the end of
                        --verdicts FILE (with --key FILE)
  --lock                close --verdicts FILE: by --by NAME, --on DAY
  --open                record that the names were opened: --by NAME, --on DAY,
                        --why TEXT; before the lock only with --early, and what
                        comes after is marked and left out
The hash that --lock prints, written down elsewhere, tells that nothing was
cut off or written anew.

Checking
  --check FILE          whether a reproduce.json was made with the study as it
                        stands, before an amendment of it or with another one,
                        and whether the files beside it are as they were made

Exit code: 0 done, 1 a recording was refused (it is in quality.csv) or a check
found something, 2 the command line or a file cannot be followed.

Examples
  surae study study.json --manifest visits.csv --out results
  surae study study.json --manifest visits.csv --decisions decided.jsonl \\
      --decide left-4.csv=exclude:late --by ada --why "began before the beat"
  surae study study.json --manifest visits.csv --blind ada --out for-ada \\
      --key ada.key.json
  surae study study.json --take-in for-ada --key ada.key.json \\
      --verdicts ada.jsonl
  surae study study.json --lock --key ada.key.json --verdicts ada.jsonl --by ada
`;
