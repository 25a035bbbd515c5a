/** The language of this catalogue, and how it writes numbers and dates: a BCP 47 tag. */
export const LOCALE = 'en-GB';
