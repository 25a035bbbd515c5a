import { PlainError } from './project.mjs';

const DEFAULT_PORT = 4173;

/**
 * Where to serve, from PORT and HOST.
 * @param {Readonly<Record<string, string | undefined>>} env
 * @returns {{ port: number, host: string }} port 0 means any free one
 */
export function addressFrom(env) {
  const text = (env.PORT ?? '').trim();
  const host = (env.HOST ?? '').trim() || 'localhost';
  if (text === '') return { port: DEFAULT_PORT, host };
  const port = /^\d+$/.test(text) ? Number(text) : Number.NaN;
  if (!(port <= 65_535)) throw new PlainError(`PORT must be a whole number from 0 to 65535, not "${text}".`);
  return { port, host };
}
