// Keeps the page usable without the server, and says when a new version has come.

/**
 * @param {(take: () => void) => void} onNewVersion called when a new version is complete on this device; `take` puts
 * it in use and loads the page again.
 */
export async function keepOffline(onNewVersion) {
  if (!('serviceWorker' in navigator)) {
    return;
  }
  const hadVersion = navigator.serviceWorker.controller !== null;
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (hadVersion) {
      location.reload();
    }
  });
  try {
    const registration = await navigator.serviceWorker.register('service-worker.js', { updateViaCache: 'none' });
    const announce = worker => onNewVersion(() => worker.postMessage('take-over'));
    if (registration.waiting && hadVersion) {
      announce(registration.waiting);
    }
    const follow = worker => worker?.addEventListener('statechange', () => {
      if (worker.state === 'installed' && navigator.serviceWorker.controller) {
        announce(worker);
      }
    });
    // The browser looks for a new version by itself when the page is opened, maybe before this line.
    follow(registration.installing);
    registration.addEventListener('updatefound', () => follow(registration.installing));
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'visible') {
        registration.update().catch(() => undefined);
      }
    });
  } catch (fault) {
    console.warn('This page will not work without the server:', fault);
  }
}
