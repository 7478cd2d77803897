/** The tests in a browser are dealt into so many shares [-]; an ordinary run takes one of them, the long run takes all. */
export const SHARES = 16;

/** Files that hold a test of a hazard (the list in DEVELOPERS.md): in every run, whatever its share. */
export const inEveryRun = ['clinic', 'kept-sets', 'languages', 'page-policy', 'stop', 'torn-log'];

/**
 * The share that an ordinary run of a commit takes: the same one at each run of it, another one for most others.
 *
 * @param {string} commit - hash of the commit, hexadecimal
 * @returns {number} from 1 to {@link SHARES} [-]
 */
export function shareOf(commit) {
  return 1 + (Number.parseInt(commit.slice(0, 8), 16) % SHARES);
}

/**
 * Names dealt to and fro, so that every share takes about as long.
 *
 * @param {readonly string[]} names - files of tests, those that take longest first
 * @returns {string[][]} names of each share, without those of every run
 */
export function dealt(names) {
  const shares = Array.from({ length: SHARES }, () => []);
  const others = names.filter((name) => !inEveryRun.includes(name));
  others.forEach((name, i) => {
    const [round, place] = [Math.floor(i / SHARES), i % SHARES];
    shares[round % 2 === 0 ? place : SHARES - 1 - place].push(name);
  });
  return shares;
}
