import { type PLACES, SAFETY } from '../../content/schemas.ts';

type Place = (typeof PLACES)[number];
interface Ranked {
  readonly data: { readonly safety: (typeof SAFETY)[number]; readonly number: number };
}

/** A place as a part of an address. */
export function placeSlug(place: Place): string {
  return place.replaceAll(' ', '-');
}

/** A place as a heading. */
export function placeTitle(place: Place): string {
  return `${place[0]?.toUpperCase()}${place.slice(1)}`;
}

/** What may be a safety matter first, then by number. */
export function bySafety(a: Ranked, b: Ranked): number {
  return SAFETY.indexOf(b.data.safety) - SAFETY.indexOf(a.data.safety) || a.data.number - b.data.number;
}
