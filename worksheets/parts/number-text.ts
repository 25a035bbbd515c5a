import { fixedText, formatQuantity } from '@larderwright/calc/quantities';

/**
 * A mass as a scale of that size shows it: whole grams, tenths below 100 g, hundredths below 10 g. From
 * 10 kg on the kilograms stand beside, so that a long number is not misread.
 */
export function gramsText(massG: number): string {
  const size = Math.abs(massG);
  const decimals = size < 10 ? 2 : size < 100 ? 1 : 0;
  return formatQuantity('mass', massG, { decimals, grouped: true, withUnit: true });
}

/** A volume in litres, or in millilitres below a tenth of a litre. */
export function litresText(volumeMl: number): string {
  return Math.abs(volumeMl) < 100
    ? formatQuantity('volume', volumeMl, { decimals: 0, withUnit: true })
    : formatQuantity('volume', volumeMl, { unit: 'L', decimals: 2, withUnit: true });
}

/** A share in per cent; a small one keeps two decimals. */
export function percentText(fraction: number, decimals = Math.abs(fraction) < 0.1 ? 2 : 1): string {
  return `${fixedText(fraction * 100, decimals)} %`;
}
