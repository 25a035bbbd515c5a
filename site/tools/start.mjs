/**
 * `npm start`: installs what is missing, builds what has changed, serves the finished site.
 * Runs on Node 20 with nothing installed; PORT and HOST are honoured.
 */
import { addressFrom } from './address.mjs';
import { DIST, ensureBuilt } from './build.mjs';
import { ensureInstalled } from './install.mjs';
import { runMain, say } from './project.mjs';
import { serve } from './serve.mjs';
import { baseFrom } from './target.mjs';

await runMain(async () => {
  const { port, host } = addressFrom(process.env);
  const base = baseFrom(process.env);
  // A taken port is told at once, not after a minute of building.
  await (await serve({ folder: DIST, port, host, base })).close();
  await ensureInstalled();
  await ensureBuilt();
  const site = await serve({ folder: DIST, port, host, base });
  say(
    `\nLarderwright is open at  http://${host.includes(':') ? `[${host}]` : host}:${site.port}${base}\nCtrl-C stops it.`,
  );
  for (const signal of ['SIGINT', 'SIGTERM']) {
    process.once(signal, () => void site.close());
  }
});
