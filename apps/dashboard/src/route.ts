/** How the page of the legs is given as soon as it is there. */
export type GivenAs = (typeof givenAs)[number];

const givenAs = ['print', 'file', 'code'] as const;

/** Where in the dashboard one is; it stands in the hash of the address. */
export type Route =
  | { readonly page: 'start' }
  | { readonly page: 'own-errors' }
  /** the clinic: its lock, its keys, its backups */
  | { readonly page: 'clinic' }
  | { readonly page: 'audit' }
  /** the rules that proposals come from, and the clinic's own copy of them */
  | { readonly page: 'rules' }
  | { readonly page: 'erase'; readonly personId: string }
  /** what somebody complains of: where, since when, what is aimed at */
  | { readonly page: 'episode'; readonly personId: string }
  /** a table that another program wrote */
  | { readonly page: 'import' }
  | { readonly page: 'export' }
  /** a study of recordings, and which part of it; without an id the way into one */
  | { readonly page: 'study'; readonly studyId: string | null; readonly part: string | null }
  /** how many people a study needs, and what was typed of it */
  | { readonly page: 'design'; readonly asked: string | null }
  /** the sensors, and the visit that one came from */
  | { readonly page: 'sensors'; readonly visitId: string | null }
  /** the description of a sensor that is being written; the id of the one that it begins from */
  | { readonly page: 'describe'; readonly descriptionId: string | null }
  | { readonly page: 'visit'; readonly visitId: string }
  /** what somebody is shown of a visit of theirs */
  | { readonly page: 'legs'; readonly visitId: string; readonly at?: GivenAs }
  /** one page about a visit for the record */
  | { readonly page: 'report'; readonly visitId: string }
  /** everything of one person on one line of time */
  | { readonly page: 'course'; readonly personId: string }
  /** mornings that somebody gives back */
  | { readonly page: 'mornings'; readonly personId: string }
  | { readonly page: 'lost' };

/** The place that a hash names. */
export function routeOf(hash: string): Route {
  const parts = hash
    .replace(/^#\/?/, '')
    .split('/')
    .filter((part) => part !== '');
  if (parts.length === 0) return { page: 'start' };
  if (parts.length === 1 && parts[0] === 'own-errors') return { page: 'own-errors' };
  if (parts.length === 1 && parts[0] === 'clinic') return { page: 'clinic' };
  if (parts.length === 1 && parts[0] === 'audit') return { page: 'audit' };
  if (parts.length === 1 && parts[0] === 'rules') return { page: 'rules' };
  if (parts.length === 1 && parts[0] === 'import') return { page: 'import' };
  if (parts.length === 1 && parts[0] === 'export') return { page: 'export' };
  if (parts.length === 1 && parts[0] === 'design') return { page: 'design', asked: null };
  if (parts.length === 1 && parts[0] === 'sensors') return { page: 'sensors', visitId: null };
  if (parts.length === 1 && parts[0] === 'describe') return { page: 'describe', descriptionId: null };
  if (parts[0] === 'study' && parts.length < 4) {
    const [, studyId = null, part = null] = parts.map(decoded);
    return { page: 'study', studyId, part };
  }
  const given = parts.length === 3 && parts[0] === 'legs' ? givenAs.find((one) => one === parts[2]) : undefined;
  if (given !== undefined) {
    const visitId = decoded(parts[1]!);
    return visitId === undefined ? { page: 'lost' } : { page: 'legs', visitId, at: given };
  }
  const id = parts.length === 2 ? decoded(parts[1]!) : undefined;
  if (id !== undefined && parts[0] === 'visit') return { page: 'visit', visitId: id };
  if (id !== undefined && parts[0] === 'legs') return { page: 'legs', visitId: id };
  if (id !== undefined && parts[0] === 'report') return { page: 'report', visitId: id };
  if (id !== undefined && parts[0] === 'course') return { page: 'course', personId: id };
  if (id !== undefined && parts[0] === 'mornings') return { page: 'mornings', personId: id };
  if (id !== undefined && parts[0] === 'erase') return { page: 'erase', personId: id };
  if (id !== undefined && parts[0] === 'episode') return { page: 'episode', personId: id };
  if (id !== undefined && parts[0] === 'sensors') return { page: 'sensors', visitId: id };
  if (id !== undefined && parts[0] === 'design') return { page: 'design', asked: id };
  if (id !== undefined && parts[0] === 'describe') return { page: 'describe', descriptionId: id };
  return { page: 'lost' };
}

function decoded(text: string): string | undefined {
  try {
    return decodeURIComponent(text);
  } catch {
    // a hash that was cut or typed by hand names nothing
    return undefined;
  }
}

/** The hash of a place. */
export function hashOf(route: Route): string {
  const place = (name: string, id: string | null): string =>
    `#/${name}${id === null ? '' : `/${encodeURIComponent(id)}`}`;
  switch (route.page) {
    case 'own-errors':
    case 'clinic':
    case 'audit':
    case 'rules':
    case 'import':
    case 'export':
      return `#/${route.page}`;
    case 'erase':
    case 'course':
    case 'episode':
    case 'mornings':
      return place(route.page, route.personId);
    case 'sensors':
      return place('sensors', route.visitId);
    case 'study':
      return place('study', route.studyId) + (route.part === null ? '' : `/${route.part}`);
    case 'design':
      return place('design', route.asked);
    case 'describe':
      return place('describe', route.descriptionId);
    case 'visit':
    case 'report':
      return place(route.page, route.visitId);
    case 'legs':
      return place('legs', route.visitId) + (route.at === undefined ? '' : `/${route.at}`);
    default:
      return '#/';
  }
}
