// Lets a hand point in a picture: mouse, finger or keys. A pulled point follows here at once; the page is told where it was let go.
class Hand {
  constructor(root, page) {
    this.page = page;
    this.stage = root.querySelector('.pointing-stage');
    this.svg = this.stage.querySelector('svg');
    this.cursor = this.svg.querySelector('.pointing-cursor');
    this.at = null;
    this.pulled = null;
    this.handlers = {
      pointerdown: (e) => this.down(e),
      pointermove: (e) => this.move(e),
      pointerup: (e) => this.up(e),
      pointercancel: () => { this.pulled = null; },
      keydown: (e) => this.key(e),
      focus: () => this.show(),
      blur: () => this.cursor.setAttribute('visibility', 'hidden'),
    };
    for (const [name, handler] of Object.entries(this.handlers)) {
      this.stage.addEventListener(name, handler);
    }
    this.stage.dataset.mounted = '';
  }

  get width() { return Number(this.svg.dataset.width); }

  get height() { return Number(this.svg.dataset.height); }

  clamp({ x, y }) {
    return { x: Math.min(this.width, Math.max(0, x)), y: Math.min(this.height, Math.max(0, y)) };
  }

  place(event) {
    const matrix = this.svg.getScreenCTM();
    const p = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    return { inside: p.x >= 0 && p.y >= 0 && p.x <= this.width && p.y <= this.height, ...this.clamp(p) };
  }

  down(event) {
    if (event.button !== 0 || !event.isPrimary) {
      return;
    }
    this.stage.focus({ preventScroll: true });
    this.cursor.setAttribute('visibility', 'hidden');
    const grip = event.target.closest('[data-point]');
    if (grip) {
      this.pulled = { grip, index: Number(grip.dataset.point), moved: false };
      this.stage.setPointerCapture(event.pointerId);
      event.preventDefault();
    }
  }

  move(event) {
    if (this.pulled) {
      const to = this.place(event);
      this.pulled.moved = true;
      this.pulled.grip.setAttribute('transform', `translate(${to.x.toFixed(2)} ${to.y.toFixed(2)})`);
    }
  }

  up(event) {
    if (event.button !== 0 || !event.isPrimary) {
      return;
    }
    const to = this.place(event);
    if (this.pulled) {
      const { index, moved } = this.pulled;
      this.pulled = null;
      if (moved) {
        this.page.invokeMethodAsync('MovedAsync', index, to.x, to.y);
      }
      return;
    }
    if (to.inside) {
      this.at = to;
      this.page.invokeMethodAsync('PointAsync', to.x, to.y);
    }
  }

  show() {
    if (!this.stage.matches(':focus-visible')) {
      return;
    }
    const view = this.svg.viewBox.baseVal;
    this.at ??= { x: view.x + view.width / 2, y: view.y + view.height / 2 };
    this.cursor.setAttribute('visibility', 'visible');
    this.cursor.setAttribute('transform', `translate(${this.at.x.toFixed(2)} ${this.at.y.toFixed(2)})`);
  }

  key(event) {
    if (event.altKey || event.ctrlKey || event.metaKey) {
      return;
    }
    const step = event.shiftKey ? 10 : 1;
    const moves = { ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, -step], ArrowDown: [0, step] };
    if (moves[event.key]) {
      const view = this.svg.viewBox.baseVal;
      this.at ??= { x: view.x + view.width / 2, y: view.y + view.height / 2 };
      this.at = this.clamp({ x: this.at.x + moves[event.key][0], y: this.at.y + moves[event.key][1] });
      this.cursor.setAttribute('visibility', 'visible');
      this.cursor.setAttribute('transform', `translate(${this.at.x.toFixed(2)} ${this.at.y.toFixed(2)})`);
      event.preventDefault();
    } else if (event.key === 'Enter' || event.key === ' ') {
      this.show();
      if (this.at) {
        this.page.invokeMethodAsync('PointAsync', this.at.x, this.at.y);
      }
      event.preventDefault();
    } else if (event.key === 'Backspace' || event.key === 'Delete') {
      this.page.invokeMethodAsync('UndoAsync');
      event.preventDefault();
    }
  }

  leave() {
    for (const [name, handler] of Object.entries(this.handlers)) {
      this.stage.removeEventListener(name, handler);
    }
    delete this.stage.dataset.mounted;
  }
}

export const mount = (root, page) => new Hand(root, page);
