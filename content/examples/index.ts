import type { Batch } from '@larderwright/calc/batch';
import { coreProcesses } from './core-processes.ts';
import { dressedAndSlow } from './dressed-and-slow.ts';
import { foundations } from './foundations.ts';
import { sausagesAndCures } from './sausages-and-cures.ts';
import { serveAndRecord } from './serve-and-record.ts';
import { terrines } from './terrines.ts';

/** The invented batch of each technique page, by the name its frontmatter calls it. */
export const examples: Readonly<Record<string, Batch>> = {
  ...foundations,
  ...coreProcesses,
  ...terrines,
  ...dressedAndSlow,
  ...sausagesAndCures,
  ...serveAndRecord,
};
