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
  m: '\u00a0m',
  months: '\u00a0months',
  times: '\u00a0times',
  'stem diameters': '\u00a0stem diameters',
  '': '',
};

/** A figure ready to print: lead-in, amount, °F beside, tail. Join with single spaces, leaving out the empty. */
export interface FigureParts {
  readonly lead: string;
  readonly amount: string;
  readonly beside: string;
  readonly tail: string;
}

/**
 * A figure in words.
 * @returns its parts; `beside` is the °F of a temperature, rounded to the safe side of a bound
 * @example figureParts({ value: 5, unit: 'C', bound: 'at-most', mark: 'memory' }) // 5 °C, 41 °F, or colder
 */
export function figureParts(figure: Figure): FigureParts {
  const { value, unit, bound } = figure;
  return {
    lead: bound === 'below' || bound === 'above' ? bound : '',
    amount: `${numberText(value, plain)}${UNIT_TEXT[unit]}`,
    beside: besideText(figure),
    tail: bound ? tailText(bound, unit) : '',
  };
}

/** A figure as one string, for search records and attributes. */
export function figurePlain(figure: Figure): string {
  const { lead, amount, beside, tail } = figureParts(figure);
  return [lead, amount, beside && `(${beside})`, tail].filter((part) => part !== '').join(' ');
}

function tailText(bound: Bound, unit: FigureUnit): string {
  if (bound === 'at-most') return unit === 'C' ? 'or colder' : 'or less';
  if (bound === 'at-least') return unit === 'C' ? 'or hotter' : 'or more';
  return '';
}

function numberText(value: Figure['value'], print: (n: number) => string): string {
  if (typeof value === 'number') return print(value);
  const joint = value.some((end) => end < 0) ? ' to ' : '–';
  return value.map(print).join(joint);
}

function plain(value: number): string {
  return value.toLocaleString('en-GB', { maximumFractionDigits: 3 }).replace('-', '−');
}

/** A floor rounds up, a ceiling rounds down, a range keeps the nearest degree, a difference one decimal. */
function besideText({ value, unit, bound }: Figure): string {
  if (unit !== 'C' && unit !== 'dC') return '';
  const exact = (c: number) => Number((unit === 'C' ? c * 1.8 + 32 : c * 1.8).toFixed(6));
  const floor = bound === 'at-least' || bound === 'above';
  const ceiling = bound === 'at-most' || bound === 'below';
  const round = floor ? Math.ceil : ceiling ? Math.floor : unit === 'dC' ? toTenth : Math.round;
  return `${numberText(value, (c) => plain(round(exact(c))))}\u00a0°F`;
}

function toTenth(value: number): number {
  return Math.round(value * 10) / 10;
}
