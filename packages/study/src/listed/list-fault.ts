/** A list of recordings that cannot be read as a whole, in one sentence with its place. */
export class ListFault extends Error {
  override readonly name = 'ListFault';
}
