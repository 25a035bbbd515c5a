import type { APIRoute } from 'astro';
import { searchRecords } from '../lib/search-records.ts';

/** Read by site/tools/index-search.mjs after the build, which then removes it. */
export const GET: APIRoute = async () => new Response(JSON.stringify(await searchRecords()));
