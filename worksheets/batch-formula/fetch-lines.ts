/** Fetches the fields of the lines. */
export const fetchLines = () => import('./lines.tsx');
