/** What happens to the connection of a running sensor. */
export type LinkNews =
  | { readonly state: 'lost'; readonly reason: string }
  /** it will be tried again; the attempts count from 1 */
  | { readonly state: 'waiting'; readonly attempt: number; readonly inS: number }
  | { readonly state: 'trying'; readonly attempt: number }
  /** samples come again; how many are missing, null when nobody can tell */
  | { readonly state: 'back'; readonly afterS: number; readonly lostCount: number | null }
  /** bytes were damaged or lost on the way */
  | { readonly state: 'disturbed'; readonly reason: string };
