// Keeps how far the guide has come: -1 not asked yet, 0 left, else the step.
const key = 'cavaxis-guide';

export function read() {
  document.documentElement.dataset.alive = 'true';
  document.dispatchEvent(new CustomEvent('cavaxis-alive'));
  try {
    const kept = Number.parseInt(localStorage.getItem(key) ?? '-1', 10);
    return Number.isInteger(kept) ? kept : -1;
  } catch {
    return 0;
  }
}

export function write(step) {
  try {
    localStorage.setItem(key, String(step));
  } catch {
    // Without that store the guide is offered again next time.
  }
}
