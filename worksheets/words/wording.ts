import type { Params } from '@larderwright/calc/findings';

/** What a finding or a verdict says to a person. */
export interface Wording {
  /** One short sentence that stands alone on paper. */
  title: string;
  /** What to do, or why. May be empty. */
  body: string;
}

/** The words of one subject: every id it can raise, in words. */
export type Words<Id extends string> = Record<Id, (params: Params) => Wording>;
