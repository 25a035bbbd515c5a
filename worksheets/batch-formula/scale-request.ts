import {
  type FormulaLine,
  type Scaled,
  scaleFormula,
  scaleToFill,
  scaleToMeatBlock,
  scaleToTotal,
} from '@larderwright/calc/formula';
import { defaultEntry, type Entry, enteredEntry, entryValue, readEntry } from '@larderwright/calc/quantities';

/** What a formula is scaled to. */
export type ScaleTo = 'factor' | 'total' | 'meat' | 'moulds';

/** The scaling form as typed. It belongs to the visit, not to the batch. */
export interface ScaleForm {
  to: ScaleTo;
  factor: Entry;
  total: Entry;
  meat: Entry;
  testPoach: Entry;
  residue: Entry;
}

/** Test poach and what stays on bowl and filler: common practice, no source. */
export const NEW_SCALE_FORM: ScaleForm = {
  to: 'factor',
  factor: enteredEntry('', 'g'),
  total: enteredEntry('', 'g'),
  meat: enteredEntry('', 'g'),
  testPoach: defaultEntry('50', 'g'),
  residue: defaultEntry('2', '%'),
};

/** A bare number; a text with a unit in it is no factor. */
export function readFactor(entry: Entry): number | null {
  if (/[a-z%°]/i.test(entry.text)) return null;
  const reading = readEntry('mass', { ...entry, unit: 'g' });
  return reading.state === 'ok' ? reading.value : null;
}

/**
 * The scaled formula the form asks for.
 *
 * @param fillG net fill of all moulds, g; null while it is not known
 * @returns null while the form is not filled in
 */
export function requestScale(
  form: ScaleForm,
  lines: readonly FormulaLine[],
  fillG: number | null,
): Scaled | null {
  switch (form.to) {
    case 'factor': {
      const factor = readFactor(form.factor);
      return factor === null ? null : scaleFormula(lines, factor);
    }
    case 'total': {
      const totalG = entryValue('mass', form.total);
      return totalG === null ? null : scaleToTotal(lines, totalG);
    }
    case 'meat': {
      const meatG = entryValue('mass', form.meat);
      return meatG === null ? null : scaleToMeatBlock(lines, meatG);
    }
    case 'moulds': {
      const testPoachG = entryValue('mass', form.testPoach);
      const residueFraction = entryValue('fraction', form.residue);
      if (testPoachG === null || residueFraction === null || fillG === null) return null;
      return scaleToFill(lines, { fillG, testPoachG, residueFraction });
    }
  }
}
