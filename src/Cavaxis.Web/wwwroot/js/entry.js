// Keeps what is typed while the workspace does not answer, and hands it in when it answers again, after a reload too.
(() => {
  const key = 'cavaxis-unsaved';
  const modal = () => document.getElementById('components-reconnect-modal');
  const isAway = () => /components-reconnect-(show|retrying|failed|rejected|paused|resume-failed)/.test(modal()?.className ?? '');
  const read = () => {
    try {
      return JSON.parse(sessionStorage.getItem(key) ?? '{}');
    } catch {
      return {};
    }
  };
  const write = (kept) => {
    try {
      sessionStorage.setItem(key, JSON.stringify(kept));
    } catch {
      // Without that store the text stays in the field as long as the page does.
    }
  };
  const here = () => location.pathname + location.search;

  document.addEventListener('input', (event) => {
    if (event.target.id?.startsWith('f-') && event.target.type === 'text' && isAway()) {
      write({ ...read(), [`${here()} ${event.target.id}`]: event.target.value });
    }
  }, true);

  const handIn = () => {
    const kept = read();
    let left = false;
    for (const [place, value] of Object.entries(kept)) {
      const [page, id] = place.split(' ');
      const field = page === here() ? document.getElementById(id) : null;
      if (!field) {
        left = true;
        continue;
      }
      delete kept[place];
      field.value = value;
      field.dispatchEvent(new Event('change', { bubbles: true }));
    }
    write(left ? kept : {});
  };
  // Frames say when they are alive: an event sent earlier would reach nobody.
  document.addEventListener('cavaxis-alive', handIn);

  const knock = () => fetch('./', { cache: 'no-store' }).then(() => location.reload(), () => setTimeout(knock, 2000));
  document.addEventListener('DOMContentLoaded', () => {
    modal()?.addEventListener('components-reconnect-state-changed', (event) => {
      const state = event.detail.state;
      if (state === 'hide') {
        setTimeout(handIn, 100);
      } else if (state === 'failed' || state === 'rejected' || state === 'resume-failed') {
        knock();
      }
    });
  });

  document.addEventListener('click', (event) => {
    if (event.target.closest?.('[data-print]')) {
      window.print();
    }
  });

  // Enter leads on to the next field, as Tab does.
  document.addEventListener('keydown', (event) => {
    const field = event.target;
    if (event.key !== 'Enter' || field.tagName !== 'INPUT' || field.type !== 'text' || !field.id?.startsWith('f-')) {
      return;
    }
    const fields = [...document.querySelectorAll('.entry input:not([type="file"]), .entry select, .entry .onward a')];
    const next = fields[fields.indexOf(field) + 1];
    if (next) {
      event.preventDefault();
      next.focus();
    }
  });
})();
