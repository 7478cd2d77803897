/** Something that fills a stretch of a stream. */
export interface Stretch<Item> {
  readonly item: Item;
  readonly from: number;
  readonly to: number;
  readonly arrivedMs: number;
}

/** A stretch in its turn. */
export interface InTurn<Item> extends Stretch<Item> {
  /** units that are missing right before it [-] */
  readonly missing: number;
  /** it came after its place had been passed over */
  readonly isLate: boolean;
}

export interface ReorderLimits {
  /** how long a stretch waits for one before it [ms] */
  readonly waitMs: number;
  /** how many wait at most */
  readonly mostWaiting: number;
  /** differences up to this are none: what is placed by a time is never exact */
  readonly slack: number;
}

interface Hole {
  from: number;
  to: number;
}

/** How far back holes are remembered; what is older is not filled any more. */
const mostHoles = 4096;

/**
 * Puts stretches in order. One that is ahead waits a while for those before it; then they are missing, and the stream goes on.
 * What is there already is left out; what comes too late fills its hole.
 */
export class ReorderBuffer<Item> {
  private readonly limits: ReorderLimits;
  /** in order, none overlaps another */
  private readonly waiting: Stretch<Item>[] = [];
  private readonly holes: Hole[] = [];
  private next: number | undefined;
  private beganMs: number | undefined;

  constructor(limits: ReorderLimits) {
    this.limits = limits;
  }

  /** Where the stream stands: all before it has been handed on or passed over. */
  get position(): number | undefined {
    return this.next;
  }

  /** What of a stretch is new: not handed on, not waiting. Empty for one that is there already. */
  unseen(from: number, to: number): { readonly from: number; readonly to: number }[] {
    const { next, holes, waiting } = this;
    const free: Hole[] = [];
    if (next === undefined) free.push({ from, to });
    else {
      for (let i = holes.length - 1; i >= 0 && holes[i]!.to > from; i--) {
        const hole = holes[i]!;
        if (hole.from < to) free.unshift({ from: Math.max(from, hole.from), to: Math.min(to, hole.to) });
      }
      if (to > next) free.push({ from: Math.max(from, next), to });
    }
    const parts = free.flatMap((one) => without(one, waiting));
    return parts.filter((part) => part.to - part.from > this.limits.slack);
  }

  /** Takes a stretch that is new; gives what is in turn now. */
  put(stretch: Stretch<Item>, nowMs: number): InTurn<Item>[] {
    this.beganMs ??= nowMs;
    if (this.next !== undefined && stretch.from < this.next - this.limits.slack) {
      this.fill(stretch);
      return [{ ...stretch, missing: 0, isLate: true }, ...this.take(nowMs)];
    }
    let at = this.waiting.length;
    while (at > 0 && this.waiting[at - 1]!.from > stretch.from) at--;
    this.waiting.splice(at, 0, stretch);
    return this.take(nowMs);
  }

  /** What is in turn at a time: who has waited long enough waits no more. */
  take(nowMs: number): InTurn<Item>[] {
    const given: InTurn<Item>[] = [];
    for (;;) {
      const first = this.waiting[0];
      if (first === undefined) return given;
      if (!this.isDue(first, nowMs)) return given;
      this.waiting.shift();
      given.push(this.pass(first));
    }
  }

  /** Everything that waits, with holes where something is missing. */
  flush(): InTurn<Item>[] {
    return this.waiting.splice(0).map((one) => this.pass(one));
  }

  private isDue(first: Stretch<Item>, nowMs: number): boolean {
    const { waitMs, mostWaiting, slack } = this.limits;
    if (this.next !== undefined && first.from <= this.next + slack) return true;
    if (this.waiting.length > mostWaiting) return true;
    // what was overtaken at the very beginning is waited for as well
    if (this.next === undefined) return nowMs - (this.beganMs ?? nowMs) >= waitMs;
    return this.waiting.some(({ arrivedMs }) => nowMs - arrivedMs >= waitMs);
  }

  private pass(stretch: Stretch<Item>): InTurn<Item> {
    const from = this.next ?? stretch.from;
    const missing = stretch.from - from > this.limits.slack ? stretch.from - from : 0;
    if (missing > 0) {
      this.holes.push({ from, to: stretch.from });
      if (this.holes.length > mostHoles) this.holes.shift();
    }
    this.next = stretch.to;
    return { ...stretch, missing, isLate: false };
  }

  private fill({ from, to }: Stretch<Item>): void {
    const { holes } = this;
    for (let i = holes.length - 1; i >= 0 && holes[i]!.to > from; i--) {
      const hole = holes[i]!;
      if (hole.from >= to) continue;
      const rest = [
        { from: hole.from, to: from },
        { from: to, to: hole.to },
      ].filter((one) => one.to - one.from > this.limits.slack);
      holes.splice(i, 1, ...rest);
    }
  }
}

/** What is left of a stretch when others, in order, are taken out of it. */
function without(stretch: Hole, others: readonly Hole[]): Hole[] {
  const parts: Hole[] = [];
  let { from } = stretch;
  for (const other of others) {
    if (other.to <= from || other.from >= stretch.to) continue;
    if (other.from > from) parts.push({ from, to: other.from });
    from = Math.max(from, other.to);
  }
  if (from < stretch.to) parts.push({ from, to: stretch.to });
  return parts;
}
