/** Most characters the square code on a sheet may hold: beyond it the squares get too fine for paper that was handled. */
export const MOST_CODE_CHARACTERS = 120;
const MOST_ID = 100;

/** What the code of a sheet says after the `#`: the record and its checksum at printing. */
export function paperCode(id: string, sum: string): string {
  return `${encodeURIComponent(id)}.${sum}`;
}

/** Reads it back; null for any other text. */
export function readPaperCode(text: string): { id: string; sum: string } | null {
  const [, coded = '', sum = ''] = /^([^.]+)\.([0-9A-HJKMNP-TV-Z]{7})$/.exec(text) ?? [];
  if (coded === '' || coded.length > MOST_ID) return null;
  try {
    return { id: decodeURIComponent(coded), sum };
  } catch {
    return null;
  }
}
