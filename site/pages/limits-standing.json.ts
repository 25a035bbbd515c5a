import { BUILT_STANDING } from '@larderwright/calc/sources';
import type { APIRoute } from 'astro';

/** Asked for by every worksheet with a batch, past every cache: which limits were withdrawn. */
export const GET: APIRoute = () => new Response(JSON.stringify(BUILT_STANDING));
