/** Words as they are compared: without case and accents. */
function wordsOf(text: string): string[] {
  const plain = text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  return plain.match(/[\p{L}\p{N}]+/gu) ?? [];
}

/** Shortest part of a name that is sought on its own: shorter ones stand in too many words. */
const SHORTEST = 3;

/** Whether a text holds a part of any of these names as a word of its own or inside a longer one. */
export function nameScan(names: readonly string[]): (text: string) => boolean {
  const parts = new Set(
    names.flatMap((name) => {
      const words = wordsOf(name);
      // a name of short parts alone is sought as a whole
      const long = words.filter((word) => word.length >= SHORTEST || /\P{Script=Latin}/u.test(word));
      return long.length > 0 ? long : [words.join('')];
    }),
  );
  parts.delete('');
  return (text) => {
    const words = wordsOf(text);
    const whole = words.join('');
    return [...parts].some((part) => whole.includes(part));
  };
}
