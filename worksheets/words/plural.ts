import { LOCALE } from './locale.ts';

/** The forms of a counted word. A language fills those that `Intl.PluralRules` names for it. */
export type Forms = { readonly other: string } & Partial<Readonly<Record<Intl.LDMLPluralRule, string>>>;

const rules = new Intl.PluralRules(LOCALE);

/** The form of a word that goes with a count. */
export function plural(count: number, forms: Forms): string {
  return forms[rules.select(count)] ?? forms.other;
}
