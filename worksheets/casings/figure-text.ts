import type { CasingsValues } from '@larderwright/calc/casings';
import { fixedText } from '@larderwright/calc/quantities';
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
    ...(strands === null ? [] : [`${strands} ${strands === 1 ? 'strand' : 'strands'}`]),
    ...(hanks === null ? [] : [`${hanks} ${hanks === 1 ? 'bundle' : 'bundles'}`]),
  ];
  return parts.length === 0 ? null : parts.join(', or ');
}

/** What one link weighs and measures. */
export function linkText({ links }: CasingsValues): string | null {
  return links && `${gramsText(links.linkG)}, ${fixedText(links.linkMm, 0)} mm`;
}

/** Whole links of the batch. */
export function countText({ links }: CasingsValues): string | null {
  return links && `${links.count} ${links.count === 1 ? 'link' : 'links'}`;
}

/** Links as weighed, against their target. */
export function weighedText({ actual, actualOffFraction }: CasingsValues): string | null {
  if (actual === null) return null;
  const off =
    actualOffFraction === null
      ? ''
      : `, ${percentText(Math.abs(actualOffFraction), 1)} ${actualOffFraction < 0 ? 'short' : 'over'}`;
  return `${gramsText(actual.mean)} on average of ${actual.count}${off}`;
}
