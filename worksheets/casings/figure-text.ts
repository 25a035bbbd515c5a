import type { CasingsValues } from '@larderwright/calc/casings';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/casings/figure-text.ts';
import { gramsText, percentText } from '../parts/number-text.ts';

/** Metres to the decimetre: what is to be soaked is never cut short. */
export const metresText = (metres: number) => `${fixedText(metres, 1, 'up')} m`;

/** Casing to soak, spare in it. */
export function soakText({ casing }: CasingsValues): string | null {
  return casing && metresText(casing.withSpareM);
}

/** Whole strands and bundles, where their lengths are told. */
export function piecesText({ strands, hanks }: CasingsValues): string | null {
  const parts = [
    ...(strands === null ? [] : [say.strands(strands)]),
    ...(hanks === null ? [] : [say.bundles(hanks)]),
  ];
  return parts.length === 0 ? null : parts.join(say.or);
}

/** What one link weighs and measures. */
export function linkText({ links }: CasingsValues): string | null {
  return links && `${gramsText(links.linkG)}, ${fixedText(links.linkMm, 0)} mm`;
}

/** Whole links of the batch. */
export function countText({ links }: CasingsValues): string | null {
  return links && say.links(links.count);
}

/** Links as weighed, against their target. */
export function weighedText({ actual, actualOffFraction }: CasingsValues): string | null {
  if (actual === null) return null;
  const off =
    actualOffFraction === null
      ? ''
      : `, ${percentText(Math.abs(actualOffFraction), 1)} ${actualOffFraction < 0 ? say.short : say.over}`;
  return say.onAverageOf(gramsText(actual.mean), actual.count, off);
}
