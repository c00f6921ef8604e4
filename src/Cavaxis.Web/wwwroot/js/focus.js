// Brings a field into view and the keyboard to it.
export function focus(id) {
  const element = document.getElementById(id);
  if (!element) {
    return;
  }
  const calm = window.matchMedia('(prefers-reduced-motion: reduce)').matches;
  element.scrollIntoView({ block: 'center', behavior: calm ? 'auto' : 'smooth' });
  element.focus({ preventScroll: true });
}
