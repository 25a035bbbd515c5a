/** `npm run dev`: installs what is missing, then runs the site from its sources, rebuilding as they change. */
import { addressFrom } from './address.mjs';
import { ensureInstalled } from './install.mjs';
import { run, runMain } from './project.mjs';

await runMain(async () => {
  const { port, host } = addressFrom(process.env);
  await ensureInstalled();
  const { code } = await run('astro', [
    'dev',
    '--port',
    String(port),
    '--host',
    host,
    ...process.argv.slice(2),
  ]);
  process.exitCode = code ?? 1;
});
