// Prints the configuration of nginx for the last build: `node site/hosting/write-nginx.mjs > site.conf`.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { HEADERS_FILE, readHeaders } from '../tools/headers.mjs';
import { nginxConfig } from '../tools/nginx.mjs';
import { baseFrom, outFrom } from '../tools/target.mjs';

const {
  ROOT_FOLDER = '/site',
  CERTIFICATE = '/certificate/kitchen.crt',
  KEY = '/certificate/kitchen.key',
} = process.env;
const rules = readHeaders(await readFile(join(outFrom(process.env), HEADERS_FILE), 'utf8'));
process.stdout.write(
  nginxConfig({
    rules,
    base: baseFrom(process.env),
    root: ROOT_FOLDER,
    certificate: CERTIFICATE,
    key: KEY,
  }),
);
