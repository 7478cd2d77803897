/** Where in the dashboard one is; it stands in the hash of the address. */
export type Route =
  | { readonly page: 'start' }
  | { readonly page: 'own-errors' }
  | { readonly page: 'visit'; readonly visitId: string }
  | { readonly page: 'lost' };

/** The place that a hash names. */
export function routeOf(hash: string): Route {
  const parts = hash
    .replace(/^#\/?/, '')
    .split('/')
    .filter((part) => part !== '');
  if (parts.length === 0) return { page: 'start' };
  if (parts.length === 1 && parts[0] === 'own-errors') return { page: 'own-errors' };
  const visitId = parts.length === 2 && parts[0] === 'visit' ? decoded(parts[1]!) : undefined;
  return visitId === undefined ? { page: 'lost' } : { page: 'visit', visitId };
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
  if (route.page === 'own-errors') return '#/own-errors';
  return route.page === 'visit' ? `#/visit/${encodeURIComponent(route.visitId)}` : '#/';
}
