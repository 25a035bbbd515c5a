import type { CookLimit, LimitRefusal } from '@larderwright/calc/lethality';

/** A hold as the table prints it, in words. */
export function holdWords(printed: string): string {
  if (printed.startsWith('<')) return `held less than ${printed.slice(1).trim()}`;
  return printed === '0 s' ? 'reached once' : `held ${printed}`;
}

/** What a pair is written for, where it is not for everything. */
export function formWords(form: CookLimit['form']): string {
  switch (form) {
    case 'any':
      return '';
    case 'comminuted':
      return 'minced';
    case 'intact':
      return 'whole pieces';
    case 'whole-roast':
      return 'whole roasts';
  }
}

/**
 * Why pairs of the rule set may not judge this batch.
 *
 * @param birds what poultry the formula holds, by species
 */
export function refusalWords(reason: LimitRefusal, birds: readonly string[]): string {
  const held = birds.length > 0 ? birds.join(' and ') : 'poultry';
  switch (reason) {
    case 'cook.limit-not-for-poultry':
      return `Not for this batch: written for food without poultry, and the formula holds ${held}. One bird's liver, fat or skin is enough.`;
    case 'cook.limit-for-poultry-only':
      return 'Not for this batch: written for food with poultry, and the formula holds none.';
    case 'cook.limit-not-for-minced':
      return 'Not for this batch: written for whole pieces, and this product is minced or filled.';
    case 'cook.species-unknown':
      return 'Cannot tell: the formula does not yet say whether there is poultry in the batch.';
    case 'cook.form-unknown':
      return 'Cannot tell: no product family is chosen, so it is not known whether the meat is minced.';
    case 'cook.fat-unknown':
      return 'Cannot tell: the hold depends on fat, and the fat of the batch is not known.';
    case 'cook.fat-off-table':
      return 'Not for this batch: its fat is above the last column of the table. Choose a limit that does not depend on fat.';
  }
}
