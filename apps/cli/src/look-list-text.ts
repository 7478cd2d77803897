/** A file that something could not be told of, and why. */
export interface UnreadFile {
  readonly path: string;
  readonly why: string;
}

/** What came of looking at a folder of files. */
export interface ListSummary {
  readonly list: string;
  readonly files: number;
  readonly recipes: readonly { readonly name: string; readonly like: string; readonly files: number }[];
  readonly shelf: string;
  readonly unread: readonly UnreadFile[];
  readonly unnamed: readonly UnreadFile[];
  /** names of people that may be one person */
  readonly alike: readonly (readonly string[])[];
  /** people of whom the table of facts holds nothing */
  readonly unmatched: readonly string[];
}

function counted(count: number, one: string): string {
  return `${count} ${one}${count === 1 ? '' : 's'}`;
}

function listed(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)];
}

/** The summary for a person to read. */
export function listText({ list, files, recipes, shelf, unread, unnamed, alike, unmatched }: ListSummary): string {
  return [
    `${list}: ${counted(files, 'file')}, written in ${counted(recipes.length, 'way')}`,
    ...recipes.map(({ name, like, files: count }) => `  ${shelf}/${name}  ${counted(count, 'file')} like ${like}`),
    ...listed(
      'Without a recipe; their rows are refused until there is one:',
      unread.map(({ why }) => why),
    ),
    ...listed(
      'Names that tell nothing; fill in their rows:',
      unnamed.map(({ why }) => why),
    ),
    ...listed(
      'Perhaps one person under two names:',
      alike.map((names) => names.join(', ')),
    ),
    ...listed('Nothing is known of:', unmatched),
    '',
    `Read it, then: surae assess --manifest ${list}`,
    '',
  ].join('\n');
}
