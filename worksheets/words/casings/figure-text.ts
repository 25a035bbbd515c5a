import { plural } from '../plural.ts';

export const strands = (strands: number) =>
  `${strands} ${plural(strands, { one: 'strand', other: 'strands' })}`;
export const bundles = (hanks: number) => `${hanks} ${plural(hanks, { one: 'bundle', other: 'bundles' })}`;
export const or = ', or ';
export const links = (count: number) => `${count} ${plural(count, { one: 'link', other: 'links' })}`;
export const short = 'short';
export const over = 'over';
export const onAverageOf = (mean: string, count: number, off: string) =>
  `${mean} on average of ${count}${off}`;
