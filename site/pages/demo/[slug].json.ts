import type { APIRoute, GetStaticPaths } from 'astro';
import { demos } from '../../../content/demo/index.ts';

export const getStaticPaths = (() =>
  Object.keys(demos).map((slug) => ({ params: { slug } }))) satisfies GetStaticPaths;

export const GET: APIRoute = ({ params }) => {
  const batch = demos[params.slug ?? ''];
  return new Response(JSON.stringify(batch), { headers: { 'Content-Type': 'application/json' } });
};
