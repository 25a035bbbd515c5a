/** As much of Trusted Types as is used: the language's own types do not have them yet. */
interface TrustedTypes {
  createPolicy(
    name: string,
    rules: { createScriptURL: (address: string) => string },
  ): { createScriptURL: (address: string) => string };
}

/** The content security policy lets this name in, and no other that makes scripts of addresses for workers. */
const POLICY = 'larderwright-worker';

/** An address as it is, where it lies on this site. Anything else is a programmer's mistake. */
const own = (address: string): string => {
  if (new URL(address, location.href).origin !== location.origin)
    throw new TypeError(`A worker from elsewhere: ${address}`);
  return address;
};

let policy: ReturnType<TrustedTypes['createPolicy']> | null = null;

/** The one place where a worker is made. Throws where there can be none. */
export function ownWorker(address: string): Worker {
  const types = (globalThis as { trustedTypes?: TrustedTypes }).trustedTypes;
  policy ??= types?.createPolicy(POLICY, { createScriptURL: own }) ?? { createScriptURL: own };
  return new Worker(policy.createScriptURL(address), { type: 'module' });
}
