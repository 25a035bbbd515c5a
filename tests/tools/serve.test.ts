import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PlainError } from '../../site/tools/project.mjs';
import { safePath, serve } from '../../site/tools/serve.mjs';

interface Answer {
  status: number;
  headers: Record<string, string | string[] | undefined>;
  body: Buffer;
}

let top = '';
let site: Awaited<ReturnType<typeof serve>>;

/** Sends the path exactly as given: a browser or `fetch` would tidy `..` away before sending. */
function ask(path: string, headers: Record<string, string> = {}, method = 'GET'): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const sent = request({ host: '127.0.0.1', port: site.port, path, headers, method }, (response) => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers, body: Buffer.concat(chunks) }),
      );
    });
    sent.on('error', reject);
    sent.end();
  });
}

beforeAll(async () => {
  top = await mkdtemp(join(tmpdir(), 'larderwright-serve-'));
  const folder = join(top, 'dist');
  await mkdir(join(folder, 'terrine'), { recursive: true });
  await mkdir(join(folder, '_astro'));
  await writeFile(join(folder, 'index.html'), '<h1>Home</h1>');
  await writeFile(join(folder, '404.html'), '<h1>Not here</h1>');
  await writeFile(join(folder, 'terrine', 'index.html'), '<h1>Terrine</h1>');
  await writeFile(join(folder, '_astro', 'a.1f2e.js'), 'export {};');
  await writeFile(join(folder, 'pâté.txt'), 'fine');
  await writeFile(join(folder, '.built-from'), 'hidden');
  await writeFile(
    join(folder, '_headers'),
    '/*\n  Referrer-Policy: no-referrer\n\n/_astro/*\n  Cache-Control: max-age=31536000, immutable\n',
  );
  await writeFile(join(top, 'secret.txt'), 'outside');
  site = await serve({ folder, port: 0, host: '127.0.0.1' });
});

afterAll(async () => {
  await site.close();
  await rm(top, { recursive: true });
});

describe('serve', () => {
  it('gives a folder its index.html, as HTML', async () => {
    const answer = await ask('/terrine/');
    expect(answer.status).toBe(200);
    expect(answer.headers['content-type']).toBe('text/html; charset=utf-8');
    expect(answer.body.toString()).toBe('<h1>Terrine</h1>');
  });

  it('sends a folder without its slash on to the one with it, query kept', async () => {
    const answer = await ask('/terrine?print=1');
    expect(answer.status).toBe(301);
    expect(answer.headers.location).toBe('/terrine/?print=1');
  });

  it('never sends a path of two slashes to another host', async () => {
    const answer = await ask('//terrine');
    expect(answer.headers.location).toBe('/terrine/');
  });

  it('answers what is not there with 404.html and status 404', async () => {
    for (const path of ['/nothing', '/nothing/', '/terrine/index.html/', '/_astro/']) {
      const answer = await ask(path);
      expect([path, answer.status, answer.body.toString()]).toEqual([path, 404, '<h1>Not here</h1>']);
    }
  });

  it('gives nothing outside the folder, nothing hidden, and survives malformed paths', async () => {
    const paths = [
      '/../secret.txt',
      '/%2e%2e/secret.txt',
      '/..%2fsecret.txt',
      '/terrine/../../secret.txt',
      '/..\\secret.txt',
    ];
    for (const path of [...paths, '/.built-from', '/_headers', '/%00', '/%zz', 'secret.txt', '*']) {
      const answer = await ask(path);
      // Node itself answers what is no request at all, with 400.
      expect(answer.status, path).toBeOneOf([400, 404]);
      expect(answer.body.toString(), path).not.toMatch(/outside|hidden/);
    }
  });

  it('reads percent-encoded names', async () => {
    expect((await ask('/p%C3%A2t%C3%A9.txt')).body.toString()).toBe('fine');
  });

  it('sends what the headers file asks for, and asks again for the rest', async () => {
    expect((await ask('/_astro/a.1f2e.js')).headers['cache-control']).toContain('immutable');
    expect((await ask('/')).headers['cache-control']).toBe('no-cache');
    expect((await ask('/')).headers['referrer-policy']).toBe('no-referrer');
    expect((await ask('/nothing')).headers['referrer-policy']).toBe('no-referrer');
  });

  it('zips text for a browser that takes it', async () => {
    const answer = await ask('/', { 'accept-encoding': 'gzip, br' });
    expect(answer.headers['content-encoding']).toBe('gzip');
    expect(gunzipSync(answer.body).toString()).toBe('<h1>Home</h1>');
  });

  it('answers HEAD without a body and refuses other methods', async () => {
    const head = await ask('/', {}, 'HEAD');
    expect([head.status, head.body.length]).toEqual([200, 0]);
    expect((await ask('/', {}, 'POST')).status).toBe(405);
  });

  it('says so plainly when the port is taken', async () => {
    const second = serve({ folder: top, port: site.port, host: '127.0.0.1' });
    await expect(second).rejects.toThrow(PlainError);
    await expect(second).rejects.toThrow(`Port ${site.port} is already in use`);
  });
});

describe('serve, in a folder of its host', () => {
  it('answers below that folder alone, and sends on within it', async () => {
    const below = await serve({ folder: join(top, 'dist'), port: 0, host: '127.0.0.1', base: '/larder/' });
    const get = (path: string) => fetch(`http://127.0.0.1:${below.port}${path}`, { redirect: 'manual' });
    expect([(await get('/larder/')).status, (await get('/larder/terrine/')).status]).toEqual([200, 200]);
    expect([(await get('/')).status, (await get('/terrine/')).status]).toEqual([404, 404]);
    expect((await get('/larder/terrine')).headers.get('location')).toBe('/larder/terrine/');
    await below.close();
  });
});

describe('safePath', () => {
  it('decodes a path, and is null for what is hidden, malformed or climbs', () => {
    expect(safePath('/a%20b/c.css')).toBe('/a b/c.css');
    for (const path of ['/..', '/a/../b', '/.git/config', '/%', '/a\\b', 'a', ''])
      expect(safePath(path)).toBeNull();
  });
});
