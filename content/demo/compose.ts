import { newLine, newReading } from '@larderwright/calc/batch';
import type { FormulaLine, LinePart } from '@larderwright/calc/formula';
import type { ProbeReading } from '@larderwright/calc/process';
import { enteredEntry } from '@larderwright/calc/quantities';

interface LineExtras {
  lot?: string;
  actual?: string;
  /** Strength printed on the pack of a curing salt, in %. */
  nitrite?: string;
  nitrate?: string;
  /** Salt printed on the pack, in %. */
  salt?: string;
}

/** One line of a demo formula, in grams. */
export function line(
  id: string,
  name: string,
  part: LinePart,
  ingredientId: string | null,
  grams: string,
  extras: LineExtras = {},
): FormulaLine {
  const blank = newLine(id, part);
  const typed = (text: string | undefined, field: 'g' | '%', empty: FormulaLine['amount']) =>
    text === undefined ? empty : enteredEntry(text, field);
  return {
    ...blank,
    name,
    ingredientId,
    amount: enteredEntry(grams, 'g'),
    actual: typed(extras.actual, 'g', blank.actual),
    lot: extras.lot ?? '',
    declared: { ...blank.declared, salt: typed(extras.salt, '%', blank.declared.salt) },
    cure: blank.cure && {
      nitrite: typed(extras.nitrite, '%', blank.cure.nitrite),
      nitrate: typed(extras.nitrate, '%', blank.cure.nitrate),
    },
  };
}

/** Readings written as `08:40 7.1, 08:55 7.9`, all of one day, typed in as they were read. */
export function readings(day: string, offset: string, initials: string, text: string): ProbeReading[] {
  return text.split(',').map((pair) => {
    const [clock = '', temperature = ''] = pair.trim().split(' ');
    const at = `${day}T${clock}:00${offset}`;
    return { ...newReading(`${day}-${clock}`, at, temperature, 'C', at), initials };
  });
}
