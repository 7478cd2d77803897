/** Both accents of a letter: a text that went through the catalogue shows them. */
const accents: Readonly<Record<string, string>> = {
  a: 'áà',
  e: 'éè',
  i: 'íì',
  o: 'óò',
  u: 'úù',
  c: 'çć',
  n: 'ñń',
  y: 'ýỳ',
  A: 'ÁÀ',
  E: 'ÉÈ',
  I: 'ÍÌ',
  O: 'ÓÒ',
  U: 'ÚÙ',
};

/** What stands for a value or a mark of the text itself, such as {count}, stays as it is. */
const blanks = /\{\w+\}/;

function outsideBlanks(text: string, change: (part: string) => string): string {
  const kept = text.match(new RegExp(blanks, 'g')) ?? [];
  return text
    .split(blanks)
    .map((part, i) => change(part) + (kept[i] ?? ''))
    .join('');
}

function accented(text: string, letters: 1 | 2): string {
  return outsideBlanks(text, (part) =>
    part.replace(/[aeioucny]/gi, (letter) => accents[letter]?.slice(0, letters) ?? letter),
  );
}

/** A text about 40 % longer, each of its words, with an accent on every vowel and more: what is cut off by a longer language is seen. */
export function lengthened(text: string): string {
  return accented(text, 2);
}

/** A text as long as it was, with the same accents, for a page that is read from the right. */
export function sameLength(text: string): string {
  return accented(text, 1);
}
