/** Digits, with a sign, a comma, a point, a fraction or a range. */
const DIGITS = String.raw`\d[\d.,½¼¾⅓⅔]*(?:\s?(?:–|-|to)\s?\d[\d.,]*)?`;

const COUNTS =
  'one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|(?:a )?hundred|half an?';

/** Units that follow digits. Letters stand for a unit only right after a number. */
const SIGNS = String.raw`°\s?[CF]|[CF]|degrees?|mm|cm|m|kg|g|mg|µg|mL|ml|cL|L|kPa|mbar|%|ppm|min|h|s|d|oz|lb|J|kJ|W`;

/** Units written out, which a number in words may have too. */
const WORDS =
  'seconds?|minutes?|hours?|days?|weeks?|months?|years?|degrees?|millimetres?|centimetres?|metres?|grams?|kilograms?|kilos?|millilitres?|litres?|per cent|percent|ounces?|pounds?|inch(?:es)?';

const TYPED = new RegExp(String.raw`(?<![\w.#-])${DIGITS}[\s-]?(?:${SIGNS}|${WORDS})(?![\w-])`, 'g');
const SPELT = new RegExp(String.raw`\b(?:${COUNTS})(?:\s(?:or|to)\s(?:${COUNTS}))?[\s-](?:${WORDS})\b`, 'gi');

/**
 * Numbers with a unit that stand in a text by themselves, in digits or in words, where a figure should be named. What a
 * figure or a component of a page puts in is not looked at.
 */
export function bareNumbersIn(text: string): string[] {
  const own = text
    .replace(/<[^>]+>/g, ' ')
    .replace(/\{[a-z0-9-]+\}/g, 'FIGURE')
    .replace(/\]\([^)]*\)/g, ']');
  return [...own.matchAll(TYPED), ...own.matchAll(SPELT)].map(([found]) => found);
}
