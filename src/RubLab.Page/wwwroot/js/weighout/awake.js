// Keeps the screen from going dark while something is weighed, where the browser can.

let lock = null;
let isWanted = false;

export async function stayAwake(wanted) {
  isWanted = wanted;
  if (!wanted) {
    await lock?.release().catch(() => undefined);
    lock = null;
  } else if ('wakeLock' in navigator && document.visibilityState === 'visible' && !lock) {
    lock = await navigator.wakeLock.request('screen').catch(() => null);
    lock?.addEventListener('release', () => {
      lock = null;
    });
  }
}

document.addEventListener('visibilitychange', () => isWanted && stayAwake(true));
