/** A straight line, told by its height in the middle of the points. */
export interface Line {
  readonly slope: number;
  /** value at x = 0 */
  readonly intercept: number;
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/** More than 0 when the way from a over b to c turns left. */
function turn(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

/**
 * The straight line below all points that lies nearest to them: the sum of what the points stand above it is the least.
 * Points whose x rises are taken one at a time; only the lower convex hull is kept. On the hull the line is the edge below the
 * mean of all x, because the sum depends on the height of the line there alone.
 *
 * Source: from memory, not checked against the papers: Moon, Skelly & Towsley (1999), Estimation and removal of clock skew from
 * network delay measurements, INFOCOM (the linear programme); Zhang, Liu & Xia (2002), Clock synchronization algorithms for
 * network measurements, INFOCOM (the hull).
 */
export class LowerLine {
  private readonly hull: Point[] = [];
  private meanX = 0;
  private taken = 0;

  /** How many points were taken. */
  get count(): number {
    return this.taken;
  }

  /** How many points are kept. */
  get kept(): number {
    return this.hull.length;
  }

  /** First and last x; undefined before there is a point. */
  get range(): { readonly from: number; readonly to: number } | undefined {
    const [first] = this.hull;
    const last = this.hull.at(-1);
    return first === undefined || last === undefined ? undefined : { from: first.x, to: last.x };
  }

  /** Takes a point; of two at one x the lower counts. Throws a {@link RangeError} when x falls. */
  add(x: number, y: number): void {
    const { hull } = this;
    const last = hull.at(-1);
    if (last !== undefined && x < last.x) throw new RangeError(`Points come with rising x: ${last.x}, then ${x}.`);
    this.taken += 1;
    this.meanX += (x - this.meanX) / this.taken;
    if (last?.x === x) {
      if (y >= last.y) return;
      hull.pop();
    }
    const point = { x, y };
    while (hull.length >= 2 && turn(hull.at(-2)!, hull.at(-1)!, point) <= 0) hull.pop();
    hull.push(point);
  }

  /** The line; undefined before there are two different x. */
  get line(): Line | undefined {
    const { hull, meanX } = this;
    if (hull.length < 2) return undefined;
    let low = 0;
    let high = hull.length - 1;
    // the edge whose ends lie on both sides of the mean
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (hull[middle]!.x <= meanX) low = middle;
      else high = middle;
    }
    const from = hull[low]!;
    const to = hull[high]!;
    const slope = (to.y - from.y) / (to.x - from.x);
    return { slope, intercept: from.y - slope * from.x };
  }
}
