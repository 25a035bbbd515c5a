import { PHYSICAL_RANGES, type QuantityKind } from '@larderwright/calc/quantities';
import fc from 'fast-check';

/** What the end of a name says a number is: the house puts the unit there. The first that fits is taken. */
const KINDS: readonly (readonly [RegExp, QuantityKind])[] = [
  [/fraction|fractions\d*|share$|of(Fat|Water)$/i, 'fraction'],
  [/(^|[a-z0-9])Ppm$|^ppm$|ceiling$/, 'ppm'],
  [/TempF$|^tempF$/, 'temperature'],
  [/[a-z]C$|^(low|top|optimum)C$/, 'temperature'],
  [/[a-z]G$|^(nitrite|green|pickle|salt|total|dryIngredients)$/, 'mass'],
  [/[a-z]Mm$|^radius/, 'length'],
  [/[a-z]Ml$/, 'volume'],
  [/[a-z]Min$|Hours?$|^hours$|[a-z]H$/, 'time'],
  [/KPa$/, 'pressure'],
  [/GPerMl$/, 'density'],
];

/** What no finger types and no scale shows is nothing: ratios of such numbers would only test the limits of a double. */
const LEAST = 1e-9;
const numbers = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((value) => (Math.abs(value) < LEAST ? 0 : value));

const any = fc.oneof(
  { weight: 3, arbitrary: numbers(-1e6, 1e6) },
  { weight: 2, arbitrary: fc.integer({ min: -5, max: 400 }) },
  { weight: 1, arbitrary: fc.constantFrom(0, -0, 1, 1e-9, 1e9, -1e9) },
);

/** Numbers of the kind a name promises, to the walls of what a field lets through, and a little of the sane middle. */
export function numberNamed(name: string): fc.Arbitrary<number> {
  if (/^(count|limit|decimals|draws|index|days|at[A-Z]|fineness|times)$|Days$|^load$|^capacity$/.test(name))
    return fc.integer({ min: 0, max: 400 });
  if (name === 'altitudeM') return numbers(0, 9000);
  if (/^ph$/i.test(name)) return numbers(0, 14);
  const kind = KINDS.find(([pattern]) => pattern.test(name))?.[1];
  if (!kind) return any;
  const { min = 0, max = 1 } = PHYSICAL_RANGES[kind];
  const middle = kind === 'temperature' ? 90 : kind === 'fraction' ? 0.4 : Math.min(max, 3000);
  return fc.oneof(
    { weight: 3, arbitrary: numbers(kind === 'temperature' ? -30 : 0, middle) },
    { weight: 1, arbitrary: numbers(min, max) },
    { weight: 1, arbitrary: fc.constantFrom(min, max, 0, Math.min(1, max), LEAST) },
  );
}

const zoned = fc
  .tuple(
    fc.date({ noInvalidDate: true, min: new Date('1970-01-01'), max: new Date('9990-01-01') }),
    fc.constantFrom('Z', '+01:00', '-05:30', '+14:00'),
  )
  .map(([date, zone]) => `${date.toISOString().slice(0, 19)}${zone}`);

/** Texts nobody expects, and those a person leaves half typed. */
export const oddTexts = fc.oneof(
  fc.constantFrom(
    '',
    ' ',
    '0',
    '-1',
    '1/0',
    '1e999',
    '12,5',
    '1.2.3',
    '٣٤',
    '½',
    '=1+1',
    '\uD800',
    '\u0000',
    '°',
  ),
  fc.constantFrom(
    'NaN',
    'Infinity',
    '__proto__',
    'constructor',
    'toString',
    '2026-02-30',
    '24:61',
    '9'.repeat(400),
  ),
  fc.string({ unit: 'grapheme', maxLength: 10 }),
);

/** Texts of the kind a name promises: days, moments, or anything at all. */
export function textNamed(name: string): fc.Arbitrary<string> {
  if (/^(at|stamp|enteredAt|servingAt|like|startedAt|readyAt)$/.test(name))
    return fc.oneof({ weight: 3, arbitrary: zoned }, { weight: 1, arbitrary: oddTexts });
  if (/^(date|today|todayIso|startedOn|cookedOn|than|reviewed|on|days|checkedOn)$/.test(name))
    return fc.oneof(
      { weight: 3, arbitrary: zoned.map((text) => text.slice(0, 10)) },
      { weight: 1, arbitrary: oddTexts },
    );
  return oddTexts;
}
