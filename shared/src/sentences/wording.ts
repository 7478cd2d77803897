/** How a text is said in the language in use, by the id of its entry and the English text. */
export type Wording = (id: string, text: string) => string;

const asWritten: Wording = (_id, text) => text;
let wording = asWritten;

/**
 * Sets the language of every text of the catalogue from now on; English where nothing is given. Who shows the texts sets it before
 * anything that reads one is loaded.
 */
export function setWording(given: Wording = asWritten): void {
  wording = given;
}

/** A text of the shared data in the language in use. */
export function inWords(id: string, text: string): string {
  return wording(id, text);
}
