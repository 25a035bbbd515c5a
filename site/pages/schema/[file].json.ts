import { BATCH_SCHEMA } from '@larderwright/calc/batch';
import type { APIRoute, GetStaticPaths } from 'astro';
import { publishedSchema } from '../../lib/batch-schema.ts';

export const getStaticPaths = (() => [
  { params: { file: `batches-${BATCH_SCHEMA}` } },
]) satisfies GetStaticPaths;

export const GET: APIRoute = () =>
  new Response(`${JSON.stringify(publishedSchema(), null, 1)}\n`, {
    headers: { 'Content-Type': 'application/schema+json' },
  });
