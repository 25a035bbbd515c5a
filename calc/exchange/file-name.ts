const MOST_CHARACTERS = 80;
/** Names that a file may not have on some systems, whatever follows the point. */
const RESERVED = /^(?:con|prn|aux|nul|com\d|lpt\d)$/i;

/**
 * A file name made of what a person typed: letters, figures, hyphens and underscores of any script, nothing a file system
 * or a shell stumbles over.
 *
 * @param parts joined by hyphens; blank ones are left out
 * @param ending without the point
 * @example safeFileName(['20260421-A', 'Pâté: rabbit / hare', 'formula'], 'csv') // '20260421-A-Pâté-rabbit-hare-formula.csv'
 */
export function safeFileName(parts: readonly string[], ending: string): string {
  const words = parts.map((part) =>
    part
      .normalize('NFC')
      .replace(/[^\p{L}\p{M}\p{N}_]+/gu, '-')
      .replace(/^-+|-+$/g, ''),
  );
  const name = Array.from(words.filter(Boolean).join('-')).slice(0, MOST_CHARACTERS).join('');
  const trimmed = name.replace(/-+$/, '');
  return `${trimmed === '' || RESERVED.test(trimmed) ? `batch-${trimmed}`.replace(/-$/, '') : trimmed}.${ending}`;
}
