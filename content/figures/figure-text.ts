import type { Bound, Figure, FigureUnit } from './figure.ts';

/** How a unit prints after a number. No-break spaces keep the two together. */
const UNIT_TEXT: Readonly<Record<FigureUnit, string>> = {
  C: '\u00a0°C',
  dC: '\u00a0°C',
  mm: '\u00a0mm',
  g: '\u00a0g',
  kg: '\u00a0kg',
  'g/kg': '\u00a0g\u00a0per\u00a0kg',
  mL: '\u00a0mL',
  kPa: '\u00a0kPa',
  '%': '\u00a0%',
  'mg/kg': '\u00a0mg/kg',
  min: '\u00a0min',
  h: '\u00a0h',
  d: '\u00a0days',
  s: '\u00a0s',
  'kg/L': '\u00a0kg/L',
  moulds: '\u00a0moulds',
  times: '\u00a0times',
};

const BOUND_TEXT: Readonly<Record<Bound, string>> = {
  'at-least': 'at least ',
  'at-most': 'at most ',
  below: 'below ',
  above: 'above ',
};

/**
 * A figure in words.
 * @returns `text` in the figure's own unit, and `beside` in °F where the figure is a temperature
 * @example figureText({ value: [75, 82], unit: 'C', mark: 'common-practice' }) // 75–82 °C, 167–180 °F
 */
export function figureText(figure: Figure): { text: string; beside: string } {
  const lead = figure.bound ? BOUND_TEXT[figure.bound] : '';
  const text = `${lead}${numberText(figure.value)}${UNIT_TEXT[figure.unit]}`;
  return { text, beside: besideText(figure) };
}

function numberText(value: Figure['value']): string {
  return typeof value === 'number' ? plain(value) : `${plain(value[0])}–${plain(value[1])}`;
}

function plain(value: number): string {
  return value.toLocaleString('en-GB', { maximumFractionDigits: 3 }).replace('-', '−');
}

/** °F beside a temperature: a floor rounds up, a ceiling rounds down, a range keeps the nearest degree. */
function besideText({ value, unit, bound }: Figure): string {
  if (unit !== 'C' && unit !== 'dC') return '';
  const round =
    bound === 'at-least' || bound === 'above'
      ? Math.ceil
      : bound === 'at-most' || bound === 'below'
        ? Math.floor
        : Math.round;
  const convert = (c: number) => round(Number((unit === 'C' ? c * 1.8 + 32 : c * 1.8).toFixed(6)));
  const ends = typeof value === 'number' ? [value] : [...value];
  return `${ends.map((c) => plain(convert(c))).join('–')}\u00a0°F`;
}
