import type { CuringTimeRuleId } from '@larderwright/calc/dry-cure';

/** Rules for how long a piece cures, as a cook would say them. */
export const CURING_TIME_NAMES: Readonly<Record<CuringTimeRuleId, string>> = {
  'six-mm-a-day': 'A day to 6 mm of thickness, and two more',
  'seven-days-an-inch': 'Seven days to the inch of thickness',
  'dry-two-days-a-pound': 'Two days to the pound',
  'ham-contact': 'A day and a half to the pound, 28 at least, in contact with the cure',
  'ham-contact-and-equalise': 'Two days to the pound, 40 at least, with equalising',
  'sweet-pickle-short': 'Three and a half days to the pound, in pickle',
  'sweet-pickle': 'Four days to the pound, in pickle',
};
