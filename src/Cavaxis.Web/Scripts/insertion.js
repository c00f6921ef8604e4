// Draws one patient's lumen and what is inserted into it, moment by moment, in parallel projection. Everything is computed on the
// server; here are only places on the screen. The patient stands upright: turning is about the long axis alone.
import {
  AmbientLight, BackSide, BufferAttribute, BufferGeometry, Color, Curve, DirectionalLight, FrontSide, Group, LineBasicMaterial,
  LineDashedMaterial, LineSegments, Mesh, MeshLambertMaterial, OrthographicCamera, Scene, SphereGeometry, TubeGeometry, Vector3, WebGLRenderer,
} from 'three';

const svgName = 'http://www.w3.org/2000/svg';
const framesPerS = 12;
const quarter = Math.PI / 2;
const stepOfKey = Math.PI / 12;
const labelGapPx = 15;
const leastWireMm = 1;
const closeUp = 4;
const sides = 10;

// Patient: x left, y back, z head. Screen: x right, y up, z towards the viewer.
const placed = (points, i) => new Vector3(points[4 * i], points[4 * i + 2], -points[4 * i + 1]);

class Polyline extends Curve {
  constructor(points) {
    super();
    this.points = points;
  }

  getPoint(t, target = new Vector3()) {
    const at = Math.min(Math.max(t, 0), 1) * (this.points.length - 1);
    const low = Math.min(Math.floor(at), this.points.length - 2);
    return target.lerpVectors(this.points[low], this.points[low + 1], at - low);
  }

  getPointAt(t, target) {
    return this.getPoint(t, target);
  }

  getTangentAt(t, target) {
    return this.getTangent(t, target);
  }
}

const floats = (bytes) => new Float32Array(bytes.slice().buffer);

class Stage {
  constructor(root) {
    this.root = root;
    this.canvas = root.querySelector('canvas');
    this.labels = root.querySelector('[data-labels]');
    this.slider = root.querySelector('[data-act="moment"]');
    this.words = root.querySelector('[data-words="moment"]');
    this.playButton = root.querySelector('[data-act="play"]');
    this.off = new AbortController();
    this.turn = 0;
    this.zoom = 1;
    this.centre = new Vector3();
    this.moment = 0;
    this.scene = new Scene();
    this.lumen = new Group();
    this.devices = new Group();
    this.sampled = new Group();
    this.light = new DirectionalLight(0xffffff, 1.8);
    this.scene.add(this.lumen, this.sampled, this.devices, this.light, new AmbientLight(0xffffff, 1.2));
    this.camera = new OrthographicCamera(-1, 1, 1, -1, 1, 6000);
    this.renderer = new WebGLRenderer({ canvas: this.canvas, antialias: true, alpha: true, preserveDrawingBuffer: true });
    this.listen();
  }

  listen() {
    const on = { signal: this.off.signal };
    this.playButton.addEventListener('click', () => this.setPlaying(!this.playing), on);
    this.slider.addEventListener('input', () => {
      this.setPlaying(false);
      this.show(Number(this.slider.value));
    }, on);
    for (const button of this.root.querySelectorAll('[data-view]')) {
      button.addEventListener('click', () => this.view(button.dataset.view), on);
    }
    this.root.querySelector('[data-act="sampled"]')?.addEventListener('change', (event) => {
      this.sampled.visible = event.target.checked;
      this.draw();
    }, on);
    this.canvas.addEventListener('pointerdown', (event) => this.grab(event), on);
    this.canvas.addEventListener('keydown', (event) => this.key(event), on);
    this.canvas.addEventListener('wheel', (event) => {
      if (event.ctrlKey) {
        event.preventDefault();
        this.magnify(event.deltaY < 0 ? 1.15 : 1 / 1.15);
      }
    }, { signal: this.off.signal, passive: false });
    this.sizes = new ResizeObserver(() => this.draw());
    this.sizes.observe(this.canvas);
    this.room = new MutationObserver(() => this.dress());
    this.room.observe(document.documentElement, { attributes: true, attributeFilter: ['data-room'] });
  }

  leave() {
    this.setPlaying(false);
    this.off.abort();
    this.sizes.disconnect();
    this.room.disconnect();
    this.clear();
    this.renderer.dispose();
  }

  clear() {
    for (const group of [this.lumen, this.devices, this.sampled]) {
      this.empty(group);
    }
  }

  empty(group) {
    for (const child of [...group.children]) {
      group.remove(child);
      child.geometry.dispose();
      child.material.dispose();
    }
  }

  // A new play: the same or another anatomy, from the point where it is worth looking.
  load(play, points, normals, corners, paths, wires) {
    this.setPlaying(false);
    this.clear();
    this.play = play;
    this.paths = floats(paths);
    const surface = new BufferGeometry();
    surface.setAttribute('position', new BufferAttribute(floats(points), 3));
    surface.setAttribute('normal', new BufferAttribute(floats(normals), 3));
    surface.setIndex(new BufferAttribute(new Uint32Array(corners.slice().buffer), 1));
    surface.computeBoundingBox();
    surface.boundingBox.getCenter(this.middle = new Vector3());
    surface.boundingBox.getSize(this.size = new Vector3());
    for (const side of [BackSide, FrontSide]) {
      const wall = new Mesh(surface, new MeshLambertMaterial({ transparent: true, opacity: side === BackSide ? 0.5 : 0.22, side, depthWrite: false }));
      wall.renderOrder = side === BackSide ? 0 : 3;
      this.lumen.add(wall);
    }
    this.addSampled(floats(wires));
    this.slider.max = String(play.frames.length - 1);
    this.centre.copy(this.middle);
    this.zoom = 1;
    this.follow = false;
    this.dress(false);
    this.show(play.wrong ?? play.fed);
    this.root.dataset.ready = play.name;
  }

  addSampled(points) {
    for (const astray of [false, true]) {
      const places = [];
      for (const line of this.play.sampled) {
        for (let i = line.start; line.astray === astray && i + 1 < line.start + line.count; i++) {
          const [a, b] = [placed(points, i), placed(points, i + 1)];
          places.push(a.x, a.y, a.z, b.x, b.y, b.z);
        }
      }
      const geometry = new BufferGeometry();
      geometry.setAttribute('position', new BufferAttribute(new Float32Array(places), 3));
      const material = astray
        ? new LineDashedMaterial({ transparent: true, opacity: 0.75, dashSize: 7, gapSize: 5 })
        : new LineBasicMaterial({ transparent: true, opacity: 0.3 });
      const lines = new LineSegments(geometry, material);
      if (astray) {
        lines.computeLineDistances();
      }
      lines.renderOrder = 1;
      this.sampled.add(lines);
    }
  }

  dress(draw = true) {
    const style = getComputedStyle(this.root);
    const tone = (name) => new Color(style.getPropertyValue(name).trim());
    this.tones = { wall: tone('--edge-strong'), ink: tone('--ink'), soft: tone('--ink-soft'), drain: tone('--drain'), stop: tone('--stop'), warn: tone('--warn') };
    for (const wall of this.lumen.children) {
      wall.material.color = this.tones.wall;
    }
    if (this.sampled.children.length > 0) {
      this.sampled.children[0].material.color = this.tones.soft;
      this.sampled.children[1].material.color = this.tones.stop;
    }
    if (draw) {
      this.show(this.moment);
    }
  }

  show(moment) {
    if (!this.play) {
      return;
    }
    this.moment = Math.min(Math.max(0, moment), this.play.frames.length - 1);
    const frame = this.play.frames[this.moment];
    this.empty(this.devices);
    const reach = Math.max(frame.wire, frame.introducer, frame.cannula);
    this.tip = this.addTube(frame, reach, leastWireMm, this.tones.ink);
    this.addTube(frame, frame.introducer, Math.max(leastWireMm + 0.6, 0.7 * this.play.radius), this.tones.soft);
    this.addTube(frame, frame.cannula, this.play.radius, this.tones.drain);
    const wrong = this.play.wrong !== null && this.moment >= this.play.wrong;
    if (this.tip) {
      const end = new Mesh(new SphereGeometry(wrong ? 5 : 3, 12, 8), new MeshLambertMaterial({ color: wrong ? this.tones.stop : this.tones.ink }));
      end.position.copy(this.tip);
      end.renderOrder = 2;
      this.devices.add(end);
    }
    this.slider.value = String(this.moment);
    this.slider.setAttribute('aria-valuetext', frame.words);
    this.words.textContent = frame.words;
    this.root.dataset.moment = String(this.moment);
    this.root.dataset.astray = String(wrong);
    for (const step of this.root.querySelectorAll('[data-phase]')) {
      step.toggleAttribute('data-now', step.dataset.phase === frame.phase);
    }
    if (this.follow && this.tip) {
      this.centre.copy(this.tip);
    }
    this.draw();
  }

  addTube(frame, reach, radius, color) {
    const line = [];
    for (let i = frame.start; i < frame.start + frame.count; i++) {
      const arc = this.paths[4 * i + 3];
      if (arc > reach && i > frame.start) {
        const before = this.paths[4 * i - 1];
        if (reach - before > 0.05) {
          line.push(placed(this.paths, i - 1).lerp(placed(this.paths, i), (reach - before) / (arc - before)));
        }
        break;
      }
      line.push(placed(this.paths, i));
    }
    if (reach <= 0 || line.length < 2) {
      return null;
    }
    const tube = new Mesh(new TubeGeometry(new Polyline(line), 2 * (line.length - 1), radius, sides), new MeshLambertMaterial({ color }));
    tube.renderOrder = 2;
    this.devices.add(tube);
    return line[line.length - 1];
  }

  setPlaying(playing) {
    this.playing = playing && Boolean(this.play);
    this.playButton.setAttribute('aria-pressed', String(this.playing));
    this.playButton.textContent = this.playing ? 'Hold' : 'Play';
    cancelAnimationFrame(this.request);
    if (this.playing) {
      if (this.moment >= this.play.frames.length - 1) {
        this.show(0);
      }
      this.due = undefined;
      this.request = requestAnimationFrame((now) => this.tick(now));
    }
  }

  tick(now) {
    this.due ??= now + 1000 / framesPerS;
    if (now >= this.due) {
      // A slow machine leaves moments out instead of falling behind.
      const steps = 1 + Math.floor((now - this.due) * framesPerS / 1000);
      this.due += steps * 1000 / framesPerS;
      this.show(this.moment + steps);
      if (this.moment >= this.play.frames.length - 1) {
        this.setPlaying(false);
        return;
      }
    }
    this.request = requestAnimationFrame((next) => this.tick(next));
  }

  view(name) {
    this.follow = false;
    if (name === 'tip') {
      this.follow = true;
      this.zoom = closeUp;
      this.centre.copy(this.tip ?? this.middle);
    } else {
      this.turn = name === 'left' ? quarter : 0;
      this.zoom = 1;
      this.centre.copy(this.middle);
    }
    this.draw();
  }

  key(event) {
    const keys = {
      ArrowLeft: () => { this.turn -= stepOfKey; },
      ArrowRight: () => { this.turn += stepOfKey; },
      ArrowUp: () => { this.centre.y += 20 / this.zoom; this.follow = false; },
      ArrowDown: () => { this.centre.y -= 20 / this.zoom; this.follow = false; },
      '+': () => this.magnify(1.25),
      '-': () => this.magnify(1 / 1.25),
      ' ': () => this.setPlaying(!this.playing),
    };
    if (keys[event.key] && !event.ctrlKey && !event.altKey && !event.metaKey) {
      event.preventDefault();
      keys[event.key]();
      this.draw();
    }
  }

  magnify(factor) {
    this.zoom = Math.min(12, Math.max(1, this.zoom * factor));
    this.draw();
  }

  grab(event) {
    if (!this.play || event.button !== 0) {
      return;
    }
    this.canvas.setPointerCapture(event.pointerId);
    let [x, y] = [event.clientX, event.clientY];
    const move = (now) => {
      this.turn += (now.clientX - x) * 0.012;
      if (this.zoom > 1) {
        this.follow = false;
        this.centre.y += (now.clientY - y) * this.mmPerPx;
      }
      [x, y] = [now.clientX, now.clientY];
      this.draw();
    };
    const end = new AbortController();
    this.canvas.addEventListener('pointermove', move, { signal: end.signal });
    for (const name of ['pointerup', 'pointercancel']) {
      this.canvas.addEventListener(name, () => end.abort(), { signal: end.signal });
    }
  }

  draw() {
    const box = this.canvas.getBoundingClientRect();
    if (!this.play || box.width < 10 || box.height < 10) {
      return;
    }
    this.renderer.setPixelRatio(Math.min(2, window.devicePixelRatio || 1));
    this.renderer.setSize(box.width, box.height, false);
    const high = (1.06 * this.size.y) / this.zoom;
    const wide = (high * box.width) / box.height;
    this.mmPerPx = high / box.height;
    Object.assign(this.camera, { left: -wide / 2, right: wide / 2, top: high / 2, bottom: -high / 2 });
    const away = new Vector3(Math.sin(this.turn), 0, Math.cos(this.turn));
    this.camera.position.copy(this.centre).addScaledVector(away, 2000);
    this.camera.lookAt(this.centre);
    this.camera.updateProjectionMatrix();
    this.camera.updateMatrixWorld();
    this.light.position.copy(this.camera.position).add(new Vector3(0, 900, 0)).addScaledVector(new Vector3(away.z, 0, -away.x), -700);
    this.light.target.position.copy(this.centre);
    this.light.target.updateMatrixWorld();
    this.renderer.render(this.scene, this.camera);
    this.write(box);
    this.root.dataset.turn = String(Math.round(this.turn * 180 / Math.PI));
    this.root.dataset.drawn = String(Number(this.root.dataset.drawn ?? 0) + 1);
  }

  // Landmarks in a column at the left, each with a line to its place; names that would touch are moved apart. A bar of known length below.
  write(box) {
    const at = (place) => {
      const p = new Vector3(place.x, place.z, -place.y).project(this.camera);
      return [(p.x + 1) * box.width / 2, (1 - p.y) * box.height / 2];
    };
    const parts = [];
    const marks = this.play.landmarks.map((mark) => ({ mark, at: at(mark) })).filter((m) => m.at[1] > 0 && m.at[1] < box.height - 24).sort((a, b) => a.at[1] - b.at[1]);
    let last = 0;
    for (const { mark, at: [x, y] } of marks) {
      const level = Math.max(y, last + labelGapPx);
      last = level;
      parts.push(this.line(`M ${6.2 * mark.name.length + 12} ${level - 4} L ${x} ${y}`), this.text(6, level, mark.name));
    }
    const bar = [200, 100, 50, 20, 10].find((mm) => mm / this.mmPerPx < box.width / 3) ?? 10;
    const [from, level] = [box.width - 12 - bar / this.mmPerPx, box.height - 12];
    parts.push(this.line(`M ${from} ${level - 4} V ${level} H ${box.width - 12} V ${level - 4}`, 'way-bar'), this.text(from, level - 8, `${bar / 10} cm`));
    if (this.play.wrong !== null && this.moment >= this.play.wrong && this.tip) {
      const [x, y] = at({ x: this.tip.x, y: -this.tip.z, z: this.tip.y });
      const end = x > box.width / 2;
      parts.push(this.text(x + (end ? -12 : 12), y + 4, this.play.astray, end ? 'way-astray way-end' : 'way-astray'));
    }
    this.labels.replaceChildren(...parts);
  }

  line(path, kind = 'way-leader') {
    const line = document.createElementNS(svgName, 'path');
    line.setAttribute('d', path);
    line.setAttribute('class', kind);
    return line;
  }

  text(x, y, words, kind = 'way-name') {
    const text = document.createElementNS(svgName, 'text');
    text.setAttribute('x', x);
    text.setAttribute('y', y);
    text.setAttribute('class', kind);
    text.textContent = words;
    return text;
  }
}

export const mount = (root) => {
  try {
    const stage = new Stage(root);
    root.dataset.space = 'yes';
    return stage;
  } catch {
    // No drawing in three dimensions on this machine: the page shows the two views to scale instead.
    root.dataset.space = 'no';
    return { load: () => {}, leave: () => {} };
  }
};
