import type { APIRoute, GetStaticPaths } from 'astro';
import { examples } from '../../../../content/examples/index.ts';
import { openBook } from '../../../lib/book.ts';

export const getStaticPaths = (async () => {
  const { techniques } = await openBook();
  return techniques.map(({ id, data }) => ({ params: { slug: id }, props: { example: data.example } }));
}) satisfies GetStaticPaths;

export const GET: APIRoute<{ example: string }> = ({ props }) =>
  new Response(JSON.stringify(examples[props.example]), { headers: { 'Content-Type': 'application/json' } });
