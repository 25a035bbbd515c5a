/**
 * Keeps the site on the device, and says so in one quiet line at the foot. A new edition is offered, never forced.
 * Fetched some seconds after the page stands. On plain http a browser has
 * no service worker: the line says what else is missing there.
 */
import { PLAIN_HTTP } from '../../../worksheets/words/plain-http.ts';
import { offlineSize, serviceWorker } from '../../lib/urls.ts';
import { make } from '../search/make.ts';

interface Policies {
  createPolicy(
    name: string,
    rules: { createScriptURL: (address: string) => string },
  ): { createScriptURL: (address: string) => string };
}

const megabytes = (bytes: number) => `${(bytes / 1e6).toFixed(1)} MB`;
const own = (address: string) => address;

/** The line at the foot, said to a screen reader once it changes. */
const line = make('p', { className: 'kept-line', role: 'status' });
const say = (...words: (Node | string)[]) => {
  line.replaceChildren(...words);
  if (!line.isConnected) document.querySelector('.foot')?.append(line);
};

const button = (label: string, press: () => void) => {
  const made = make('button', { type: 'button', textContent: label });
  made.addEventListener('click', press);
  return made;
};

/** Offers the edition that waits. Until it is taken the page and all it asks for stay with the edition they came from. */
function offer(waiting: ServiceWorker): void {
  if (document.querySelector('.edition-offer')) return;
  const bar = make('div', { className: 'edition-offer', role: 'status' });
  const take = () => {
    navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
    waiting.postMessage('take over');
  };
  bar.append(
    make('p', {}, 'A new edition of this site is ready. What you typed stays.'),
    button('Open the new edition', take),
    button('Later', () => bar.remove()),
  );
  document.body.append(bar);
}

function follow(registration: ServiceWorkerRegistration): void {
  const { serviceWorker: workers } = navigator;
  const isUpdate = () => registration.active !== null;
  const watch = (worker: ServiceWorker) =>
    worker.addEventListener('statechange', () => {
      if (worker.state === 'installed' && isUpdate()) offer(worker);
      if (worker.state === 'activated') say('The whole site is on this device and works without a network.');
    });
  workers.addEventListener('message', ({ data }: MessageEvent<{ say: string; kept: number; of: number }>) => {
    if (data.say === 'kept' && !isUpdate() && data.kept < data.of)
      say(
        `Keeping the site on this device, for work without a network: ${megabytes(data.kept)} of ${megabytes(data.of)}.`,
      );
  });
  workers.startMessages();
  if (registration.waiting && isUpdate()) offer(registration.waiting);
  if (registration.installing) watch(registration.installing);
  registration.addEventListener('updatefound', () => {
    if (registration.installing) watch(registration.installing);
  });
}

async function begin(): Promise<void> {
  const types = (globalThis as { trustedTypes?: Policies }).trustedTypes;
  const policy = types?.createPolicy('larderwright-offline', { createScriptURL: own });
  const address = policy?.createScriptURL(serviceWorker) ?? serviceWorker;
  follow(await navigator.serviceWorker.register(address, { updateViaCache: 'none' }));
}

/** Where the person asked the device to save data, the site is kept only when they say so. */
async function offerToKeep(): Promise<void> {
  const response = await fetch(offlineSize);
  const { bytes }: { bytes: number } = await response.json();
  say(
    `For work without a network the whole site can be kept on this device: ${megabytes(bytes)}. `,
    button('Keep it', () => void begin().catch(unkept)),
  );
}

const unkept = () => say('The site could not be kept on this device. It needs the network.');

async function start(): Promise<void> {
  if (!isSecureContext && !document.querySelector('.worksheet')) say(PLAIN_HTTP);
  if (!('serviceWorker' in navigator)) return;
  const { connection } = navigator as { connection?: { saveData?: boolean } };
  const known = await navigator.serviceWorker.getRegistration();
  if (connection?.saveData && !known?.active) await offerToKeep();
  else await begin();
}

start().catch(unkept);
