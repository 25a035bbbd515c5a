import type { APIRoute } from 'astro';
import { worksheetLinks } from '../../lib/worksheet-links.ts';

/** The addresses an island is given, for worksheets opened within a technique page. */
export const GET: APIRoute = async () =>
  new Response(JSON.stringify(await worksheetLinks()), { headers: { 'Content-Type': 'application/json' } });
