import { defineCollection } from 'astro:content';
import { file, glob } from 'astro/loaders';
import {
  cautionSchema,
  defectSchema,
  glossarySchema,
  tableSchema,
  techniqueSchema,
  worksheetSchema,
} from '../content/schemas.ts';

const yamlOf = (name: string) => glob({ pattern: '*.yaml', base: `./content/${name}` });

export const collections = {
  techniques: defineCollection({
    loader: glob({ pattern: '*.mdx', base: './content/techniques' }),
    schema: techniqueSchema,
  }),
  cautions: defineCollection({ loader: yamlOf('cautions'), schema: cautionSchema }),
  defects: defineCollection({ loader: yamlOf('defects'), schema: defectSchema }),
  tables: defineCollection({ loader: yamlOf('tables'), schema: tableSchema }),
  glossary: defineCollection({ loader: file('./content/glossary.yaml'), schema: glossarySchema }),
  worksheets: defineCollection({ loader: yamlOf('worksheets'), schema: worksheetSchema }),
};
