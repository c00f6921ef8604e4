// Waveforms drawn in real time on one canvas: a pen goes from left to right over ten seconds and writes over what is oldest.
// Samples come from the simulator in packets; nothing is computed here but places of points.
const windowS = 10;
const gapPx = 14;
const markPx = 78;
const stepS = 0.01;
const stepOfButtonS = 1;
const rates = [60, 30, 20, 15];
const slowMs = 23;
const players = new WeakMap();

class Player {
  constructor(root) {
    this.root = root;
    this.canvas = root.querySelector('canvas');
    this.pen = this.canvas.getContext('2d');
    this.words = root.querySelector('[data-rate-words]');
    this.hold = root.querySelector('[data-act="hold"]');
    this.step = root.querySelector('[data-act="step"]');
    this.still = window.matchMedia('(prefers-reduced-motion: reduce)');
    this.held = this.still.matches;
    this.timeline = [];
    this.clock = 0;
    this.drawn = 0;
    this.level = 0;
    this.frame = 0;
    this.mean = 16;
    this.calm = 0;
    this.visible = true;
    this.off = new AbortController();
    const on = { signal: this.off.signal };
    this.hold.addEventListener('click', () => this.setHeld(!this.held), on);
    this.step.addEventListener('click', () => this.advance(stepOfButtonS), on);
    this.still.addEventListener('change', () => this.setHeld(this.still.matches), on);
    this.sizes = new ResizeObserver(() => this.fit());
    this.sizes.observe(this.canvas);
    this.sight = new IntersectionObserver((seen) => {
      this.visible = seen[seen.length - 1].isIntersecting;
      this.redraw();
    });
    this.sight.observe(this.canvas);
    this.room = new MutationObserver(() => this.redraw());
    this.room.observe(document.documentElement, { attributes: true, attributeFilter: ['data-room'] });
    this.setHeld(this.held);
  }

  close() {
    cancelAnimationFrame(this.request);
    this.off.abort();
    this.sizes.disconnect();
    this.sight.disconnect();
    this.room.disconnect();
  }

  setHeld(held) {
    this.held = held;
    this.hold.setAttribute('aria-pressed', String(held));
    this.step.hidden = !held;
    this.tell();
    cancelAnimationFrame(this.request);
    if (!held) {
      this.last = undefined;
      this.request = requestAnimationFrame((now) => this.tick(now));
    }
  }

  tell() {
    this.root.dataset.rate = this.held ? '0' : String(rates[this.level]);
    this.words.textContent = this.held ? 'Held still.' : `Up to ${rates[this.level]} pictures a second.`;
  }

  // A packet follows at the end of the breath that is being played, so that the waves do not jump.
  play(packet, samples) {
    const pieces = [];
    let at = 0;
    for (const segment of packet.segments) {
      const rows = [];
      for (let i = 0; i < packet.strips.length + 2; i++) {
        rows.push(samples.subarray(at, at + segment.count));
        at += segment.count;
      }
      pieces.push({ ...segment, length: segment.spacing * segment.count, rows });
    }
    const others = this.strips && this.strips.map((s) => s.words).join() !== packet.strips.map((s) => s.words).join();
    if (others) {
      this.timeline = [];
      this.clock = 0;
      this.drawn = 0;
    }
    this.strips = packet.strips;
    const playing = this.timeline.findLast((piece) => piece.start <= this.clock);
    let start = 0;
    if (playing) {
      const past = Math.max(0, this.clock - playing.start);
      start = playing.start + (Math.floor(past / playing.length) + 1) * playing.length;
      this.timeline = this.timeline.filter((piece) => piece.start <= this.clock);
    }
    for (const piece of pieces) {
      piece.start = start;
      start += piece.length;
      this.timeline.push(piece);
    }
    if (!playing) {
      // The window is full from the beginning: the settled breath was there before.
      this.clock = windowS;
      this.timeline[0].start = 0;
    }
    this.fit();
    if (this.held && pieces.length > 1) {
      // Without motion the picture goes on at once to where the change shows.
      this.advance(pieces[1].start + 0.6 * windowS - this.clock);
    }
  }

  tick(now) {
    this.request = requestAnimationFrame((next) => this.tick(next));
    const delta = this.last === undefined ? 16 : now - this.last;
    this.last = now;
    this.clock += Math.min(delta, 250) / 1000;
    this.watch(delta);
    this.frame += 1;
    if (this.visible && this.strips && this.frame % (this.level + 1) === 0) {
      this.draw(this.drawn, this.clock);
      this.drawn = this.clock;
      this.point();
    }
  }

  // Fewer pictures where the machine cannot keep up; more again after ten calm seconds.
  watch(delta) {
    if (delta > 500) {
      return;
    }
    this.mean += 0.05 * (delta - this.mean);
    if (this.mean > slowMs && this.level < rates.length - 1) {
      this.level += 1;
      this.mean = 16;
      this.calm = 0;
      this.tell();
      return;
    }
    this.calm = this.mean < 18 ? this.calm + delta : 0;
    if (this.level > 0 && this.calm > 10000) {
      this.level -= 1;
      this.calm = 0;
      this.tell();
    }
  }

  advance(seconds) {
    this.clock += Math.max(0, seconds);
    this.redraw();
  }

  fit() {
    const box = this.canvas.getBoundingClientRect();
    const ratio = window.devicePixelRatio || 1;
    this.width = box.width;
    this.height = box.height;
    const [wide, high] = [Math.round(box.width * ratio), Math.round(box.height * ratio)];
    if (this.canvas.width !== wide || this.canvas.height !== high) {
      this.canvas.width = wide;
      this.canvas.height = high;
      this.pen.setTransform(ratio, 0, 0, ratio, 0, 0);
    }
    this.redraw();
  }

  redraw() {
    const style = getComputedStyle(this.root);
    this.ink = ['--wave-1', '--wave-2', '--wave-3'].map((name) => style.getPropertyValue(name).trim());
    this.grid = style.getPropertyValue('--edge').trim();
    this.text = style.getPropertyValue('--ink').trim();
    if (!this.strips || !this.width) {
      return;
    }
    this.pen.clearRect(0, 0, this.width, this.height);
    this.draw(Math.max(0, this.clock - windowS + (gapPx / this.width) * windowS), this.clock);
    this.drawn = this.clock;
    this.point();
  }

  pieceAt(time) {
    for (let i = this.timeline.length - 1; i > 0; i--) {
      if (this.timeline[i].start <= time) {
        return this.timeline[i];
      }
    }
    return this.timeline[0];
  }

  value(piece, row, time) {
    let at = Math.max(0, time - piece.start) / piece.spacing;
    if (piece.repeats) {
      at %= piece.count;
    }
    const low = Math.min(Math.floor(at), piece.count - 1);
    const high = low + 1 < piece.count ? low + 1 : piece.repeats ? 0 : low;
    const values = piece.rows[row];
    return values[low] + (at - low) * (values[high] - values[low]);
  }

  // Splits at the right edge, where the pen begins anew on the left.
  draw(from, to) {
    let start = Math.max(from, to - windowS);
    while (start < to) {
      const end = Math.min(to, (Math.floor(start / windowS + 1e-9) + 1) * windowS);
      this.write(start, end);
      start = end;
    }
  }

  write(from, to) {
    const { pen } = this;
    const perS = this.width / windowS;
    const lap = Math.floor(from / windowS + 1e-9) * windowS;
    const x = (time) => (time - lap) * perS;
    const [left, right] = [x(from), x(to)];
    pen.clearRect(left, 0, right - left + gapPx, this.height);
    const each = this.height / this.strips.length;
    pen.lineWidth = 1;
    pen.strokeStyle = this.grid;
    pen.beginPath();
    for (let i = 0; i < this.strips.length; i++) {
      for (const line of [6, each - 6]) {
        pen.moveTo(left, Math.round(i * each + line) + 0.5);
        pen.lineTo(right, Math.round(i * each + line) + 0.5);
      }
    }
    pen.stroke();
    pen.lineWidth = 1.8;
    pen.lineJoin = 'round';
    for (let i = 0; i < this.strips.length; i++) {
      const { low, high } = this.strips[i];
      const y = (value) => i * each + each - 6 - ((value - low) / (high - low)) * (each - 12);
      pen.strokeStyle = this.ink[i % this.ink.length];
      pen.beginPath();
      let time = Math.max(lap, from - stepS);
      pen.moveTo(x(time), y(this.value(this.pieceAt(time), i, time)));
      while (time < to) {
        time = Math.min(to, time + stepS);
        pen.lineTo(x(time), y(this.value(this.pieceAt(time), i, time)));
      }
      pen.stroke();
    }
    for (const piece of this.timeline) {
      // A word beside its line needs room to the right: it is written when the pen is past it.
      const passed = x(piece.start) + markPx;
      if (piece.mark && piece.start >= lap && (right >= passed && left < passed || from <= piece.start && to >= piece.start)) {
        this.mark(x(piece.start), piece.mark);
      }
    }
  }

  mark(at, word) {
    const { pen } = this;
    pen.strokeStyle = this.text;
    pen.lineWidth = 1.5;
    pen.setLineDash([5, 4]);
    pen.beginPath();
    pen.moveTo(at, 0);
    pen.lineTo(at, this.height);
    pen.stroke();
    pen.setLineDash([]);
    pen.fillStyle = this.text;
    pen.font = '13px "DejaVu Sans", sans-serif';
    pen.textBaseline = 'top';
    // At the right edge there is no room beyond the line: the word stands before it.
    const room = at + markPx <= this.width;
    pen.textAlign = room ? 'left' : 'right';
    pen.fillText(word, room ? at + 4 : at - 4, 8);
  }

  // The point that runs along the pressure-volume loop beside the waves.
  point() {
    const dot = document.querySelector('[data-loop-point]');
    const place = dot?.dataset.loopPlace?.split(' ').map(Number);
    if (!place || !this.strips) {
      return;
    }
    const piece = this.pieceAt(this.clock);
    const [volume, pressure] = [this.value(piece, this.strips.length, this.clock), this.value(piece, this.strips.length + 1, this.clock)];
    const [left, bottom] = dot.dataset.loopCorner.split(' ').map(Number);
    dot.setAttribute('cx', (left + (volume - place[0]) * place[1]).toFixed(1));
    dot.setAttribute('cy', (bottom - (pressure - place[2]) * place[3]).toFixed(1));
  }
}

/** Plays a packet in a frame of waves; the first one starts it. */
export function play(root, packet, bytes) {
  const samples = new Float32Array(bytes.slice().buffer);
  let player = players.get(root);
  if (!player) {
    player = new Player(root);
    players.set(root, player);
  }
  player.play(packet, samples);
}

/** Ends a frame of waves. */
export function stop(root) {
  players.get(root)?.close();
  players.delete(root);
}
