/** Lines of each list that the others do not hold, and those that all of them hold, which are said once. */
export function sharedLines(lists: readonly (readonly string[])[]): {
  readonly own: readonly (readonly string[])[];
  readonly shared: readonly string[];
} {
  const [first = [], ...others] = lists;
  const shared = others.length === 0 ? [] : first.filter((line) => others.every((other) => other.includes(line)));
  return { own: lists.map((list) => list.filter((line) => !shared.includes(line))), shared };
}
