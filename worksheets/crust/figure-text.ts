import type { CrustValues, PasteWeights, PastrySheet } from '@larderwright/calc/mould';
import { fixedText } from '@larderwright/calc/quantities';

/** A measure to cut by: a sheet a little large is trimmed, one too small is thrown away. */
const mm = (value: number) => fixedText(value, 0, 'up');

/** Length and width of one cut. */
export function sheetText(sheet: PastrySheet): string {
  return `${mm(sheet.lengthMm)} × ${mm(sheet.widthMm)} mm`;
}

/** How few chimneys and how many. */
export function chimneysText({ chimneys }: CrustValues): string | null {
  if (chimneys === null) return null;
  const { least, most } = chimneys;
  return least === most ? `${least}` : `${least} to ${most}`;
}

/** Where the few stand, from one end. */
export function placesText({ chimneys }: CrustValues): string | null {
  return chimneys && `at ${chimneys.placesMm.map((place) => fixedText(place, 0)).join(', ')} mm from one end`;
}

/** Caul for one mould. */
export function caulText({ lining }: CrustValues): string | null {
  const caul = lining?.caul ?? null;
  return caul && `${fixedText(caul.minG, 0)} to ${fixedText(caul.maxG, 0, 'up')} g`;
}

/** One part of a paste to 100 of flour. */
export function partText(paste: PasteWeights, part: keyof PasteWeights): string {
  return fixedText((paste[part] / paste.flour) * 100, 1);
}
