/** What stands in the bundle for somebody who opens it with nothing else. */
export function aboutText(isDeidentified: boolean, hasSamples: boolean): string {
  const lines = [
    'Study bundle',
    '',
    'tables/        people, visits, trials, repetitions, efforts and hops; beside each comma-separated file',
    '               its metadata (CSV on the Web); dictionary.csv explains every column of every table',
    ...(hasSamples ? ['samples/       the samples of each trial in SI units, all under the same columns'] : []),
    'health-records/, letters/           where they were asked for: FHIR R4 for each person, a letter about each visit',
    'parameters.json, protocols.json   what results were made and judged by',
    'provenance.json                   hashes of what was read, software',
    'ro-crate-metadata.json            what the files are, for archives (RO-Crate 1.1)',
    'SHA256SUMS.txt                    checksums of all files',
    '',
    'Empty or null was not measured; zero is zero. Units are UCUM codes. Parquet holds no table without rows.',
    "In comma-separated files a text that a spreadsheet would run has one ' before it; the metadata tell of it.",
    '',
    ...(isDeidentified
      ? [
          'De-identified: study keys for names and keys, days since the first visit for dates, age in years for the year',
          'of birth (90 and over in one group), no free text, no hashes of recordings. Somebody who knows the figures of',
          'a person can still find them here: local rules on health data hold.',
        ]
      : ['This bundle names people. Local rules on health data hold for every copy of it.']),
    '',
    "It supports a clinician's judgement. It is not a diagnosis.",
  ];
  return `${lines.join('\n')}\n`;
}
