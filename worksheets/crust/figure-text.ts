import type { CrustValues, PasteWeights, PastrySheet } from '@larderwright/calc/mould';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/crust/figure-text.ts';

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
  return least === most ? `${least}` : say.to(least, most);
}

/** Where the few stand, from one end. */
export function placesText({ chimneys }: CrustValues): string | null {
  return chimneys && say.atMmFromOneEnd(chimneys.placesMm.map((place) => fixedText(place, 0)).join(', '));
}

/** Caul for one mould. */
export function caulText({ lining }: CrustValues): string | null {
  const caul = lining?.caul ?? null;
  return caul && say.toG(fixedText(caul.minG, 0), fixedText(caul.maxG, 0, 'up'));
}

/** One part of a paste to 100 of flour. */
export function partText(paste: PasteWeights, part: keyof PasteWeights): string {
  return fixedText((paste[part] / paste.flour) * 100, 1);
}
