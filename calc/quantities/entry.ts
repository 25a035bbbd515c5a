/** Units a field may be read in. Each belongs to one kind of quantity. */
export type Unit =
  | 'mg'
  | 'g'
  | 'kg'
  | 'oz'
  | 'lb'
  | 'mm'
  | 'cm'
  | 'm'
  | 'in'
  | 'ft'
  | 'mL'
  | 'cL'
  | 'dL'
  | 'L'
  | 'C'
  | 'F'
  | 'dC'
  | 'dF'
  | 'kPa'
  | 'hPa'
  | 'psi'
  | 'min'
  | 'h'
  | 's'
  | 'd'
  | '%'
  | 'g/kg'
  | 'ppm'
  | 'g/mL'
  | 'count'
  | 'money'
  | 'ratio';

/**
 * A number field exactly as a person left it: what was typed, the unit it is read in when the
 * text names none, and whether a person put it there or it is still a default.
 * An empty text is "unknown", never zero.
 */
export interface Entry {
  text: string;
  unit: Unit;
  origin: 'entered' | 'default';
}

/** A blank field: unknown until somebody fills it. */
export function blankEntry(unit: Unit): Entry {
  return { text: '', unit, origin: 'default' };
}

/** A default stored by value, marked as a default. */
export function defaultEntry(text: string, unit: Unit): Entry {
  return { text, unit, origin: 'default' };
}

/** What a person typed. */
export function enteredEntry(text: string, unit: Unit): Entry {
  return { text, unit, origin: 'entered' };
}
