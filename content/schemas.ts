import { z } from 'astro/zod';
import { BLOCKS } from './blocks.ts';
import { STANDING } from './standing.ts';

/*
 * One schema a collection. Objects are strict, so a misspelt key fails the build, and each message
 * says what to write. Names of other entries are checked for existence in `check-links.ts`.
 */

const sentence = (what: string) =>
  z
    .string({ error: `Write ${what}.` })
    .trim()
    .min(3, `Write ${what}.`);
const list = (what: string, min = 1) =>
  z.array(sentence(what), { error: `Write a list: ${what}.` }).min(min, `Write at least ${min}: ${what}.`);
const slug = z
  .string()
  .regex(
    /^[a-z0-9]+(-[a-z0-9]+)*$/,
    'Write a slug: lower-case words joined by hyphens, as in the file name.',
  );
const slugs = z.array(slug).default([]);
const sourceId = z
  .string()
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'Write the id of a source from calc/sources or content/sources.ts.');
const words = z.array(z.string().trim().min(2, 'Write a word people search for.')).default([]);

/** Every entry carries the day a person last read it against its sources. */
const base = z.strictObject({
  title: sentence('the title a reader sees'),
  reviewed: z.coerce.date({ error: 'Write reviewed: as a date, YYYY-MM-DD.' }),
  searchWords: words,
});

const SEVERITIES = ['stop', 'high', 'take-care', 'legal'] as const;
export type CautionSeverity = (typeof SEVERITIES)[number];

export const cautionSchema = base.extend({
  code: z
    .string({ error: 'Write the caution code as C01 … C58.' })
    .regex(/^C\d\d$/, 'Write the caution code as C01 … C58.'),
  severity: z.enum(SEVERITIES, { error: `Write one of: ${SEVERITIES.join(', ')}.` }),
  rule: sentence('the rule in one or two sentences: this is what shows beside a step'),
  protectsAgainst: sentence('what goes wrong for the eater or the worker'),
  do: list('what to do'),
  doNot: list('what not to do'),
  askWhen: sentence('when to stop and ask a licensed person'),
  basis: z
    .array(sourceId, { error: 'Name at least one source id, or common-practice.' })
    .min(1, 'Name at least one source id, or common-practice.'),
  standing: z.array(z.enum(Object.keys(STANDING) as [keyof typeof STANDING]), {
    error: `Write standing: the sentences it calls for, of ${Object.keys(STANDING).join(', ')}, or [] for none.`,
  }),
});

export const SAFETY = ['N', 'C', 'S'] as const;
export const PLACES = [
  'all through',
  'edge',
  'centre',
  'base',
  'surface',
  'slice',
  'jelly',
  'crust',
  'garnish',
  'casing',
  'smell and taste',
] as const;

const SENSES = ['look', 'feel', 'smell', 'taste'] as const;

export const defectSchema = base.extend({
  number: z.number().int().min(1).max(99),
  looks: list('what is seen, felt or smelt'),
  where: z.array(z.enum(PLACES, { error: `Write one of: ${PLACES.join(', ')}.` })).min(1),
  senses: z.array(z.enum(SENSES, { error: `Write one of: ${SENSES.join(', ')}.` })).min(1),
  causes: list('a cause, the likeliest first'),
  checkFirst: sentence('the one thing to check first'),
  remedyNow: sentence('what can still be done with this batch'),
  prevention: list('what to do next time'),
  safety: z.enum(SAFETY, { error: 'Write N (quality only), C (check the log) or S (safety: hold).' }),
  safetyNote: sentence('why it is, or may be, a safety matter').optional(),
  tellingReading: sentence('which reading or line of the batch sheet would tell'),
  cautions: slugs,
});

export const tableSchema = base.extend({
  order: z.number().int(),
  summary: sentence('one sentence: what can be looked up here'),
  cautions: slugs,
  sources: z.array(sourceId).min(1, 'Name the sources of the table.'),
});

export const worksheetSchema = base.extend({
  order: z.number().int(),
  purpose: sentence('one sentence: what this worksheet does for the cook'),
  gives: list('what comes out'),
  cautions: slugs,
});

/** A word of the trade. It is searched, and linked where it first stands in a technique's text. */
export const glossarySchema = z.strictObject({
  term: sentence('the word this book uses'),
  french: sentence('the word of the French kitchen').optional(),
  everyday: sentence('what anybody would call it').optional(),
  also: z.array(z.string().trim().min(2, 'Write another name.')).default([]),
  means: sentence('what it means, in one sentence'),
  see: z
    .array(
      z
        .string()
        .regex(
          /^(technique|caution|defect|table)\/[a-z0-9-]+$/,
          'Write technique/, caution/, defect/ or table/ and a slug.',
        ),
    )
    .default([]),
  /** False for a word too common to link in text. */
  link: z.boolean().default(true),
  searchWords: words,
});

export const techniqueSchema = base.extend({
  number: z.number().int().min(1).max(36),
  short: sentence('a name short enough for a list'),
  block: z.enum(BLOCKS.map((b) => b.id) as [(typeof BLOCKS)[number]['id']]),
  summary: sentence('one or two sentences under the title'),
  audience: z.array(z.enum(['learner', 'kitchen', 'shop'])).min(1, 'Say who it is for.'),
  aims: list('what the reader can do afterwards', 2),
  keyNumbers: z
    .array(
      z.strictObject({
        label: sentence('what the number is'),
        figure: z.string().min(1, 'Write the id of a figure from content/figures.'),
        why: sentence('why it sits there').optional(),
      }),
    )
    .min(2, 'Write at least two key numbers.'),
  /** The first opens by itself where the page uses it. */
  worksheets: z.array(slug).min(1, 'Name at least one worksheet.'),
  /** The invented batch they open on. */
  example: z
    .string({ error: 'Write example: the name of a batch in content/examples.' })
    .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'Write the name of a batch in content/examples.'),
  cautions: z.array(slug).min(1, 'Name the cautions that stand at the top.'),
  defects: slugs,
  /** Techniques to learn before this one. */
  prerequisites: slugs,
  selfCheck: z
    .array(z.strictObject({ ask: sentence('a question'), answer: sentence('its answer') }))
    .min(3, 'Write at least three questions.'),
  sources: z.array(sourceId).min(1, 'Name the sources.'),
});
