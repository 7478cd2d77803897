/** The group of each column: an empty cell has that of the last filled one to its left, as spreadsheets write merged cells. */
export function filledGroups(groupRow: readonly string[]): string[] {
  let last = '';
  return groupRow.map((cell) => {
    last = cell.trim() === '' ? last : cell.trim();
    return last;
  });
}

/** One name for each column out of a row of groups and the names below it. */
export function joinedNames(groupRow: readonly string[], names: readonly string[]): string[] {
  return filledGroups(groupRow).map((group, i) => `${group} ${names[i]?.trim() ?? ''}`.trim());
}

/** The names as they stand below the row of groups; undefined where one of the joined names does not begin with its group. */
export function namesBelow(groupRow: readonly string[], joined: readonly string[]): string[] | undefined {
  const names = filledGroups(groupRow).map((group, i) => {
    const name = joined[i]?.trim();
    if (group === '' || name === undefined) return name;
    if (name === group) return '';
    return name.startsWith(`${group} `) ? name.slice(group.length + 1) : undefined;
  });
  return names.every((name) => name !== undefined) ? names : undefined;
}
