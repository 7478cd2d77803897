/** What is wrong with a zip, or with one file in it, in words. */
export class ZipFault extends Error {
  override readonly name = 'ZipFault';
}
