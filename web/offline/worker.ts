/** How a newer page that waits is put to use: all pages of this origin then run it, this one is loaded anew. */
export type UseNewVersion = () => void;

/** After so long this page is loaded anew even where the browser has not told that the newer one took over, ms. */
const takesOverWithinMs = 4000;

/**
 * Has the browser keep the page for use without a connection. `onNew` is called when a newer page has been loaded and waits; it never
 * takes over by itself; `onKept` when all files of this one are kept. Gives how to look for a newer one, or null where the browser has no service workers here (plain HTTP).
 */
export function keepPage(onNew: (use: UseNewVersion) => void, onKept: () => void): (() => void) | null {
  if (!('serviceWorker' in navigator)) return null;
  const { serviceWorker } = navigator;
  let found: ServiceWorkerRegistration | null = null;
  const offer = (waiting: ServiceWorker): void =>
    onNew(() => {
      serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
      waiting.postMessage({ type: 'SKIP_WAITING' });
      setTimeout(() => location.reload(), takesOverWithinMs);
    });
  const watch = (registration: ServiceWorkerRegistration): void => {
    found = registration;
    if (registration.waiting && serviceWorker.controller) offer(registration.waiting);
    registration.addEventListener('updatefound', () => {
      const fresh = registration.installing;
      fresh?.addEventListener('statechange', () => {
        if (fresh.state === 'installed' && registration.waiting === fresh && registration.active) offer(fresh);
      });
    });
  };
  serviceWorker.register('/sw.js').then(watch, () => {});
  serviceWorker.ready.then(onKept, () => {});
  return () => void found?.update().catch(() => {});
}
