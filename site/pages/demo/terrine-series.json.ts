import type { APIRoute } from 'astro';
import { terrineSeries } from '../../../content/demo/terrine-series.ts';

/** The invented series of the page that compares batches. */
export const GET: APIRoute = () =>
  new Response(JSON.stringify(terrineSeries), { headers: { 'Content-Type': 'application/json' } });
