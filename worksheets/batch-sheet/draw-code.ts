import { correction, generate } from 'lean-qr';
import { toSvgPath } from 'lean-qr/extras/svg';
import { MOST_CODE_CHARACTERS, paperCode } from '../paper-finder/paper-code.ts';

/** A square code (ISO/IEC 18004), ready to draw: black squares as a path, one unit a square. */
export interface SheetCode {
  readonly path: string;
  readonly squares: number;
}

/**
 * The code that leads from a sheet to its record: address, id and checksum.
 *
 * @param base address of the page that finds records, without a `#`
 * @returns null where the address is too long to be read off paper that was handled
 */
export function drawCode(base: string, id: string, check: string): SheetCode | null {
  const text = `${base}#${paperCode(id, check)}`;
  if (text.length > MOST_CODE_CHARACTERS) return null;
  // Level M: it is still read with a seventh of it under a thumb mark.
  const code = generate(text, { minCorrectionLevel: correction.M, maxCorrectionLevel: correction.M });
  return { path: toSvgPath(code), squares: code.size };
}
