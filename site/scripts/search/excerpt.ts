const ENTITIES: Readonly<Record<string, string>> = {
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#39;': "'",
  '&amp;': '&',
};

/** A stretch of an excerpt, and whether it matched. */
export interface Stretch {
  readonly text: string;
  readonly matched: boolean;
}

/**
 * Reads an excerpt of the index, which is escaped text with <mark> around matches. Nothing of it is ever
 * handed to the page as markup.
 */
export function readExcerpt(excerpt: string): Stretch[] {
  return excerpt
    .split(/(<mark>.*?<\/mark>)/s)
    .filter((part) => part !== '')
    .map((part) => {
      const matched = part.startsWith('<mark>');
      const inner = matched ? part.slice('<mark>'.length, -'</mark>'.length) : part;
      return { text: plainText(inner), matched };
    });
}

function plainText(text: string): string {
  return text.replace(/&(?:lt|gt|quot|#39|amp);/g, (entity) => ENTITIES[entity] ?? entity);
}
