/** A word to link where it first stands, in all the forms it is written in. */
export interface LinkedTerm {
  readonly href: string;
  readonly forms: readonly string[];
}

/** Nothing inside these is linked: headings, links, code, drawings, fields, islands, and cautions, whose words stay bare. */
const CLOSED =
  /^(?:a|abbr|aside|astro-island|button|code|form|h[1-6]|label|pre|script|style|summary|svg|template|title)$/;
/** These have no end tag, so they open nothing. */
const VOID = /^(?:area|br|col|embed|hr|img|input|link|meta|source|wbr)$/;

const PIECE = /<!--[\s\S]*?-->|<(\/?)([a-zA-Z][\w-]*)[^>]*?(\/?)>|[^<]+|</g;

/**
 * Links every term once, where it first stands in the text of finished HTML. The longest form wins.
 * The same HTML and terms give the same answer, whatever the order of the terms.
 * @param html of one page, well formed
 */
export function linkTerms(html: string, terms: readonly LinkedTerm[]): string {
  const byForm = formsOf(terms);
  if (byForm.size === 0) return html;
  const forms = [...byForm.keys()].sort((a, b) => b.length - a.length || (a < b ? -1 : 1));
  const word = new RegExp(
    `(?<![\\p{L}\\p{N}-])(?:${forms.map(escapeForm).join('|')})(?![\\p{L}\\p{N}-])`,
    'giu',
  );
  const used = new Set<string>();
  let closed = 0;
  return html.replace(
    PIECE,
    (piece, end: string | undefined, tag: string | undefined, empty: string | undefined) => {
      if (tag !== undefined) {
        const name = tag.toLowerCase();
        if (CLOSED.test(name) && !VOID.test(name) && !empty) closed += end ? -1 : 1;
        return piece;
      }
      if (closed > 0 || piece.startsWith('<')) return piece;
      return piece.replace(word, (match) => {
        const href = byForm.get(match.toLowerCase());
        if (href === undefined || used.has(href)) return match;
        used.add(href);
        return `<a class="term" href="${href}">${match}</a>`;
      });
    },
  );
}

/** Every form and its plain plural, in small letters. A form two terms share is linked to neither. */
function formsOf(terms: readonly LinkedTerm[]): Map<string, string> {
  const owners = new Map<string, Set<string>>();
  for (const { href, forms } of terms)
    for (const form of forms.flatMap((one) => [one, `${one}s`])) {
      const key = form.toLowerCase();
      owners.set(key, (owners.get(key) ?? new Set()).add(href));
    }
  return new Map(
    [...owners].flatMap(([form, hrefs]) => {
      const [href] = hrefs;
      return hrefs.size === 1 && href !== undefined ? [[form, href] as const] : [];
    }),
  );
}

function escapeForm(form: string): string {
  return form.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
