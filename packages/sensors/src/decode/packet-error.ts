/** What is wrong in a layout, a description or a packet to be written. */
export interface Problem {
  /** where, as in `fields[2].values[0].unit`; empty for the whole */
  readonly path: string;
  readonly expected: string;
  readonly actual: string;
}

/** One line that says where, what was expected and what came. */
export function problemText({ path, expected, actual }: Problem): string {
  return `${path === '' ? '' : `${path}: `}expected ${expected}, got ${actual}`;
}

/** A layout that cannot be used, or values that do not fit into the packet that it describes. */
export class PacketError extends Error {
  override readonly name = 'PacketError';
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super(problems.map(problemText).join('; '));
    this.problems = problems;
  }
}
