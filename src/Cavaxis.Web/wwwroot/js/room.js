// Dark or bright room: follows the device until a person chooses; the choice is kept. Runs before the page is drawn.
(() => {
  const key = 'cavaxis-room';
  const root = document.documentElement;
  const device = window.matchMedia('(prefers-color-scheme: light)');
  const kept = () => {
    try {
      return localStorage.getItem(key);
    } catch {
      return null;
    }
  };
  const show = () => {
    const room = kept() ?? (device.matches ? 'bright' : 'dark');
    if (root.dataset.room !== room) {
      root.dataset.room = room;
    }
    for (const button of document.querySelectorAll('.room-button')) {
      const pressed = String(button.dataset.room === room);
      if (button.getAttribute('aria-pressed') !== pressed) {
        button.setAttribute('aria-pressed', pressed);
      }
    }
  };
  show();
  device.addEventListener('change', show);
  window.addEventListener('storage', show);
  document.addEventListener('click', (event) => {
    const button = event.target.closest?.('.room-button');
    if (!button) {
      return;
    }
    try {
      localStorage.setItem(key, button.dataset.room);
    } catch {
      root.dataset.room = button.dataset.room;
    }
    show();
  });
  // The frame is drawn anew when the connection stands: the buttons must say the room again.
  document.addEventListener('DOMContentLoaded', () => {
    show();
    new MutationObserver(show).observe(document.body, { childList: true, subtree: true });
  });
})();
