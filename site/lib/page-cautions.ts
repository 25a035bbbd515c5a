import type { CautionSeverity } from '../../content/schemas.ts';

/** What is asked of a page: its own cautions and the worksheets in its text, in order. */
interface OnPage {
  readonly cautions: readonly string[];
  readonly worksheets: readonly string[];
}

/** Cautions a worksheet has, and how grave a caution is. */
export interface Carried {
  readonly ofWorksheet: (id: string) => readonly string[];
  readonly severity: (slug: string) => CautionSeverity;
}

/** Cautions that stand at the top of a page: its own, and every stop that a worksheet in its text brings. */
export function topCautions(page: OnPage, { ofWorksheet, severity }: Carried): string[] {
  const brought = page.worksheets.flatMap(ofWorksheet).filter((slug) => severity(slug) === 'stop');
  return [...new Set([...page.cautions, ...brought])];
}

/**
 * Cautions that are named beside one worksheet of a page, each with its level: what it brings for other work, and
 * neither the top of the page nor an earlier worksheet has said. No stop is among them.
 */
export function besideWorksheet(page: OnPage, worksheet: string, carried: Carried): string[] {
  const earlier = page.worksheets.slice(0, page.worksheets.indexOf(worksheet)).flatMap(carried.ofWorksheet);
  const said = new Set([...topCautions(page, carried), ...earlier]);
  return carried.ofWorksheet(worksheet).filter((slug) => !said.has(slug));
}
